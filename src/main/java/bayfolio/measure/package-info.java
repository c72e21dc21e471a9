/**
 * Quantities as a fleet writes and reads them: {@code 100 gal} in, SI inside, {@code 100 gal (379
 * L)} out. Begin reading at {@link bayfolio.measure.Quantity}, then {@link bayfolio.measure.Scale}.
 */
@NullMarked
package bayfolio.measure;

import org.jspecify.annotations.NullMarked;
