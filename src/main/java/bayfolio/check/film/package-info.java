/** Rules: Films of a coach. */
@NullMarked
package bayfolio.check.film;

import org.jspecify.annotations.NullMarked;
