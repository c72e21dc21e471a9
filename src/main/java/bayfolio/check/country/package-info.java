/** Rules: What is said of the countries that coaches are driven in. */
@NullMarked
package bayfolio.check.country;

import org.jspecify.annotations.NullMarked;
