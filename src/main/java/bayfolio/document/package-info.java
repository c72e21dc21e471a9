/**
 * What is known of one coach, as an addressed tree of values: parts, pages, sections, contents, links by target. Each node
 * knows its lasting name, its readers, where it came from and its language. No HTML, no file endings.
 * Begin at {@link bayfolio.document.Handbook}.
 */
@NullMarked
package bayfolio.document;

import org.jspecify.annotations.NullMarked;
