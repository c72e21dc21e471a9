package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Stamp;
import bayfolio.model.Kinds;
import bayfolio.model.Role;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.model.Word;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Target;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Everything that has a name, from A to Z, each also by the other words that renters have for it. The search on a phone
 * knows the same entries.
 */
final class IndexPage {
    private final CoachView view;
    private final Stamp stamp;
    private final Stamp list;
    private final List<Page> pages;

    /** @param pages all others of the handbook */
    IndexPage(CoachView view, List<Page> pages) {
        this.view = view;
        this.stamp = view.stamp(PageKind.INDEX);
        this.list = stamp.child("entry");
        this.pages = pages;
    }

    /** The letters, and a page for each. */
    Stream<Page> pages() {
        Map<String, List<Content.LinkList.Entry>> letters = new TreeMap<>();
        entries()
                .sorted(Comparator.comparing(entry -> entry.link().plain().toLowerCase(Locale.ROOT)))
                .forEach(entry -> letters.computeIfAbsent(letter(entry), it -> new ArrayList<>())
                        .add(entry));
        Page first = new Page(
                stamp,
                PageKind.INDEX,
                PageKind.INDEX.target(),
                view.word("page.index"),
                List.of(letters(stamp.child("letters"), letters)),
                List.of(),
                false);
        return Stream.concat(
                Stream.of(first),
                letters.entrySet().stream().map(letter -> page(letter.getKey(), letter.getValue(), letters)));
    }

    /** To each letter that something begins with. */
    private Content letters(Stamp tiles, Map<String, List<Content.LinkList.Entry>> letters) {
        return new Content.Tiles(
                tiles,
                letters.entrySet().stream()
                        .map(letter -> new Content.Tiles.Tile(
                                tiles.child(letter.getKey()).seenBy(reader(letter.getValue())),
                                view.link(home(letter.getKey()), shown(letter.getKey())),
                                "",
                                "",
                                tiles.id().page().equals(stamp.id().page())
                                        ? Optional.of("letter-" + letter.getKey())
                                        : Optional.empty()))
                        .toList());
    }

    private static Audience reader(List<Content.LinkList.Entry> entries) {
        return Audience.staffIf(entries.stream().allMatch(it -> it.stamp().audience() == Audience.STAFF));
    }

    private static Target home(String letter) {
        return new Target.OfPage("letter-" + letter);
    }

    private static String shown(String letter) {
        return letter.equals("0") ? "0–9" : letter.toUpperCase(Locale.ROOT);
    }

    private Page page(
            String letter, List<Content.LinkList.Entry> entries, Map<String, List<Content.LinkList.Entry>> letters) {
        Stamp page = view.stamp(PageKind.LETTER.node(letter), reader(entries), From.PROGRAM);
        return new Page(
                page,
                PageKind.LETTER,
                home(letter),
                view.words().say("page.letter", "letter", shown(letter)),
                List.of(
                        letters(page.child("letters"), letters),
                        new Content.LinkList(page.child("list"), Optional.empty(), entries)),
                List.of(),
                false);
    }

    /** Named by what they are, not by the letter: that one hangs on their names. */
    private Stream<Content.LinkList.Entry> entries() {
        return Stream.of(
                        Kinds.names().stream()
                                .flatMap(kind -> view.things(kind).stream())
                                .flatMap(this::thing),
                        view.procedures().stream().flatMap(this::procedure),
                        view.coach().fleet().words().stream().flatMap(this::word),
                        pages.stream().flatMap(this::page),
                        pages.stream()
                                .filter(page -> page.kind() == PageKind.TAKEN_OUT)
                                .map(this::takenOut),
                        page(HomePage.CALL, view.word("home.call"), Audience.EVERYBODY))
                .flatMap(entries -> entries);
    }

    private Stream<Content.LinkList.Entry> thing(Thing thing) {
        return with(
                view.entry(list, thing, view.word("one." + thing.kind())),
                Stream.concat(
                        thing.facts().find(Switch.PLATE.name(), String.class).stream(),
                        view.coach().roles(thing).flatMap(role -> role.facts().all(Role.ALSO).stream())));
    }

    private Stream<Content.LinkList.Entry> procedure(Procedure procedure) {
        return with(
                view.entry(list, procedure, view.word("one." + procedure.form().scheme())),
                procedure.head().facts().all(Head.ALSO).stream());
    }

    private Stream<Content.LinkList.Entry> word(Word word) {
        return with(
                new Content.LinkList.Entry(
                        list.child("word-" + word.id()).from(From.fact(word, Word.WORD)),
                        CoachView.link(
                                new Target.OfWord(word.id()),
                                word.word(),
                                word.facts().at()),
                        view.word("one.word")),
                Stream.concat(word.british().stream(), word.facts().all(Word.ALSO).stream()));
    }

    /** Who looks for what is gone reads what became of it. */
    private Content.LinkList.Entry takenOut(Page page) {
        return new Content.LinkList.Entry(
                list.child("taken-out-" + page.address().replace('/', '-'))
                        .from(page.stamp().from())
                        .seenBy(page.stamp().audience())
                        .in(page.stamp().language()),
                view.link(page.home(), page.title()),
                view.word("taken-out"));
    }

    /** A page that stands for no thing, no text and no word: a list, a question, a place where one is. */
    private Stream<Content.LinkList.Entry> page(Page page) {
        boolean own = page.home() instanceof Target.OfPage
                || page.home() instanceof Target.OfStage
                || page.home() instanceof Target.OfReckoning;
        return own ? page(page.home(), page.title(), page.stamp().audience()) : Stream.of();
    }

    private Stream<Content.LinkList.Entry> page(Target home, String title, Audience reader) {
        return with(
                new Content.LinkList.Entry(
                        list.child(slug(home.written())).seenBy(reader), view.link(home, title), view.word("one.page")),
                view.maybeWord("also." + home.written().replaceFirst(".*:", "")).stream()
                        .flatMap(also -> Stream.of(also.split(", *", -1))));
    }

    /** The entry, and one more for each other word; they tell whose they are. */
    private Stream<Content.LinkList.Entry> with(Content.LinkList.Entry entry, Stream<String> others) {
        Map<String, Content.LinkList.Entry> all = new LinkedHashMap<>();
        all.put(slug(entry.link().plain()), entry);
        others.forEach(other -> all.putIfAbsent(
                slug(other),
                new Content.LinkList.Entry(
                        entry.stamp().child("or-" + slug(other)),
                        view.link(entry.link().target(), other),
                        entry.link().plain())));
        return all.values().stream();
    }

    /** Letters and digits alone, with dashes between words. */
    private static String slug(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-");
    }

    private static String letter(Content.LinkList.Entry entry) {
        char first = slug(entry.link().plain()).charAt(0);
        return first >= 'a' && first <= 'z' ? String.valueOf(first) : "0";
    }
}
