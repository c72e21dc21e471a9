/** What stands in a handbook as names for templates of HTML, for all outputs that are made of it. */
@NullMarked
package bayfolio.render.html;

import org.jspecify.annotations.NullMarked;
