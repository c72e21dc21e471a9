package bayfolio.check;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.model.Acceptance;
import bayfolio.model.Fleet;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Takes out the warnings and notes that writers live with. An acceptance stands beside the thing that the finding is
 * about, or at the coach for what is about no thing. One that no longer matches anything is told, and errors cannot be
 * accepted: they would be published.
 */
final class Acceptances {
    private final List<Acceptable> all = new ArrayList<>();

    /**
     * @param places of everything said about the thing
     * @param elsewhere whether it is for findings about no thing of the coach
     */
    private record Acceptable(Acceptance acceptance, String unit, Set<Place> places, boolean elsewhere) {
        Place at() {
            return acceptance.facts().at(Acceptance.CODE);
        }

        boolean matches(Finding finding) {
            return finding.code().equals(acceptance.code())
                    && finding.units().contains(unit)
                    && places.contains(finding.at()) != elsewhere;
        }
    }

    private Acceptances(Fleet fleet) {
        for (Unit unit : fleet.units()) {
            if (accepts(unit)) {
                Set<Place> ofThings = new HashSet<>();
                unit.things().forEach(thing -> ofThings.addAll(add(thing, unit)));
                whole(unit.facts().ifRead(Unit.ACCEPT))
                        .forEach(it -> all.add(new Acceptable(it, unit.id(), ofThings, true)));
            }
        }
    }

    private static boolean accepts(Unit unit) {
        return unit.facts().ifRead(Unit.ACCEPT).isPresent()
                || unit.things()
                        .anyMatch(thing ->
                                thing.facts().ifRead(thing.identity().accept()).isPresent());
    }

    private static Stream<Acceptance> whole(Optional<Located<List<Located<Acceptance>>>> list) {
        return list.stream()
                .flatMap(it -> it.value().stream())
                .map(Located::value)
                .filter(it -> it.facts().whole());
    }

    private Set<Place> add(Thing thing, Unit unit) {
        Set<Place> places = new HashSet<>();
        collect(thing.facts(), places);
        whole(thing.facts().ifRead(thing.identity().accept()))
                .forEach(it -> all.add(new Acceptable(it, unit.id(), places, false)));
        return places;
    }

    private static void collect(Facts facts, Set<Place> places) {
        places.add(facts.at());
        facts.each((key, value) -> collect(value, places));
    }

    private static void collect(Located<?> value, Set<Place> places) {
        places.add(value.at());
        if (value.value() instanceof Described record) {
            collect(record.facts(), places);
        } else if (value.value() instanceof List<?> list) {
            list.forEach(each -> collect((Located<?>) each, places));
        }
    }

    /**
     * @param findings each about one coach or about the fleet
     * @param read whether all could be read; what is not found may be in the rest
     */
    static List<Finding> applied(List<Finding> findings, Fleet fleet, boolean read) {
        Acceptances acceptances = new Acceptances(fleet);
        List<Finding> left = new ArrayList<>();
        // One in a model stands for all of its coaches, and has its sense if it has for one.
        Set<Place> matched = new HashSet<>();
        for (Finding finding : findings) {
            List<Acceptable> matching =
                    acceptances.all.stream().filter(it -> it.matches(finding)).toList();
            matching.forEach(it -> matched.add(it.at()));
            if (matching.isEmpty() || finding.isError()) {
                left.add(finding);
            }
            if (finding.isError()) {
                matching.forEach(it -> left.add(Finding.error(
                                "accepted-error",
                                it.at(),
                                "`" + finding.code() + "` is an error here and cannot be accepted")
                        .mend("Mend what it tells; only warnings and notes can be accepted.")
                        .on(it.unit)));
            }
        }
        acceptances.all.stream()
                .filter(it -> read && !matched.contains(it.at()))
                .forEach(it -> left.add(Finding.warning(
                                "acceptance-without-finding",
                                it.at(),
                                "there is no finding `" + it.acceptance.code() + "` here to accept")
                        .mend("Take the acceptance out.")
                        .on(it.unit)));
        return left;
    }
}
