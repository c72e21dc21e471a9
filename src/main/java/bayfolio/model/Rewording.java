package bayfolio.model;

import bayfolio.catalog.Catalogs;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.source.Digest;
import bayfolio.source.Located;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The texts of a fleet's facts in other languages. Each is known by the fact that it is of and by the digest of the text that
 * was translated; where that has changed since, readers get the text as it is written.
 */
public final class Rewording {
    public static final Rewording NONE = new Rewording(List.of());

    private final List<OfALanguage> written;
    private final Map<String, Map<Name, Located<String>>> byLanguage = new HashMap<>();
    private final Set<SourceFile> files = new HashSet<>();
    private final Map<Worded, Fleet> fleets = new HashMap<>();

    /**
     * A file of them.
     *
     * @param unit the coach that it is of; empty for one of the fleet and of what all share
     */
    public record OfALanguage(String language, Whose whose, FactTexts texts) {
        private Stream<FactText> each() {
            return texts.facts().all(FactTexts.TEXTS).stream()
                    .filter(text -> text.facts().whole());
        }
    }

    /** A fleet in a language; the renters' own has less in it than that of staff. */
    private record Worded(String language, Fleet fleet) {}

    /** A text by what it is of; of those of a list, by the digest. */
    private record Name(Whose whose, String of, String digest) {}

    /** One text of a fact as written. */
    public record Source(String of, Located<String> text) {
        public String digest() {
            return Digest.of(text.value());
        }
    }

    public Rewording(List<OfALanguage> written) {
        this.written = List.copyOf(written);
        for (OfALanguage file : written) {
            files.add(file.texts().facts().at().file());
            Map<Name, Located<String>> texts = byLanguage.computeIfAbsent(file.language(), it -> new HashMap<>());
            file.each()
                    .forEach(each -> each.facts()
                            .located(FactText.TEXT)
                            .ifPresent(text -> texts.putIfAbsent(
                                    new Name(
                                            file.whose(),
                                            each.facts().get(FactText.OF),
                                            each.facts().get(FactText.SOURCE)),
                                    text)));
        }
    }

    /** A coach in the words of a language, as far as there are any. */
    public Coach in(String language, Coach coach) {
        return Stream.of(language, Catalogs.main(language))
                .filter(byLanguage::containsKey)
                .findFirst()
                .map(known -> new Coach(
                        fleet(known, coach.fleet()),
                        ((Unit) reworded(known, whose(coach.unit()), "unit", coach.unit()))
                                .equipped(coach.unit().equipment())))
                .orElse(coach);
    }

    private synchronized Fleet fleet(String language, Fleet fleet) {
        List<Whose> shared = List.of(Whose.ALL);
        return fleets.computeIfAbsent(
                new Worded(language, fleet),
                it -> fleet.worded(
                        (FleetFacts) reworded(language, shared, "fleet", fleet.facts()),
                        fleet.words().stream()
                                .map(word -> (Word) reworded(language, shared, name(word, "word"), word))
                                .toList(),
                        fleet.countries().stream()
                                .map(country -> (Country) reworded(language, shared, name(country, "country"), country))
                                .toList()));
    }

    private Described reworded(String language, List<Whose> whose, String name, Described record) {
        Map<Name, Located<String>> texts = byLanguage.getOrDefault(language, Map.of());
        return record.facts()
                .shape()
                .make(facts(
                        record.facts(),
                        name,
                        (of, text) -> whose.stream()
                                .flatMap(it ->
                                        Optional.ofNullable(texts.get(new Name(it, of, Digest.of(text.value()))))
                                                .stream())
                                .findFirst()
                                .orElse(text)));
    }

    /** Where the texts of a coach are looked for: among its own, then among those of its model. */
    private static List<Whose> whose(Unit unit) {
        return Stream.concat(
                        Stream.<Whose>of(new Whose.OfACoach(unit.id())),
                        unit.model().<Whose>map(Whose.OfAModel::new).stream())
                .toList();
    }

    /** What is made of each text, which is known by the fact that it is of. */
    private interface Change {
        Located<String> of(String name, Located<String> text);
    }

    private static Facts facts(Facts facts, String name, Change change) {
        return facts.changed((key, value) -> value(key, key.type(), name + "/" + key.name(), value, change));
    }

    private static Located<?> value(Key<?> key, Type<?> type, String name, Located<?> value, Change change) {
        // What stands on a plate stands there whatever language a coach speaks.
        if (Type.ofWords(type) && type != Type.PLATE) {
            return change.of(name, value.map(Object::toString));
        }
        if (value.value() instanceof Described record) {
            Facts made = facts(record.facts(), name(record, name), change);
            return new Located<>(record.facts().shape().make(made), value.at(), value.written());
        }
        if (type instanceof Type.ListOf<?> list && value.value() instanceof List<?> all) {
            return new Located<>(
                    all.stream()
                            .<Located<?>>map(each -> value(key, list.element(), name, (Located<?>) each, change))
                            .toList(),
                    value.at(),
                    value.written());
        }
        return value;
    }

    /** A record that has an id goes by that; others by the key that they stand under. */
    private static String name(Described record, String otherwise) {
        return record.facts()
                .shape()
                .key("id")
                .flatMap(key -> record.facts().ifRead(key))
                .map(id -> record.facts().shape().name() + "/" + id.value())
                .orElse(otherwise);
    }

    /** All texts of the fleet and of what all share that can be translated, in the order in which they are written. */
    public static List<Source> of(Fleet fleet) {
        List<Source> sources = new ArrayList<>(of("fleet", fleet.facts()));
        fleet.words().forEach(word -> sources.addAll(of(name(word, "word"), word)));
        fleet.countries().forEach(country -> sources.addAll(of(name(country, "country"), country)));
        return sources;
    }

    /** All texts of a coach that can be translated, in the order in which they are written. */
    public static List<Source> of(Unit unit) {
        return of("unit", unit);
    }

    private static List<Source> of(String name, Described record) {
        List<Source> sources = new ArrayList<>();
        facts(record.facts(), name, (of, text) -> {
            sources.add(new Source(of, text));
            return text;
        });
        return sources;
    }

    /** Texts of the fleet for which there is none in a language. */
    public List<Source> missing(String language, Fleet fleet) {
        return missing(language, List.of(Whose.ALL), of(fleet));
    }

    /** The same of a coach. */
    public List<Source> missing(String language, Unit unit) {
        return missing(language, whose(unit), of(unit));
    }

    private List<Source> missing(String language, List<Whose> whose, List<Source> sources) {
        Map<Name, Located<String>> texts = byLanguage.getOrDefault(language, Map.of());
        return sources.stream()
                .filter(source ->
                        whose.stream().noneMatch(it -> texts.containsKey(new Name(it, source.of(), source.digest()))))
                .toList();
    }

    /** Languages into which somebody translates texts of the fleet. */
    public Set<String> languages() {
        return languages(List.of(Whose.ALL));
    }

    /** The same of a coach. */
    public Set<String> languages(Unit unit) {
        return languages(whose(unit));
    }

    private Set<String> languages(List<Whose> whose) {
        return written.stream()
                .filter(file -> whose.contains(file.whose()))
                .map(OfALanguage::language)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether a text has come from here. */
    public boolean made(Located<?> text) {
        return files.contains(text.at().file());
    }

    /** Texts of facts that are no more, or that have changed since. */
    public List<Finding> check(Fleet fleet) {
        List<Finding> findings = new ArrayList<>();
        for (OfALanguage file : written) {
            List<Source> sources = file.whose().shared()
                    ? of(fleet)
                    : fleet.units().of(file.whose()).stream()
                            .flatMap(unit -> of(unit).stream())
                            .toList();
            Map<String, List<String>> digests = new LinkedHashMap<>();
            sources.forEach(source -> digests.computeIfAbsent(source.of(), it -> new ArrayList<>())
                    .add(source.digest()));
            file.each().forEach(text -> check(file.language(), text, digests).ifPresent(findings::add));
        }
        return findings;
    }

    private static Optional<Finding> check(String language, FactText text, Map<String, List<String>> digests) {
        String of = text.facts().get(FactText.OF);
        List<String> known = digests.get(of);
        if (known == null) {
            return Optional.of(Finding.error(
                            "unknown-translation",
                            text.facts().at(FactText.OF),
                            "there is no text `" + of + "` to be translated")
                    .near(NearNames.to(of, List.copyOf(digests.keySet())))
                    .mend("Name the fact whose text this is, or take it out."));
        }
        return known.contains(text.facts().get(FactText.SOURCE))
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "stale-translation",
                                text.facts().at(FactText.SOURCE),
                                "`" + of + "` has changed since it was translated into `" + language + "`")
                        .mend("Translate what is new, then write `source: " + String.join("` or `", known) + "`."));
    }
}
