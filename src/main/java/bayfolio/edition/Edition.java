package bayfolio.edition;

import java.time.LocalDate;

/**
 * An issued state of a handbook.
 *
 * @param number from 1, without a gap
 * @param date of its issue, as it was given
 * @param note what is new, in the words of whoever issued it; renters read it
 */
public record Edition(int number, LocalDate date, String note, Snapshot snapshot) {}
