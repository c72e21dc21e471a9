/** Rules: Fresh water, waste, and the ways in and out of their tanks. */
@NullMarked
package bayfolio.check.water;

import org.jspecify.annotations.NullMarked;
