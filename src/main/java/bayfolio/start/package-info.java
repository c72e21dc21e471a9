/** How a fleet and its coaches begin: files that pass the check but for what somebody has to look up. */
@NullMarked
package bayfolio.start;

import org.jspecify.annotations.NullMarked;
