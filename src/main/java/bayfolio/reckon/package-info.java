/**
 * Results worked out from the facts of a coach, by subject: pure functions that know nothing of pages and say nothing; each
 * figure knows where it came from. Begin at {@link bayfolio.reckon.Question}.
 */
@NullMarked
package bayfolio.reckon;

import org.jspecify.annotations.NullMarked;
