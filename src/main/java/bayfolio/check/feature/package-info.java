/** Rules: What a coach has, and the things that work it. */
@NullMarked
package bayfolio.check.feature;

import org.jspecify.annotations.NullMarked;
