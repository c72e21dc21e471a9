package bayfolio.issue;

import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** The book, cards and sheets that hold one of the parts that are otherwise, or show the page of one. */
final class PapersOf implements Consequent {
    private final Compared compared;

    PapersOf(Compared compared) {
        this.compared = compared;
    }

    @Override
    public Stream<Consequence.Printed> of(Changed changed) {
        return Arrays.stream(Paper.values())
                .filter(paper -> holds(paper, changed, compared.before()) || holds(paper, changed, compared.after()))
                .map(Consequence.Printed::new);
    }

    private static boolean holds(Paper paper, Changed changed, State state) {
        return changed.parts().stream()
                .flatMap(id -> Optional.ofNullable(state.parts().get(id)).stream())
                .anyMatch(part -> paper.holds(part, state.parts()));
    }
}
