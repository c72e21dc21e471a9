/**
 * A thing of a coach, or a role, under another name, in each file that names it: prepared and proved in memory, then written whole. Begin at
 * {@link Rename}.
 */
@NullMarked
package bayfolio.rename;

import org.jspecify.annotations.NullMarked;
