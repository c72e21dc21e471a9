/** A handbook as data for other programs. Begin at {@link bayfolio.render.data.MachineCopy}. */
@NullMarked
package bayfolio.render.data;

import org.jspecify.annotations.NullMarked;
