package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.model.Phone;
import bayfolio.model.Whose;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.template.Template;
import java.util.ArrayList;
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

/**
 * What is wrong with a script whatever the coach, also in sections that no coach of the fleet
 * takes: a misspelled feature, role or word would else sleep there until a refit wakes it.
 */
public final class ScriptChecker {
    private static final Pattern REFERENCE =
            Pattern.compile("]\\(([a-z][a-z-]*+):([^()\\[\\]\\s\"]*+)(?: \"([^\"]*+)\")?\\)");

    private final Fleet fleet;
    private final Library library;
    private final Consumer<Finding> findings;
    private final Map<Whose, DeclaredNames> known;
    /** What is behind the sections of the script, each asked for by all names within it; by identity. */
    private final Map<Template.Asked, Declared> sections = new IdentityHashMap<>();

    /** What a script refers to and asks for, as it is typed. */
    private record Typed(List<Reference> references, List<Template.Asked> names) {
        static Typed in(Script script) {
            return new Typed(ScriptChecker.references(script), script.template().asked());
        }
    }

    record Reference(String kind, String name, Place at, Optional<Located<String>> title) {}

    ScriptChecker(Fleet fleet, Library library, Map<Whose, DeclaredNames> known, Consumer<Finding> findings) {
        this.fleet = fleet;
        this.library = library;
        this.known = known;
        this.findings = findings;
    }

    public static void check(Fleet fleet, Library library, Consumer<Finding> findings) {
        Map<Whose, DeclaredNames> known = new ConcurrentHashMap<>();
        library.texts().parallelStream()
                .map(script -> {
                    List<Finding> told = new ArrayList<>();
                    new ScriptChecker(fleet, library, known, told::add).script(script);
                    return told;
                })
                .forEachOrdered(told -> told.forEach(findings));
    }

    private void script(Script script) {
        Typed typed = script.once("", (it, nothing) -> Typed.in(it));
        typed.references.forEach(reference -> UnreadException.upTo(() -> reference(reference, script)));
        typed.names.forEach(asked -> UnreadException.upTo(() -> name(asked, script)));
    }

    static List<Reference> references(Script script) {
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
                    && !known(script).hasId(name)
                    && (script.whose().shared() || known(script).idsRead(kind))) {
                findings.accept(
                        script.whose().shared()
                                ? References.unknownRole(kind, name, at, fleet)
                                : References.unknownThing(
                                        kind, name, at, fleet, known(script).units()));
            } else if (!script.mayNameStaff() && known(script).forStaff(kind, name)) {
                findings.accept(References.staffThing(kind, name, at));
            }
        } else if (!References.isScheme(kind)) {
            findings.accept(References.unknownScheme(kind + ":" + name, kind, at));
        } else if (!filled
                && Form.ofSteps(kind)
                        .filter(form -> !library.knows(form, name, script.whose()))
                        .isPresent()) {
            findings.accept(References.unknownScript(Form.ofSteps(kind).orElseThrow(), name, at, library));
        } else if (!filled
                && !script.mayNameStaff()
                && Form.ofSteps(kind)
                        .filter(form -> library.forStaff(form, name))
                        .isPresent()) {
            findings.accept(References.staffScript(Form.ofSteps(kind).orElseThrow(), name, at));
        } else if (kind.equals("word") && !filled && fleet.word(name).isEmpty()) {
            findings.accept(References.unknownWord(name, at, fleet));
        } else if (kind.equals("page") && !filled) {
            References.unknownPage(name, at, script.mayNameStaff()).ifPresent(findings);
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

    private DeclaredNames known(Script script) {
        return known.computeIfAbsent(script.whose(), whose -> DeclaredNames.ofTexts(fleet, library, whose));
    }

    private void name(Template.Asked asked, Script script) {
        String[] words = asked.name().split("\\.", -1);
        Optional<Declared> scope = scope(asked, script);
        if (scope.isEmpty()) {
            Set<String> names = new LinkedHashSet<>();
            scopes(asked, script).forEach(it -> names.addAll(it.known(script.mayNameStaff())));
            findings.accept(Declared.unknown(words[0], "", names, asked.at()));
            return;
        }
        scope.get()
                .wrong(words, asked.at(), script.mayNameStaff())
                // What has nothing within it is told where it is filled in.
                .filter(finding -> !finding.code().equals(Declared.INNERMOST))
                .ifPresent(findings);
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
        scopes.add(known(script).all());
        return scopes;
    }

    /** Of each word of a name the kind of things that go by it there; empty for a word by which none goes. */
    List<Optional<String>> things(Template.Asked asked, Script script) {
        List<Optional<String>> things = new ArrayList<>();
        Declared names = scope(asked, script).orElse(Declared.OPEN);
        for (String word : asked.name().split("\\.", -1)) {
            things.add(names.things());
            boolean known = names.known().filter(it -> it.contains(word)).isPresent();
            names = known ? names.find().apply(word) : Declared.OPEN;
        }
        return things;
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
}
