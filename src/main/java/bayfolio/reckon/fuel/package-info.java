/** What the tank of fuel does for engine and generator. Begin at {@link bayfolio.reckon.fuel.DrivingRange}. */
@NullMarked
package bayfolio.reckon.fuel;

import org.jspecify.annotations.NullMarked;
