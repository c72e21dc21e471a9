package bayfolio.check.notice;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Notice;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A notice where it is written.
 *
 * @param coaches that it is written for: all of the fleet, those that share a description, or one
 * @param ofTheFleet whether it stands in the file of the fleet
 */
record Written(Notice notice, List<Unit> coaches, boolean ofTheFleet) {
    /** All that could be read, the fleet's first. */
    static Stream<Written> all(Fleet fleet) {
        Map<Place, Notice> notices = new LinkedHashMap<>();
        Map<Place, List<Unit>> coaches = new LinkedHashMap<>();
        for (Unit unit : fleet.units()) {
            read(unit.facts(), Unit.NOTICES).forEach(notice -> {
                notices.putIfAbsent(notice.facts().at(), notice);
                coaches.computeIfAbsent(notice.facts().at(), it -> new ArrayList<>())
                        .add(unit);
            });
        }
        return Stream.concat(
                read(fleet.facts().facts(), FleetFacts.NOTICES).map(notice -> new Written(notice, fleet.units(), true)),
                notices.entrySet().stream()
                        .map(each ->
                                new Written(each.getValue(), coaches.getOrDefault(each.getKey(), List.of()), false)));
    }

    private static Stream<Notice> read(Facts facts, Key<List<Located<Notice>>> key) {
        return facts.ifRead(key).stream().flatMap(list -> list.value().stream()).map(Located::value);
    }

    /** As messages call it. */
    String named() {
        return notice.facts()
                .ifRead(Notice.ID)
                .map(id -> "notice `" + id.value() + "`")
                .orElse("a notice");
    }

    /** What is written under a key, as far as it could be read. */
    <T> Optional<Located<T>> fact(Key<T> key) {
        return notice.facts().ifRead(key);
    }

    /** Each of a list, as far as it could be read. */
    Stream<Located<String>> each(Key<List<Located<String>>> key) {
        return fact(key).stream().flatMap(list -> list.value().stream());
    }

    /** A finding, once for each of its coaches where not all of the fleet have it. */
    Stream<Finding> told(Finding finding) {
        return ofTheFleet ? Stream.of(finding) : coaches.stream().map(unit -> finding.on(unit.id()));
    }
}
