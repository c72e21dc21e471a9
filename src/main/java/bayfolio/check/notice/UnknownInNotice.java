package bayfolio.check.notice;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Recall;
import bayfolio.model.Recalled;
import bayfolio.model.Thing;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.procedure.Stage;
import bayfolio.source.Located;
import java.util.List;
import java.util.stream.Stream;

/**
 * Flags what a notice names and nobody knows: a procedure, a part of the trip, a coach of a recall, and in the file of the
 * fleet a thing, since each coach has its own.
 */
public final class UnknownInNotice implements FleetRule {
    private static final List<Form> WITH_STEPS = List.of(Form.PROCEDURE, Form.TROUBLE);

    private static final List<String> STAGES =
            Stream.of(Stage.values()).map(Stage::word).toList();

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Written.all(fleet)
                .flatMap(written -> Stream.of(
                                procedures(written, library),
                                stages(written),
                                coaches(written, fleet),
                                things(written, fleet))
                        .flatMap(found -> found)
                        .flatMap(written::told));
    }

    private static Stream<Finding> procedures(Written written, Library library) {
        return written.each(Notice.PROCEDURES)
                .filter(id -> WITH_STEPS.stream().noneMatch(form -> library.knows(form, id.value(), Whose.ALL)))
                .map(id -> Finding.error("unknown-procedure", id.at(), "there is no procedure `" + id.value() + "`")
                        .near(NearNames.to(
                                id.value(),
                                library.scripts().stream()
                                        .filter(script -> WITH_STEPS.contains(script.form()))
                                        .map(Script::id)
                                        .toList()))
                        .mend("Name a procedure or a trouble guide by the `id` in its head."));
    }

    private static Stream<Finding> stages(Written written) {
        return written.each(Notice.STAGES)
                .filter(stage -> !STAGES.contains(stage.value()))
                .map(stage -> Finding.error(
                                "unknown-stage", stage.at(), "there is no part of the trip `" + stage.value() + "`")
                        .near(NearNames.to(stage.value(), STAGES))
                        .mend("Known: " + String.join(", ", STAGES) + "."));
    }

    private static Stream<Finding> coaches(Written written, Fleet fleet) {
        return written.fact(Notice.RECALL).stream()
                .flatMap(recall -> recall.value().facts().ifRead(Recall.COACHES).stream())
                .flatMap(coaches -> coaches.value().stream())
                .flatMap(coach -> coach.value().facts().ifRead(Recalled.COACH).stream())
                .filter(coach -> !fleet.coaches().contains(coach.value()))
                .map(coach -> unknown(coach, fleet));
    }

    private static Finding unknown(Located<String> coach, Fleet fleet) {
        return Finding.error("unknown-coach", coach.at(), "there is no coach `" + coach.value() + "`")
                .near(NearNames.to(coach.value(), fleet.coaches()))
                .mend("The fleet has " + String.join(", ", fleet.coaches()) + ".");
    }

    /** Those of a coach are held against it with all other references. */
    private static Stream<Finding> things(Written written, Fleet fleet) {
        List<String> ids = fleet.siteThings().map(Thing::id).toList();
        return written.each(Notice.ABOUT)
                .filter(id -> written.ofTheFleet() && !ids.contains(id.value()))
                .map(id -> Finding.error(
                                "unknown-reference",
                                id.at(),
                                "there is nothing called `" + id.value() + "` at the site")
                        .near(NearNames.to(id.value(), ids))
                        .mend("Each coach has things of its own: for the whole fleet, name them by `roles`."));
    }
}
