/** Rules: What no procedure speaks of. */
@NullMarked
package bayfolio.check.orphan;

import org.jspecify.annotations.NullMarked;
