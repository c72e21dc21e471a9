/** How long the tanks last. Begin at {@link bayfolio.reckon.water.WaterUse}. */
@NullMarked
package bayfolio.reckon.water;

import org.jspecify.annotations.NullMarked;
