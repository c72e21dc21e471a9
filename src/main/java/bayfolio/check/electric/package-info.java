/** Rules: What the wiring carries and what feeds it. */
@NullMarked
package bayfolio.check.electric;

import org.jspecify.annotations.NullMarked;
