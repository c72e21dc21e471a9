package bayfolio.issue;

import bayfolio.document.PageKind;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.PrintedPage;
import bayfolio.edition.State;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The book, cards and sheets that hold one of the parts that are otherwise, or show the page of one. */
final class PapersOf implements Consequent {
    private final Compared compared;
    private final Optional<AsPrinted> printed;

    /** @param printed the book of the earlier state, where it is known how it was printed */
    PapersOf(Compared compared, Optional<AsPrinted> printed) {
        this.compared = compared;
        this.printed = printed;
    }

    @Override
    public Stream<Consequence.Printed> of(Changed changed) {
        return Arrays.stream(Paper.values())
                .filter(paper -> holds(paper, changed, compared.before()) || holds(paper, changed, compared.after()))
                .map(paper -> new Consequence.Printed(paper, paper == Paper.BOOK ? numbers(changed) : List.of()));
    }

    /** Where in the book the pages are on which it stood. */
    private List<Consequence.Numbers> numbers(Changed changed) {
        if (printed.isEmpty()) {
            return List.of();
        }
        Set<String> touched = changed.parts().stream()
                .flatMap(id -> Optional.ofNullable(compared.before().parts().get(id)).stream())
                .filter(part -> Paper.BOOK.holds(part, compared.before().parts()))
                .map(part -> part.page().replaceFirst(PageKind.GOES_ON + ".*", ""))
                .collect(Collectors.toSet());
        return printed.get().books().entrySet().stream()
                .map(book -> new Consequence.Numbers(book.getKey(), numbers(book.getValue(), touched)))
                .filter(it -> !it.pages().isEmpty())
                .toList();
    }

    private static List<Integer> numbers(List<PrintedPage> book, Set<String> touched) {
        return IntStream.range(0, book.size())
                .filter(page -> book.get(page).holds().stream().anyMatch(touched::contains))
                .mapToObj(page -> page + 1)
                .toList();
    }

    private static boolean holds(Paper paper, Changed changed, State state) {
        return changed.parts().stream()
                .flatMap(id -> Optional.ofNullable(state.parts().get(id)).stream())
                .anyMatch(part -> paper.holds(part, state.parts()));
    }
}
