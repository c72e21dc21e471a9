/** A handbook through a theme. Begin at {@link bayfolio.render.web.WebSite}. */
@NullMarked
package bayfolio.render;

import org.jspecify.annotations.NullMarked;
