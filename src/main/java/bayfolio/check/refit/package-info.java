/** What was changed on a coach, and whether all that hangs on it was looked at since. */
@NullMarked
package bayfolio.check.refit;

import org.jspecify.annotations.NullMarked;
