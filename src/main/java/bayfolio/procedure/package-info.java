/**
 * What to do, step by step: written once for the fleet in Markdown, filled in and parsed for one
 * coach. Begin at {@link bayfolio.procedure.Procedure}.
 */
@NullMarked
package bayfolio.procedure;

import org.jspecify.annotations.NullMarked;
