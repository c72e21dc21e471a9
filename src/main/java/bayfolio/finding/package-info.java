/** What a check reports, and the forms in which it is printed. Begin at {@link Finding}. */
@NullMarked
package bayfolio.finding;

import org.jspecify.annotations.NullMarked;
