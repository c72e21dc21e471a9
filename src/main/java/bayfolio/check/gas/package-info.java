/** Rules: LP gas and who can shut it. */
@NullMarked
package bayfolio.check.gas;

import org.jspecify.annotations.NullMarked;
