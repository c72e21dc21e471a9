/**
 * Rendered files onto the disk: audited first, then swapped in whole. Begin at {@link
 * bayfolio.publish.Publisher}.
 */
@NullMarked
package bayfolio.publish;

import org.jspecify.annotations.NullMarked;
