/** What a coach says otherwise than its model. */
@NullMarked
package bayfolio.check.layer;

import org.jspecify.annotations.NullMarked;
