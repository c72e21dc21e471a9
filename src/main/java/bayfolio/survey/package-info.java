/**
 * Facts looked up at a coach, and brought home: what is to be looked up there, the page and the sheet for it, and what was entered,
 * merged into the files of the writer. Begin at {@link Survey} and {@link Take}.
 */
@NullMarked
package bayfolio.survey;

import org.jspecify.annotations.NullMarked;
