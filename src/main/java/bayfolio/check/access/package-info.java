/** Rules: Who may go where. */
@NullMarked
package bayfolio.check.access;

import org.jspecify.annotations.NullMarked;
