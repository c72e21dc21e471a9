package bayfolio.issue;

import bayfolio.document.PageKind;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.Part;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

/** Procedures and guides that send to a thing that is no longer as it was, or use a fact that is otherwise. */
final class ReadingsOf implements Consequent {
    private static final Set<PageKind> TEXTS = EnumSet.of(PageKind.PROCEDURE, PageKind.GUIDE);

    private final Compared compared;

    ReadingsOf(Compared compared) {
        this.compared = compared;
    }

    @Override
    public Stream<Consequence.Reading> of(Changed changed) {
        if (!changed.technical()) {
            return Stream.empty();
        }
        Stream<String> sending = Touched.by(changed.change(), compared).stream()
                .filter(it -> it.how() != Touched.How.UNSEEN)
                .map(it -> it.thing().kind() + ":" + it.thing().id())
                .flatMap(link -> Stream.of(compared.before(), compared.after())
                        .flatMap(state -> state.parts().values().stream())
                        .filter(part -> part.links().contains(link))
                        .map(Part::page));
        return Stream.concat(changed.pages().stream(), sending)
                .filter(page -> PageKind.of(page).filter(TEXTS::contains).isPresent())
                .distinct()
                .sorted()
                .map(Consequence.Reading::new);
    }
}
