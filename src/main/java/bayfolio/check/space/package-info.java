/** Rules: Where things are on the coach. */
@NullMarked
package bayfolio.check.space;

import org.jspecify.annotations.NullMarked;
