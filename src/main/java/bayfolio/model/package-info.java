/** A coach and its fleet as described, immutable. Begin at {@link bayfolio.model.Unit}. */
@NullMarked
package bayfolio.model;

import org.jspecify.annotations.NullMarked;
