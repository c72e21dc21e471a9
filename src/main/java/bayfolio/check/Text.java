package bayfolio.check;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Phrase;
import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import bayfolio.model.Fleet;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.model.Word;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import bayfolio.prose.WordIndex;
import bayfolio.source.Lazy;
import bayfolio.source.Located;
import bayfolio.source.Once;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.stream.Stream;

/**
 * Words that a writer typed: a fact in words, or a passage of a script.
 *
 * @param own what is filled in is no letter, each letter stands where it stands in the file
 * @param forRenters whether renters read it
 * @param american whether it is not of a European coach
 * @param phrase what its key wants it to be; a passage is sentences
 * @param passage empty for a fact, whose place is that of the whole value
 * @param index of its words, made when a rule first asks for it
 */
public record Text(
        String own,
        Place at,
        boolean forRenters,
        boolean american,
        Phrase phrase,
        Optional<SourceBlock> passage,
        Supplier<WordIndex> index) {
    public Text(
            String own, Place at, boolean forRenters, boolean american, Phrase phrase, Optional<SourceBlock> passage) {
        this(own, at, forRenters, american, phrase, passage, new Lazy<>(() -> WordIndex.of(own)));
    }

    /**
     * All texts of a fleet: its own, those of its coaches, its procedures and its glossary.
     *
     * @param given all that is looked for
     * @param of what it finds in a script or a coach is kept there, see {@link Once}
     * @return something of each text, in their order; many are looked at at once
     */
    public static <G, T> List<T> each(Fleet fleet, Library library, G given, BiFunction<Text, G, Stream<T>> of) {
        Sought<G, T> sought = new Sought<>(of, given, true);
        return Stream.of(
                        shared(fleet).flatMap(sought::in).toList(),
                        fleet.units().parallelStream()
                                .flatMap(unit ->
                                        unit
                                                .once(
                                                        sought,
                                                        (it, those) -> of(it).flatMap(those::in)
                                                                .toList())
                                                .stream())
                                .toList(),
                        ofScripts(fleet, library, given, of))
                .flatMap(List::stream)
                .toList();
    }

    /** @param american whether it is looked for in texts that are not of a European coach */
    private record Sought<G, T>(BiFunction<Text, G, Stream<T>> of, G given, boolean american) {
        Stream<T> in(Text text) {
            return of.apply(text, given);
        }
    }

    /** The fleet's own texts, its glossary and those of its coaches, one coach after the other as they are asked for. */
    public static Stream<Text> ofFacts(Fleet fleet) {
        return Stream.concat(shared(fleet), fleet.units().stream().flatMap(Text::of));
    }

    private static Stream<Text> shared(Fleet fleet) {
        return Stream.concat(
                facts(fleet.facts().facts(), true).stream(),
                fleet.words().stream().flatMap(Text::meaning));
    }

    private static Stream<Text> of(Unit unit) {
        return facts(unit.facts(), american(unit)).stream();
    }

    /** As {@link #each}, of the texts in procedures, trouble guides and stage pages. */
    public static <G, T> List<T> ofScripts(Fleet fleet, Library library, G given, BiFunction<Text, G, Stream<T>> of) {
        return library.texts().parallelStream()
                .flatMap(script -> script
                        .once(
                                new Sought<>(of, given, american(script, fleet)),
                                (it, those) -> script(it, those.american)
                                        .flatMap(those::in)
                                        .toList())
                        .stream())
                .toList();
    }

    /** What a renter reads of a word; other names for it may be those that texts avoid. */
    private static Stream<Text> meaning(Word word) {
        return Stream.of(
                        word.facts().ifRead(Word.WORD).stream().map(it -> of(it, false)),
                        word.facts().ifRead(Word.MEANING).stream().map(it -> of(it, true)),
                        word.facts().ifRead(Word.BRITISH).stream().map(it -> of(it, false)),
                        word.facts().ifRead(Word.ALSO).stream()
                                .flatMap(names -> names.value().stream().map(it -> of(it, false))))
                .flatMap(texts -> texts);
    }

    private static Text of(Located<String> words, boolean american) {
        return new Text(words.value(), words.at(), true, american, Phrase.SENTENCES, Optional.empty());
    }

    private static boolean american(Unit unit) {
        return unit.facts()
                .ifRead(Unit.REGION)
                .map(region -> region.value() == Region.NORTH_AMERICA)
                .orElse(true);
    }

    /** A shared script is. */
    private static boolean american(Script script, Fleet fleet) {
        return script.whose().shared()
                || fleet.units().of(script.whose()).stream().allMatch(Text::american);
    }

    private static Stream<Text> script(Script script, boolean american) {
        boolean renters = script.head()
                .facts()
                .ifRead(Head.WHO)
                .filter(who -> who.value().forRenters())
                .isPresent();
        return Stream.concat(
                Stream.of(Head.TITLE, Head.LINE)
                        .flatMap(key -> script.head().facts().ifRead(key).stream())
                        .map(it ->
                                new Text(it.value(), it.at(), renters, american, Phrase.SENTENCES, Optional.empty())),
                script.passages().stream()
                        .map(it -> new Text(it.own(), it.at(), renters, american, Phrase.SENTENCES, Optional.of(it))));
    }

    private static List<Text> facts(Facts facts, boolean american) {
        List<Text> texts = new ArrayList<>();
        facts(facts, true, american, texts);
        return texts;
    }

    private static void facts(Facts facts, boolean forRenters, boolean american, List<Text> texts) {
        facts.each((key, value) -> value(key, key.type(), value, forRenters && !key.forStaff(), american, texts));
    }

    private static void value(
            Key<?> key, Type<?> type, Located<?> value, boolean forRenters, boolean american, List<Text> texts) {
        if (type instanceof Type.Text text && text.phrase() != Phrase.NONE) {
            texts.add(new Text(
                    value.value().toString(), value.at(), forRenters, american, text.phrase(), Optional.empty()));
        } else if (value.value() instanceof Described record) {
            facts(record.facts(), forRenters && !forStaff(record), american, texts);
        } else if (type instanceof Type.ListOf<?> list) {
            ((List<?>) value.value())
                    .forEach(it -> value(key, list.element(), (Located<?>) it, forRenters, american, texts));
        }
    }

    private static boolean forStaff(Described record) {
        try {
            return record.forStaff();
        } catch (UnreadException nobodyKnows) {
            return true; // less is asked of it
        }
    }

    /** Whether it is copied from a plate, word for word. */
    public boolean plate() {
        return phrase == Phrase.PLATE;
    }

    /** Its own words with their places. */
    public WordIndex words() {
        return index.get();
    }

    /** Where a part of it stands, as near as is known. */
    public Place at(MatchResult part) {
        return passage.map(it -> it.at(part.start(), part.end())).orElse(at);
    }

    /** The part as the writer typed it. */
    public String typed(MatchResult part) {
        return passage.map(it -> it.text().substring(part.start(), part.end()))
                .orElseGet(part::group)
                .replace('\n', ' ');
    }
}
