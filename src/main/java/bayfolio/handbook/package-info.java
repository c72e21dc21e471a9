/**
 * What is published for one coach, as values: pages, sections, contents, links by target; no HTML.
 * Begin at {@link bayfolio.handbook.Handbook}.
 */
@NullMarked
package bayfolio.handbook;

import org.jspecify.annotations.NullMarked;
