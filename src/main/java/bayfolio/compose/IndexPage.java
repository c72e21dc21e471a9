package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.model.Kinds;
import bayfolio.model.Word;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Everything that has a name, from A to Z. */
final class IndexPage {
    private final CoachView view;
    private final Stamp stamp;

    IndexPage(CoachView view) {
        this.view = view;
        this.stamp = view.stamp(PageKind.INDEX);
    }

    Page page() {
        Map<String, List<Content.LinkList.Entry>> letters = new TreeMap<>();
        entries()
                .sorted(Comparator.comparing(entry -> entry.link().plain().toLowerCase(Locale.ROOT)))
                .forEach(entry -> letters.computeIfAbsent(letter(entry), it -> new ArrayList<>())
                        .add(entry));
        return new Page(
                stamp,
                PageKind.INDEX,
                PageKind.INDEX.target(),
                view.word("page.index"),
                List.of(letters(stamp.child("letters"), letters)),
                letters.entrySet().stream()
                        .map(letter -> section(letter.getKey(), letter.getValue()))
                        .toList(),
                false);
    }

    /** To each letter that something begins with. */
    private Content letters(Stamp list, Map<String, List<Content.LinkList.Entry>> letters) {
        return new Content.Tiles(
                list,
                letters.entrySet().stream()
                        .map(letter -> new Content.Tiles.Tile(
                                list.child(letter.getKey().toLowerCase(Locale.ROOT))
                                        .seenBy(Audience.staffIf(letter.getValue().stream()
                                                .allMatch(it -> it.stamp().audience() == Audience.STAFF))),
                                view.link(home(letter.getKey()), shown(letter.getKey())),
                                "",
                                ""))
                        .toList());
    }

    private static Target home(String letter) {
        return new Target.OfPage("letter-" + letter.toLowerCase(Locale.ROOT));
    }

    private static String shown(String letter) {
        return letter.equals("0") ? "0–9" : letter;
    }

    private Section section(String letter, List<Content.LinkList.Entry> entries) {
        Stamp section = stamp.child("letter-" + letter.toLowerCase(Locale.ROOT));
        return new Section(
                section,
                Optional.of(home(letter)),
                shown(letter),
                2,
                List.of(new Content.LinkList(section.child("list"), Optional.empty(), entries)));
    }

    /** Named by what they are, not by the letter: that one hangs on their names. */
    private Stream<Content.LinkList.Entry> entries() {
        Stamp list = stamp.child("entry");
        return Stream.of(
                        Kinds.names().stream()
                                .flatMap(kind -> view.things(kind).stream())
                                .map(thing -> view.entry(list, thing, view.word("one." + thing.kind()))),
                        view.procedures().stream()
                                .map(procedure -> view.entry(
                                        list,
                                        procedure,
                                        view.word("one." + procedure.form().scheme()))),
                        view.coach().fleet().words().stream().map(word -> entry(list, word)))
                .flatMap(entries -> entries);
    }

    private Content.LinkList.Entry entry(Stamp list, Word word) {
        return new Content.LinkList.Entry(
                list.child("word-" + word.id()).from(From.fact(word, Word.WORD)),
                CoachView.link(
                        new Target.OfWord(word.id()), word.word(), word.facts().at()),
                view.word("one.word"));
    }

    private static String letter(Content.LinkList.Entry entry) {
        char first = Character.toUpperCase(entry.link().plain().charAt(0));
        return first >= 'A' && first <= 'Z' ? String.valueOf(first) : "0";
    }
}
