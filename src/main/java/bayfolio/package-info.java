/** The door: words in, exit code out. */
@NullMarked
package bayfolio;

import org.jspecify.annotations.NullMarked;
