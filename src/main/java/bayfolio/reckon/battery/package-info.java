/** What the house batteries give, lose and take. Begin at {@link bayfolio.reckon.battery.ANight}. */
@NullMarked
package bayfolio.reckon.battery;

import org.jspecify.annotations.NullMarked;
