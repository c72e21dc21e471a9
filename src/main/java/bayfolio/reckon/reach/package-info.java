/** Whether cord and hoses reach a post. Begin at {@link bayfolio.reckon.reach.Reach}. */
@NullMarked
package bayfolio.reckon.reach;

import org.jspecify.annotations.NullMarked;
