/** How long the gas lasts. Begin at {@link bayfolio.reckon.gas.GasDays}. */
@NullMarked
package bayfolio.reckon.gas;

import org.jspecify.annotations.NullMarked;
