package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Kinds;
import bayfolio.model.Situation;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The names that a text or a question may use whatever the coach: what {@link RootNames} finds on one, as declared. */
final class DeclaredNames {
    private static final Declared SCRIPT = Declared.of(ScriptNames.WORDS, it -> Declared.NONE);

    private final Fleet fleet;
    private final Library library;
    private final Whose whose;
    private final boolean byId;
    private final Set<String> ids = new HashSet<>();
    /** For each kind its roles, and its ids where those are names. */
    private final Map<String, Set<String>> byKind = new HashMap<>();
    /** For each kind the ids and roles of things that are for staff wherever there is one. */
    private final Map<String, Set<String>> forStaff;

    private DeclaredNames(Fleet fleet, Library library, Whose whose, boolean byId) {
        this.fleet = fleet;
        this.library = library;
        this.whose = whose;
        this.byId = byId;
        fleet.roles()
                .forEach(role -> byKind.computeIfAbsent(role.kind(), kind -> new LinkedHashSet<>())
                        .add(role.id()));
        Stream.concat(units().flatMap(Unit::things), fleet.siteThings())
                .filter(thing -> byId)
                .forEach(thing -> {
                    ids.add(thing.id());
                    byKind.computeIfAbsent(thing.kind(), kind -> new LinkedHashSet<>())
                            .add(thing.id());
                });
        this.forStaff = forStaff(units());
    }

    /**
     * Those of texts.
     *
     * @param whose they are: of a coach or a model ids are names, in texts for all things are called by their roles alone
     */
    static DeclaredNames ofTexts(Fleet fleet, Library library, Whose whose) {
        return new DeclaredNames(fleet, library, whose, !whose.shared());
    }

    /** Those of a question about all coaches: ids of each of them, too. */
    static DeclaredNames ofQuestions(Fleet fleet, Library library) {
        return new DeclaredNames(fleet, library, Whose.ALL, true);
    }

    private static Map<String, Set<String>> forStaff(Stream<Unit> units) {
        Map<String, Set<String>> forStaff = new HashMap<>();
        Map<String, Set<String>> forAll = new HashMap<>();
        units.flatMap(Unit::things)
                .forEach(thing -> UnreadException.upTo(() -> {
                    Set<String> names = (thing.forStaff() ? forStaff : forAll)
                            .computeIfAbsent(thing.kind(), kind -> new HashSet<>());
                    names.add(thing.id());
                    names.addAll(thing.roles());
                }));
        forStaff.forEach((kind, names) -> names.removeAll(forAll.getOrDefault(kind, Set.of())));
        return forStaff;
    }

    /** The coaches that it is about. */
    Stream<Unit> units() {
        return fleet.units().of(whose).stream();
    }

    /** Whether a thing of any kind has that id; none has one where ids are no names. */
    boolean hasId(String id) {
        return ids.contains(id);
    }

    /** Whether all things of a kind that have that id or role are for staff. */
    boolean forStaff(String kind, String idOrRole) {
        return forStaff.getOrDefault(kind, Set.of()).contains(idOrRole);
    }

    /** Whether it is known what things of a kind may be spoken of. */
    boolean idsRead(String kind) {
        return (fleet.coachesRead() || !whose.shared())
                && fleet.siteRead(kind)
                && units().allMatch(each -> each.idsRead(kind));
    }

    /** All of them. */
    Declared all() {
        return Declared.of(RootNames.ROOTS, this::root);
    }

    /** What is behind the first word of a name. */
    private Declared root(String word) {
        return switch (word) {
            case "has" ->
                fleet.equipment().whole()
                        ? Declared.of(fleet.equipment().features(), it -> Declared.NONE)
                        : Declared.OPEN;
            case "unit" -> Declared.of(Unit.SHAPE);
            case "fleet" -> Declared.of(FleetFacts.SHAPE);
            case "country" -> Declared.of(Country.SHAPE);
            case "reckoned" -> Declared.of(ReckonedNames.words(), it -> Declared.NONE);
            case "procedure" -> scripts(Form.PROCEDURE);
            case "trouble" -> scripts(Form.TROUBLE);
            case "turn", "turn-back" -> Declared.of(TurnNames.words(fleet.equipment()), it -> SCRIPT);
            case "acts" -> Declared.of(Situation.words(), it -> Declared.NONE);
            case "any" -> Declared.of(Kinds.names(), kind -> things(kind, Declared.NONE));
            case "all" -> Declared.of(Kinds.names(), DeclaredNames::kind);
            default ->
                Kinds.named(word)
                        .map(it -> things(word, kind(word)))
                        .filter(it -> it.known().filter(Collection::isEmpty).isEmpty())
                        .orElse(Declared.OPEN);
        };
    }

    /** All of a kind by their ids and roles, with the same behind each. */
    private Declared things(String kind, Declared behind) {
        if (byId && !idsRead(kind)) {
            return Declared.OPEN.ofThings(kind);
        }
        return Declared.of(
                        byKind.getOrDefault(kind, Set.of()),
                        id -> forStaff(kind, id) ? behind.withheld(Withheld.thing(kind, id)) : behind)
                .ofThings(kind);
    }

    private Declared scripts(Form form) {
        if (!library.whole(whose)) {
            return Declared.OPEN;
        }
        return Declared.of(
                library.ids(form),
                id -> library.forStaff(form, id) ? SCRIPT.withheld(Withheld.script(form, id)) : SCRIPT);
    }

    private static Declared kind(String name) {
        return Kinds.named(name).map(Declared::of).orElse(Declared.OPEN);
    }
}
