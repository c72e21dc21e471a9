/** Rules: What the coach weighs, how long it is and how many people it takes. */
@NullMarked
package bayfolio.check.weight;

import org.jspecify.annotations.NullMarked;
