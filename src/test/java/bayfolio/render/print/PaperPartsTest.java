package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.PageKind;
import bayfolio.edition.Comparison;
import bayfolio.edition.Part;
import bayfolio.edition.Snapshot;
import bayfolio.issue.Paper;
import bayfolio.model.Unit;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which parts of an edition stand on paper is told by kinds of pages and contents; here is what is really printed. */
final class PaperPartsTest {
    @ParameterizedTest
    @ValueSource(strings = {"plover", "dunlin"})
    void whatIsPrintedIsKnown(String coach) throws Exception {
        DemoFleet fleet = coach.equals("plover") ? DemoFleet.of(DemoFleet.SMALL) : DemoBook.FLEET;
        Unit unit = fleet.check().units().stream()
                .filter(it -> it.id().equals(coach))
                .findFirst()
                .orElseThrow();
        Handbook whole = Composer.compose(fleet.check().of(unit));
        Snapshot snapshot = Snapshot.of(fleet.check().of(unit), Optional.of(whole));
        Map<String, Part> parts = Comparison.between(snapshot, snapshot).after().parts();
        Handbook renters = whole.seenBy(Audience.RENTERS);
        Leaves leaves = Leaves.of(renters);
        Set<String> index =
                leaves.index().stream().map(it -> it.id().toString()).collect(Collectors.toSet());

        assertThat(held(Paper.BOOK, parts)).containsAll(index);
        same(
                "book",
                held(Paper.BOOK, parts).stream()
                        .filter(id -> !part(parts, id).page().startsWith("letter/"))
                        .collect(Collectors.toCollection(TreeSet::new)),
                printed(
                        parts,
                        Stream.concat(
                                leaves.chapters().stream()
                                        .flatMap(it -> Stream.concat(Stream.of(it.page()), it.pages().stream())),
                                renters.pages().stream().filter(page -> page.kind() == PageKind.NIGHT_CARD))));
        for (Paper sheet : Set.of(Paper.INVENTORY, Paper.READY, Paper.CONDITION, Paper.DAMAGE)) {
            same(
                    sheet.words(),
                    held(sheet, parts),
                    printed(
                            parts,
                            whole.seenBy(Audience.STAFF).pages().stream()
                                    .filter(page -> page.kind().name().equals(sheet.name()))));
        }
    }

    /** Tells what is too many and what is too few, and not all the rest. */
    private static void same(String paper, Set<String> held, Set<String> printed) {
        Set<String> tooMany = new TreeSet<>(held);
        tooMany.removeAll(printed);
        Set<String> tooFew = new TreeSet<>(printed);
        tooFew.removeAll(held);
        assertThat(printed).as(paper).isNotEmpty();
        assertThat(tooMany).as("not printed in the " + paper).isEmpty();
        assertThat(tooFew).as("printed in the " + paper).isEmpty();
    }

    private static Part part(Map<String, Part> parts, String id) {
        return Objects.requireNonNull(parts.get(id));
    }

    private static Set<String> held(Paper paper, Map<String, Part> parts) {
        return parts.values().stream()
                .filter(part -> paper.holds(part, parts))
                .map(Part::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What is merely stuck on a door, or leads on, is no part of what is read. */
    private static Set<String> printed(Map<String, Part> parts, Stream<? extends Node> pages) {
        return pages.flatMap(Node::walk)
                .filter(node -> !(node instanceof Content.Label || node instanceof Content.Prints))
                .map(node -> node.id().toString())
                .filter(parts::containsKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
