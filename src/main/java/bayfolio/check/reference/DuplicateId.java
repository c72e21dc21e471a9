package bayfolio.check.reference;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Phone;
import bayfolio.model.PublishedSource;
import bayfolio.model.Role;
import bayfolio.model.Unit;
import bayfolio.model.Word;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags an id that is given twice where it must be unique: coaches and procedures in the fleet,
 * things on one coach whatever their kind, roles, words, sources, phones.
 */
public final class DuplicateId implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<Finding> findings = new ArrayList<>();
        same("coach", fleet.units().stream().flatMap(unit -> unit.facts().ifRead(Unit.ID).stream()), findings);
        for (Unit unit : fleet.units()) {
            same("thing", unit.things().map(thing -> new Located<>(thing.id(), thing.at())), findings);
            same(
                    "procedure",
                    library.scripts().stream()
                            .filter(script -> script.whose().has(unit))
                            .flatMap(DuplicateId::id),
                    findings);
        }
        same(
                "procedure",
                library.scripts().stream()
                        .filter(script -> script.whose().shared())
                        .flatMap(DuplicateId::id),
                findings);
        same("role", fleet.roles().stream().flatMap(role -> role.facts().ifRead(Role.ID).stream()), findings);
        same("word", fleet.words().stream().flatMap(word -> word.facts().ifRead(Word.ID).stream()), findings);
        same(
                "source",
                fleet.sources().stream().flatMap(source -> source.facts().ifRead(PublishedSource.ID).stream()),
                findings);
        same(
                "phone",
                fleet.facts().facts().ifRead(FleetFacts.PHONES).stream()
                        .flatMap(phones -> phones.value().stream())
                        .map(Located::value)
                        .flatMap(phone -> phone.facts().ifRead(Phone.ID).stream()),
                findings);
        return findings.stream();
    }

    private static Stream<Located<String>> id(Script script) {
        return script.head().facts().ifRead(Head.ID).stream();
    }

    private static void same(String what, Stream<Located<String>> ids, List<Finding> findings) {
        Map<String, Place> first = new HashMap<>();
        ids.forEach(id -> Optional.ofNullable(first.putIfAbsent(id.value(), id.at()))
                .ifPresent(before -> findings.add(Finding.error(
                                "duplicate-id",
                                id.at(),
                                "the id `" + id.value() + "` belongs to another " + what + " already, at " + before)
                        .mend("Give one of them an id of its own."))));
    }
}
