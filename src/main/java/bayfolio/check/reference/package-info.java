/** Rules: Names that lead nowhere or to two things. */
@NullMarked
package bayfolio.check.reference;

import org.jspecify.annotations.NullMarked;
