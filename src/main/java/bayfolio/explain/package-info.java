/**
 * What comes of a question, in the words of a language: answers, tables, workings, and the forms in which a reader varies
 * them. Numbers come from {@code reckon}, sentences from the catalog; nothing is worked out here, and no sentence stands here.
 * Begin at {@link bayfolio.explain.Explanations}.
 */
@NullMarked
package bayfolio.explain;

import org.jspecify.annotations.NullMarked;
