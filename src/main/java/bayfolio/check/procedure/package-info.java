/** Rules: What procedures ask of a coach. */
@NullMarked
package bayfolio.check.procedure;

import org.jspecify.annotations.NullMarked;
