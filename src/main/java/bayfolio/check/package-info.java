/**
 * Rules, one a class, that tell what is untrue in a description or in a procedure. Begin at {@link
 * bayfolio.check.Check}.
 */
@NullMarked
package bayfolio.check;

import org.jspecify.annotations.NullMarked;
