/** What may still be loaded. Begin at {@link bayfolio.reckon.weight.Loading}. */
@NullMarked
package bayfolio.reckon.weight;

import org.jspecify.annotations.NullMarked;
