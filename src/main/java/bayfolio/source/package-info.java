/**
 * Text as its writer sees it: files, places in them, and values that remember their place. Begin at
 * {@link Place}.
 */
@NullMarked
package bayfolio.source;

import org.jspecify.annotations.NullMarked;
