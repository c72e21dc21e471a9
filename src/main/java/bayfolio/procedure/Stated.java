package bayfolio.procedure;

import bayfolio.catalog.Catalog;
import bayfolio.finding.Finding;
import bayfolio.measure.Quantity;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * What a coach states under a dotted name, as procedures write it: {@code tank.gray.capacity}; facts of the coach itself
 * without {@code unit} before them, {@code size.height}.
 *
 * @param name with the id of the thing in place of a role: {@code tank.gray-tank.capacity}
 * @param words as readers read it: {@code 40 gal (151 L)}; of a thing its name
 * @param figure the measure, where it is one
 * @param at where it is written; where nobody wrote it as such, the thing or the description that it is worked out from
 */
public record Stated(String name, String words, Optional<Quantity> figure, Place at) {
    private static final String UNIT = "unit";
    private static final String ALL = "all";

    /**
     * All that it states under that name, in walking order; of a record without a name, such as {@code generator}, each of its
     * facts. Nothing where it states none of it.
     *
     * @throws bayfolio.fact.UnreadException when what it hangs on could not be read
     */
    public static List<Stated> under(String name, Coach coach, Library library, Catalog words) {
        References references = new References(coach, library, words, true, true);
        Names names = new RootNames(references.wording(), true, true, references.scripts());
        return new Walk(words)
                .on(
                        new Value.Inner(names),
                        "",
                        whole(name),
                        coach.unit().facts().at())
                .toList();
    }

    /** What is wrong with a name whatever the coach: nobody could state it. */
    public static void check(Located<String> name, Fleet fleet, Library library, Consumer<Finding> findings) {
        List<String> words = whole(name.value());
        Declared names = DeclaredNames.ofQuestions(fleet, library).all();
        if (words.get(0).equals(UNIT) && !name.value().startsWith(UNIT)) {
            // Told as it was written.
            Declared facts = names.find().apply(UNIT);
            List<String> known = facts.known(true);
            if (!known.contains(words.get(1))) {
                findings.accept(Declared.unknown(
                        words.get(1),
                        "",
                        Stream.concat(RootNames.ROOTS.stream(), known.stream()).toList(),
                        name.at()));
                return;
            }
            names = facts;
            words = words.subList(1, words.size());
        }
        names.wrong(words.toArray(String[]::new), name.at(), true).ifPresent(findings);
    }

    /** From its first word on: a kind alone is all things of that kind, a word that begins no name a fact of the coach. */
    private static List<String> whole(String name) {
        List<String> words = List.of(name.split("\\.", -1));
        String first = words.get(0);
        return Kinds.names().contains(first) && words.size() == 1
                ? List.of(ALL, first)
                : RootNames.ROOTS.contains(first)
                        ? words
                        : Stream.concat(Stream.of(UNIT), words.stream()).toList();
    }

    /** From value to value, by the words of the name. */
    private record Walk(Catalog screen) {
        /**
         * @param path what was gone through so far
         * @param rest words of the name that are left
         * @param around the nearest thing or record on the way
         */
        Stream<Stated> on(Value value, String path, List<String> rest, Place around) {
            if (value instanceof Value.Many many) {
                return many.each().stream().flatMap(each -> on(each, path, rest, around));
            }
            if (value instanceof Value.Inner inner) {
                return inner.names() instanceof ThingNames thing
                        ? on(thing, inner.fact(), path, rest)
                        : on(
                                inner.names(),
                                path,
                                rest,
                                inner.fact().map(Located::at).orElse(around));
            }
            if (!rest.isEmpty()) {
                return Stream.of();
            }
            if (value instanceof Value.Text text) {
                return Stream.of(stated(path, text.text(), text.fact(), around));
            }
            // What is worked out and not so is not stated; a writer's `no` is.
            return value instanceof Value.Flag flag
                            && (flag.yes() || flag.fact().isPresent())
                    ? Stream.of(stated(path, screen.say(flag.yes() ? "yes" : "no"), flag.fact(), around))
                    : Stream.of();
        }

        private Stream<Stated> on(ThingNames names, Optional<Located<?>> fact, String path, List<String> rest) {
            // What was reached by a fact, such as the circuit of a load, keeps the name of the fact.
            String here = fact.isPresent()
                    ? path
                    : names.thing().kind() + "." + names.thing().id();
            Place at = names.thing().facts().at();
            return rest.isEmpty()
                    ? Stream.of(stated(here, names.thing().name(), fact, at))
                    : on(names.find(rest.get(0)), here + "." + rest.get(0), rest.subList(1, rest.size()), at);
        }

        private Stream<Stated> on(Names names, String path, List<String> rest, Place around) {
            if (!rest.isEmpty()) {
                return on(names.find(rest.get(0)), then(path, rest.get(0)), rest.subList(1, rest.size()), around);
            }
            return names.known().stream().flatMap(word -> on(names.find(word), then(path, word), List.of(), around));
        }

        private static String then(String path, String word) {
            return path.isEmpty() ? word : path + "." + word;
        }

        private static Stated stated(String path, String words, Optional<Located<?>> fact, Place around) {
            return new Stated(
                    path.startsWith(UNIT + ".") ? path.substring(UNIT.length() + 1) : path,
                    (words.startsWith(References.EXACTLY) ? words.substring(References.EXACTLY.length()) : words)
                            .replace('\u00A0', ' '),
                    fact.map(Located::value).filter(Quantity.class::isInstance).map(Quantity.class::cast),
                    fact.map(Located::at).orElse(around));
        }
    }
}
