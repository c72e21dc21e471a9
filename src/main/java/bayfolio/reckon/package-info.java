/** Results worked out from the facts of a coach: pure functions that know nothing of texts and pages. */
@NullMarked
package bayfolio.reckon;

import org.jspecify.annotations.NullMarked;
