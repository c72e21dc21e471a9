/** The letters that paper is printed with. Begin at {@link bayfolio.typeface.Face}. */
@NullMarked
package bayfolio.typeface;

import org.jspecify.annotations.NullMarked;
