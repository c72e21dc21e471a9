/** The proof that what is set up can be undone, that it is safe in each situation, and that somebody can be helped with it. */
@NullMarked
package bayfolio.check.equipment;

import org.jspecify.annotations.NullMarked;
