/** Handbooks as web pages. Begin at {@link bayfolio.render.web.WebSite}. */
@NullMarked
package bayfolio.render.web;

import org.jspecify.annotations.NullMarked;
