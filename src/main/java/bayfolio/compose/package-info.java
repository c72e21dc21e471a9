/**
 * A coach with its procedures into a handbook; one class for each kind of page. Begin at {@link
 * bayfolio.compose.Composer}.
 */
@NullMarked
package bayfolio.compose;

import org.jspecify.annotations.NullMarked;
