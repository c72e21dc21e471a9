/** Results worked out from the facts of a coach, with their working in words: pure functions that know nothing of pages. */
@NullMarked
package bayfolio.reckon;

import org.jspecify.annotations.NullMarked;
