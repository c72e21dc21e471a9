/** What runs together on which supply. Begin at {@link bayfolio.reckon.power.RunsTogether}. */
@NullMarked
package bayfolio.reckon.power;

import org.jspecify.annotations.NullMarked;
