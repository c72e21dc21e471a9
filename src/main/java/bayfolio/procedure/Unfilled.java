package bayfolio.procedure;

import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Feature;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Kinds;
import bayfolio.model.Role;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.template.Template;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is wrong with a script whatever the coach, also in sections that no coach of the fleet
 * takes: a misspelled feature, role or word would else sleep there until a refit wakes it.
 */
public final class Unfilled {
    private static final Pattern REFERENCE = Pattern.compile("]\\(([a-z][a-z-]*):([^){}\\s]*)\\)");

    private Unfilled() {}

    public static void check(Script script, Fleet fleet, Library library, Consumer<Finding> findings) {
        references(script, fleet, library, findings);
        for (Template.Asked asked : script.template().asked()) {
            name(asked, fleet, script, findings);
        }
    }

    private static void references(Script script, Fleet fleet, Library library, Consumer<Finding> findings) {
        int line = script.firstLine();
        for (String text : script.body().split("\n", -1)) {
            Matcher reference = REFERENCE.matcher(text);
            while (reference.find()) {
                int start = reference.start(1);
                String written = text.substring(start, reference.end() - 1);
                Place at = Place.of(
                        script.file(),
                        line,
                        1 + text.codePointCount(0, start),
                        written.codePointCount(0, written.length()));
                reference(reference.group(1), reference.group(2), at, script, fleet, library, findings);
            }
            line++;
        }
    }

    private static void reference(
            String kind,
            String name,
            Place at,
            Script script,
            Fleet fleet,
            Library library,
            Consumer<Finding> findings) {
        if (Kinds.named(kind).isPresent()) {
            boolean known = fleet.role(name).isPresent()
                    || things(script, fleet).anyMatch(thing -> thing.id().equals(name));
            if (!known) {
                findings.accept(References.unknownThing(kind, name, at, fleet, units(script, fleet)));
            }
        } else if (kind.equals("procedure") && !library.knows(name)) {
            findings.accept(References.unknownProcedure(name, at, library));
        } else if (kind.equals("word") && fleet.word(name).isEmpty()) {
            findings.accept(References.unknownWord(name, at, fleet));
        }
    }

    private static Stream<Unit> units(Script script, Fleet fleet) {
        return fleet.units().stream()
                .filter(unit -> script.unit().isEmpty()
                        || script.unit().equals(unit.facts().find(Unit.ID)));
    }

    private static Stream<Thing> things(Script script, Fleet fleet) {
        return Stream.concat(units(script, fleet).flatMap(Unit::mentioned), fleet.siteThings());
    }

    private static void name(Template.Asked asked, Fleet fleet, Script script, Consumer<Finding> findings) {
        String[] words = asked.name().split("\\.", -1);
        if (words.length < 2) {
            return; // names of one word belong to the section around them, and are looked at when
            // it is filled in
        }
        Stream<String> known = switch (words[0]) {
            case "has" -> Feature.words().stream();
            case "unit" -> Unit.SHAPE.keyNames().stream();
            case "fleet" -> FleetFacts.SHAPE.keyNames().stream();
            case "all" -> Kinds.names().stream();
            default ->
                Kinds.named(words[0])
                        .map(kind -> idsAndRoles(kind, fleet, script))
                        .orElse(Stream.empty());
        };
        List<String> names = known.toList();
        if (!names.isEmpty() && !names.contains(words[1])) {
            findings.accept(Finding.error(
                            "unknown-name", asked.at(), "there is no name `" + words[1] + "` in `" + words[0] + "`")
                    .near(NearNames.to(words[1], names))
                    .mend("The reference for writers lists the names."));
        }
    }

    private static Stream<String> idsAndRoles(Shape<? extends Thing> kind, Fleet fleet, Script script) {
        return Stream.concat(
                fleet.roles().stream()
                        .filter(role -> role.kind().equals(kind.name()))
                        .map(Role::id),
                things(script, fleet)
                        .filter(thing -> thing.kind().equals(kind.name()))
                        .map(Thing::id));
    }
}
