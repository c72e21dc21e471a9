package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.FleetRule;
import bayfolio.check.Rule;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Left;
import bayfolio.model.TakenOut;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags what was taken out of a coach, or has left the fleet, and is there: an id that was given out once is not used again. */
public final class TakenOutInUse implements Rule, FleetRule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Place> first = new HashMap<>();
        for (TakenOut out : coach.unit().facts().all(Unit.TAKEN_OUT)) {
            String kind = out.kind();
            Located<String> was = out.facts().located(TakenOut.WAS).orElseThrow();
            Optional<Place> there = coach.coach()
                    .thing(kind, out.id())
                    .map(Thing::at)
                    .or(() -> coach.procedures().stream()
                            .filter(it ->
                                    it.form().scheme().equals(kind) && it.id().equals(out.id()))
                            .map(it -> it.head().facts().at())
                            .findFirst());
            there.ifPresent(at -> findings.add(Finding.error(
                            "taken-out-in-use",
                            was.at(),
                            "`" + was.value() + "` is taken out, and " + Article.a(kind)
                                    + " of this coach has that id, at " + at)
                    .mend("Give the new one another id, or take the line out if it is the old one.")));
            twice(first, was).ifPresent(findings::add);
        }
        return findings.stream();
    }

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Place> first = new HashMap<>();
        for (Left left : fleet.facts().facts().all(FleetFacts.LEFT)) {
            boolean there = fleet.coaches().contains(left.id());
            Located<String> id = left.facts().located(Left.ID).orElseThrow();
            if (there) {
                findings.add(Finding.error(
                                "taken-out-in-use",
                                id.at(),
                                "coach `" + id.value() + "` has left, and there is a coach of that id")
                        .mend("Give the new one another id, or take it out of `left` if it is the old one."));
            }
            twice(first, id).ifPresent(findings::add);
        }
        for (TakenOut out : fleet.facts().facts().all(FleetFacts.TAKEN_OUT)) {
            Located<String> was = out.facts().located(TakenOut.WAS).orElseThrow();
            library.shared(out.kind(), out.id())
                    .ifPresent(there -> findings.add(Finding.error(
                                    "taken-out-in-use",
                                    was.at(),
                                    "`" + was.value() + "` is taken out, and a "
                                            + there.form().called() + " that coaches share has that id, at "
                                            + there.head().facts().at())
                            .mend("Give the new one another id, or take the line out if it is the old one.")));
            twice(first, was).ifPresent(findings::add);
        }
        return findings.stream();
    }

    private static Optional<Finding> twice(Map<String, Place> first, Located<String> was) {
        Place before = first.putIfAbsent(was.value(), was.at());
        return before == null
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "taken-out-in-use",
                                was.at(),
                                "`" + was.value() + "` is taken out twice, first at " + before)
                        .mend("Take one of them out."));
    }
}
