/** What the coach fits under and through. Begin at {@link bayfolio.reckon.clearance.Clearances}. */
@NullMarked
package bayfolio.reckon.clearance;

import org.jspecify.annotations.NullMarked;
