package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Kinds;
import bayfolio.model.Thing;
import bayfolio.model.Word;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Everything that has a name, from A to Z. */
final class IndexPage {
    private final Draft draft;

    IndexPage(Draft draft) {
        this.draft = draft;
    }

    Page page() {
        Map<String, List<Content.LinkList.Entry>> letters = new TreeMap<>();
        entries()
                .sorted(Comparator.comparing(entry -> entry.link().plain().toLowerCase(Locale.ROOT)))
                .forEach(entry -> letters.computeIfAbsent(letter(entry), it -> new ArrayList<>())
                        .add(entry));
        return new Page(
                new Target.OfPage("index"),
                "a-z.html",
                draft.word("page.index"),
                List.of(),
                letters.entrySet().stream()
                        .map(letter -> Section.of(
                                "letter-" + letter.getKey().toLowerCase(Locale.ROOT),
                                letter.getKey().equals("0") ? "0–9" : letter.getKey(),
                                List.of(new Content.LinkList(java.util.Optional.empty(), letter.getValue()))))
                        .toList());
    }

    private Stream<Content.LinkList.Entry> entries() {
        return Stream.of(
                        Kinds.names().stream()
                                .flatMap(kind -> draft.things(kind).stream())
                                .map((Thing thing) -> new Content.LinkList.Entry(
                                        Draft.link(thing), draft.word("one." + thing.kind()))),
                        draft.procedures().stream()
                                .map((Procedure procedure) -> new Content.LinkList.Entry(
                                        Draft.link(procedure),
                                        draft.word("one." + procedure.form().scheme()))),
                        draft.coach().fleet().words().stream()
                                .map((Word word) -> new Content.LinkList.Entry(
                                        Draft.link(
                                                new Target.OfWord(word.id()),
                                                word.word(),
                                                word.facts().at()),
                                        draft.word("one.word"))))
                .flatMap(entries -> entries);
    }

    private static String letter(Content.LinkList.Entry entry) {
        char first = Character.toUpperCase(entry.link().plain().charAt(0));
        return first >= 'A' && first <= 'Z' ? String.valueOf(first) : "0";
    }
}
