/** Rules: Pictures of a coach. */
@NullMarked
package bayfolio.check.photo;

import org.jspecify.annotations.NullMarked;
