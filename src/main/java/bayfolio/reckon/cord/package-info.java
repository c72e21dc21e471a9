/** What a power cord loses. Begin at {@link bayfolio.reckon.cord.CordVolts}. */
@NullMarked
package bayfolio.reckon.cord;

import org.jspecify.annotations.NullMarked;
