package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Country;
import bayfolio.model.Feature;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Kinds;
import bayfolio.model.Phone;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.template.Template;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is wrong with a script whatever the coach, also in sections that no coach of the fleet
 * takes: a misspelled feature, role or word would else sleep there until a refit wakes it.
 */
public final class ScriptChecker {
    private static final Declared SCRIPT = Declared.of(ScriptNames.WORDS, it -> Declared.NONE);

    private static final Pattern REFERENCE =
            Pattern.compile("]\\(([a-z][a-z-]*+):([^()\\[\\]\\s\"]*+)(?: \"([^\"]*+)\")?\\)");

    private final Fleet fleet;
    private final Library library;
    private final Consumer<Finding> findings;
    private final Map<Whose, Known> known;
    /** What is behind the sections of the script, each asked for by all names within it; by identity. */
    private final Map<Template.Asked, Declared> sections = new IdentityHashMap<>();

    /** What a script refers to and asks for, as it is typed. */
    private record Typed(List<Reference> references, List<Template.Asked> names) {
        static Typed in(Script script) {
            return new Typed(ScriptChecker.references(script), script.template().asked());
        }
    }

    private record Reference(String kind, String name, Place at, Optional<Located<String>> title) {}

    /**
     * What the things of one coach or of the whole fleet are called.
     *
     * @param ids of all kinds
     * @param byKind for each kind its ids and roles
     * @param forStaff for each kind the ids and roles of things that are for staff wherever there is one
     */
    private record Known(Set<String> ids, Map<String, Set<String>> byKind, Map<String, Set<String>> forStaff) {
        Set<String> forStaff(String kind) {
            return forStaff.getOrDefault(kind, Set.of());
        }
    }

    private ScriptChecker(Fleet fleet, Library library, Map<Whose, Known> known, Consumer<Finding> findings) {
        this.fleet = fleet;
        this.library = library;
        this.known = known;
        this.findings = findings;
    }

    public static void check(Fleet fleet, Library library, Consumer<Finding> findings) {
        Map<Whose, Known> known = new ConcurrentHashMap<>();
        library.scripts().parallelStream()
                .map(script -> {
                    List<Finding> told = new ArrayList<>();
                    new ScriptChecker(fleet, library, known, told::add).script(script);
                    return told;
                })
                .forEachOrdered(told -> told.forEach(findings));
    }

    private void script(Script script) {
        Typed typed = script.once(ScriptChecker.class, "", Typed::in);
        typed.references.forEach(reference -> UnreadException.upTo(() -> reference(reference, script)));
        script.head().facts().ifRead(Head.REVERSES).stream()
                .flatMap(undone -> undone.value().stream())
                .forEach(undone -> UnreadException.upTo(() -> undone(undone, script)));
        typed.names.forEach(asked -> UnreadException.upTo(() -> name(asked, script)));
    }

    private void undone(Located<String> undone, Script script) {
        if (!library.knows(Form.PROCEDURE, undone.value(), script.whose())) {
            findings.accept(References.unknownScript(Form.PROCEDURE, undone.value(), undone.at(), library));
        }
    }

    private static List<Reference> references(Script script) {
        List<Reference> references = new ArrayList<>();
        int line = script.firstLine();
        for (String text : script.body().split("\n", -1)) {
            Matcher reference = REFERENCE.matcher(text);
            for (int link = text.indexOf("]("); link >= 0; link = text.indexOf("](", link + 1)) {
                if (!reference.region(link, text.length()).lookingAt()) {
                    continue;
                }
                references.add(reference(reference, text, script, line));
            }
            line++;
        }
        return references;
    }

    private static Reference reference(MatchResult typed, String text, Script script, int line) {
        Optional<Located<String>> title = typed.group(3) == null
                ? Optional.empty()
                : Optional.of(new Located<>(typed.group(3), place(script, line, text, typed.start(3), typed.end(3))));
        return new Reference(
                typed.group(1), typed.group(2), place(script, line, text, typed.start(1), typed.end(2)), title);
    }

    private static Place place(Script script, int line, String text, int from, int to) {
        return Place.of(
                script.file(), line, 1 + text.codePointCount(0, from), Math.max(1, text.codePointCount(from, to)));
    }

    private void reference(Reference reference, Script script) {
        reference.title.ifPresent(title -> Wish.of(title.value(), reference.kind, title.at(), findings));
        String kind = reference.kind;
        String name = reference.name;
        Place at = reference.at;
        boolean filled = name.contains("{{");
        if (Kinds.named(kind).isPresent()) {
            if (!filled
                    && fleet.role(name).isEmpty()
                    && !known(script).ids.contains(name)
                    && (script.whose().shared() || idsRead(kind, script))) {
                findings.accept(
                        script.whose().shared()
                                ? References.unknownRole(kind, name, at, fleet)
                                : References.unknownThing(kind, name, at, fleet, units(script)));
            } else if (!script.forStaff() && known(script).forStaff(kind).contains(name)) {
                findings.accept(References.staffThing(kind, name, at));
            }
        } else if (!References.isScheme(kind)) {
            findings.accept(References.unknownScheme(kind + ":" + name, kind, at));
        } else if (!filled
                && form(kind)
                        .filter(form -> !library.knows(form, name, script.whose()))
                        .isPresent()) {
            findings.accept(References.unknownScript(form(kind).orElseThrow(), name, at, library));
        } else if (!filled
                && !script.forStaff()
                && form(kind).filter(form -> library.forStaff(form, name)).isPresent()) {
            findings.accept(References.staffScript(form(kind).orElseThrow(), name, at));
        } else if (kind.equals("word") && !filled && fleet.word(name).isEmpty()) {
            findings.accept(References.unknownWord(name, at, fleet));
        } else if (kind.equals("page") && !filled) {
            References.unknownPage(name, at, script.forStaff()).ifPresent(findings);
        } else if (kind.equals("stage") && !filled) {
            References.unknownStage(name, at).ifPresent(findings);
        } else if (kind.equals("phone")
                && !filled
                && fleet.phonesRead()
                && !fleet.phones().isEmpty()
                && !name.equals(Phone.EMERGENCY)) {
            References.unknownPhone(name, at, fleet).ifPresent(findings);
        }
    }

    private static Optional<Form> form(String scheme) {
        return Stream.of(Form.values())
                .filter(form -> form.hasSteps() && form.scheme().equals(scheme))
                .findFirst();
    }

    private Known known(Script script) {
        return known.computeIfAbsent(script.whose(), it -> {
            Map<String, Set<String>> byKind = new HashMap<>();
            fleet.roles()
                    .forEach(role -> byKind.computeIfAbsent(role.kind(), kind -> new LinkedHashSet<>())
                            .add(role.id()));
            Set<String> ids = new HashSet<>();
            // In texts for several coaches things are called by their roles alone.
            Stream.concat(units(script).flatMap(Unit::things), fleet.siteThings())
                    .filter(thing -> !script.whose().shared())
                    .forEach(thing -> {
                        ids.add(thing.id());
                        byKind.computeIfAbsent(thing.kind(), kind -> new LinkedHashSet<>())
                                .add(thing.id());
                    });
            return new Known(ids, byKind, forStaff(units(script)));
        });
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

    /** Whether it is known what things of a kind the script may speak of. */
    private boolean idsRead(String kind, Script script) {
        return (fleet.coachesRead() || !script.whose().shared())
                && fleet.siteRead(kind)
                && units(script).allMatch(unit -> unit.idsRead(kind));
    }

    private Stream<Unit> units(Script script) {
        return fleet.units().stream().filter(unit -> script.whose().has(unit));
    }

    private void name(Template.Asked asked, Script script) {
        String[] words = asked.name().split("\\.", -1);
        Optional<Declared> scope = scope(asked, script);
        if (scope.isEmpty()) {
            Set<String> names = new LinkedHashSet<>();
            scopes(asked, script).forEach(it -> names.addAll(it.known(script.forStaff())));
            findings.accept(unknown(asked, words[0], names, ""));
            return;
        }
        Declared names = scope.get();
        for (int i = 0; i < words.length && names.known().isPresent(); i++) {
            Collection<String> known = names.known().get();
            if (known.isEmpty()) {
                return; // nothing within it, which is told where it is filled in
            }
            if (!known.contains(words[i])) {
                String before = String.join(".", List.of(words).subList(0, i));
                findings.accept(unknown(asked, words[i], names.known(script.forStaff()), before));
                return;
            }
            names = names.find().apply(words[i]);
            if (names.withheld().isPresent() && !script.forStaff()) {
                Value.Withheld withheld = names.withheld().get();
                findings.accept(Finding.error("staff-fact-for-renter", asked.at(), withheld.why())
                        .mend(withheld.mend()));
                return;
            }
        }
    }

    private static Finding unknown(Template.Asked asked, String word, Collection<String> known, String before) {
        return Finding.error(
                        "unknown-name",
                        asked.at(),
                        "there is no name `" + word + "`" + (before.isEmpty() ? "" : " in `" + before + "`"))
                .near(NearNames.to(word, known))
                .mend("The reference for writers lists the names.");
    }

    /** What the name is looked up in: the innermost that knows its first word, or that only a coach could tell. */
    private Optional<Declared> scope(Template.Asked asked, Script script) {
        String first = asked.name().split("\\.", -1)[0];
        // A whole name such as `switch.gas-safety-reset` is meant as such even where nobody knows what is around it.
        boolean whole = !first.equals(asked.name()) && RootNames.ROOTS.contains(first);
        return scopes(asked, script).stream()
                .filter(scope -> scope.known().map(it -> it.contains(first)).orElse(!whole))
                .findFirst();
    }

    /** The names of the sections around, from inside out, then those that every procedure may use. */
    private List<Declared> scopes(Template.Asked asked, Script script) {
        List<Declared> scopes = new ArrayList<>();
        for (Optional<Template.Asked> section = asked.within();
                section.isPresent();
                section = section.get().within()) {
            Declared behind = sections.get(section.get());
            if (behind == null) {
                behind = behind(section.get(), script);
                sections.put(section.get(), behind);
            }
            scopes.add(behind);
        }
        scopes.add(Declared.of(RootNames.ROOTS, word -> root(word, script)));
        return scopes;
    }

    private Declared behind(Template.Asked section, Script script) {
        Declared names = scope(section, script).orElse(Declared.OPEN);
        for (String word : section.name().split("\\.", -1)) {
            boolean known = names.known().filter(it -> it.contains(word)).isPresent();
            // What is behind a name that does not exist is nobody's second mistake.
            names = known ? names.find().apply(word) : Declared.OPEN;
        }
        return names;
    }

    private Declared root(String word, Script script) {
        return switch (word) {
            case "has" -> Declared.of(Feature.words(), it -> Declared.NONE);
            case "unit" -> Declared.of(Unit.SHAPE);
            case "fleet" -> Declared.of(FleetFacts.SHAPE);
            case "country" -> Declared.of(Country.SHAPE);
            case "reckoned" -> Declared.of(ReckonedNames.words(), it -> Declared.NONE);
            case "procedure" -> scripts(Form.PROCEDURE, script);
            case "trouble" -> scripts(Form.TROUBLE, script);
            case "turn", "turn-back" -> Declared.of(TurnNames.WORDS, it -> SCRIPT);
            case "any" -> Declared.of(Kinds.names(), kind -> things(kind, script, Declared.NONE));
            case "all" -> Declared.of(Kinds.names(), ScriptChecker::kind);
            default ->
                Kinds.named(word)
                        .map(it -> things(word, script, kind(word)))
                        .filter(it -> it.known().filter(Collection::isEmpty).isEmpty())
                        .orElse(Declared.OPEN);
        };
    }

    /** All of a kind by their ids and roles, with the same behind each. */
    private Declared things(String kind, Script script, Declared behind) {
        if (!script.whose().shared() && !idsRead(kind, script)) {
            return Declared.OPEN;
        }
        Set<String> forStaff = known(script).forStaff(kind);
        return Declared.of(
                known(script).byKind.getOrDefault(kind, Set.of()),
                id -> forStaff.contains(id) ? behind.withheld(Withheld.thing(kind, id)) : behind);
    }

    private Declared scripts(Form form, Script script) {
        if (!library.whole(script.whose())) {
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
