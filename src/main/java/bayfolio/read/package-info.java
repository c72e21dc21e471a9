/**
 * A fleet folder into model and procedures, with the place of every word kept. Nobody else knows
 * YAML. Begin at {@link bayfolio.read.FleetReader}.
 */
@NullMarked
package bayfolio.read;

import org.jspecify.annotations.NullMarked;
