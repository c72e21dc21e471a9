/**
 * Text with structure: blocks and inlines whose links name what they mean and not yet where it is.
 * Begin at {@link Block}.
 */
@NullMarked
package bayfolio.prose;

import org.jspecify.annotations.NullMarked;
