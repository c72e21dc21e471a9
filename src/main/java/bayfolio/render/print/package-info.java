/** A handbook on paper: the book, cards, sheets and labels as PDF. Begin at {@link bayfolio.render.print.Book}. */
@NullMarked
package bayfolio.render.print;

import org.jspecify.annotations.NullMarked;
