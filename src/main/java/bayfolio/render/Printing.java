package bayfolio.render;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is chosen for paper.
 *
 * @param day of the edition, where one is given
 * @param stock of labels; that of the coach's country where none is chosen
 * @param start the cell of its first sheet that is still free, from 1
 */
public record Printing(Optional<LocalDate> day, Optional<String> stock, int start) {
    /** Nothing is chosen. */
    public static final Printing USUAL = new Printing(Optional.empty(), Optional.empty(), 1);
}
