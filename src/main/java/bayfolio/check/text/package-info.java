/** Rules: The words that writers type. */
@NullMarked
package bayfolio.check.text;

import org.jspecify.annotations.NullMarked;
