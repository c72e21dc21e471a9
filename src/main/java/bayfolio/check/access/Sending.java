package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.model.Reach;
import bayfolio.model.Thing;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import bayfolio.source.UnitsPath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Procedures that send renters to places that are not free to them.
 *
 * @param access of the places
 * @param wrong what is wrong with that, as in {@code which is for staff}
 * @param mend of a step in a procedure of the coach's own
 * @param links those of a procedure that are wrong, given all such places
 */
record Sending(
        Access access, String wrong, String mend, BiFunction<Procedure, Set<Target>, Stream<Inline.Link>> links) {
    private record Sent(Procedure procedure, Inline.Link link) {
        Target.OfThing to() {
            return (Target.OfThing) link.target();
        }
    }

    /**
     * A step of the coach's own is told where it stands. A shared one is right for other coaches: what it comes of, the
     * access that this coach states, is told, once for all steps that come to nothing by it.
     */
    Stream<Finding> tell(String code, CheckedCoach coach) {
        Set<Target> places = Reach.all(access, coach.coach());
        List<Finding> findings = new ArrayList<>();
        Map<Place, List<Sent>> shared = new LinkedHashMap<>();
        coach.procedures().stream()
                .filter(procedure -> procedure.head().who().forRenters())
                .filter(procedure -> procedure.links().anyMatch(link -> places.contains(link.target())))
                .flatMap(procedure -> links.apply(procedure, places).map(link -> new Sent(procedure, link)))
                .forEach(sent -> {
                    String file = sent.link.at().file().path();
                    if (UnitsPath.coach(file).or(() -> UnitsPath.model(file)).isPresent()) {
                        findings.add(own(code, sent));
                    } else {
                        shared.computeIfAbsent(stated(sent.to(), coach), at -> new ArrayList<>())
                                .add(sent);
                    }
                });
        shared.forEach((at, all) -> findings.add(shared(code, at, all)));
        return findings.stream();
    }

    private static Place stated(Target.OfThing to, CheckedCoach coach) {
        Thing thing = coach.coach().thing(to.kind(), to.id()).orElseThrow();
        return Reach.of(thing, coach.coach()).at();
    }

    private Finding own(String code, Sent sent) {
        Target.OfThing to = sent.to();
        return Finding.error(
                        code,
                        sent.link.at(),
                        "procedure `" + sent.procedure.id() + "` sends the renter to " + to.kind() + " `" + to.id()
                                + "`, which is " + wrong)
                .mend(mend + ", or correct the access of the " + to.kind() + ".");
    }

    private Finding shared(String code, Place at, List<Sent> all) {
        Sent first = all.get(0);
        String steps =
                all.stream().map(sent -> sent.link.at().toString()).distinct().collect(Collectors.joining(", "));
        return Finding.error(
                        code,
                        at,
                        "shared procedures send the renter to " + first.to().kind() + " `"
                                + first.to().id() + "`, which is " + wrong + ": " + steps)
                .mend("Correct the access, or let the shared procedure leave that step out on this coach.");
    }
}
