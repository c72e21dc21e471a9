package bayfolio.edition;

import java.util.List;

/**
 * A page of a printed book.
 *
 * @param digest of what is read on it, by which it is known whether another edition has it otherwise
 * @param holds pages of the handbook of which some is on it: {@code do/level}
 */
public record PrintedPage(String digest, List<String> holds) {
    public PrintedPage {
        holds = List.copyOf(holds);
    }
}
