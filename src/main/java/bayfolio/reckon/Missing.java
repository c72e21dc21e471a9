package bayfolio.reckon;

import java.util.Optional;

/**
 * A fact that the description lacks, and without which a question has no answer.
 *
 * @param what its name in the catalog, below {@code lacking}: {@code gas-input}
 * @param of the thing that it is a fact of, by its name
 */
public record Missing(String what, Optional<String> of) {
    public Missing(String what) {
        this(what, Optional.empty());
    }

    public Missing(String what, String of) {
        this(what, Optional.of(of));
    }
}
