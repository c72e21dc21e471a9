package bayfolio.check;

import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.procedure.Filling;
import bayfolio.procedure.Library;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.References;
import bayfolio.procedure.Script;
import bayfolio.procedure.Unfilled;
import bayfolio.prose.ScreenWords;
import java.util.ArrayList;
import java.util.List;

/**
 * All that is known to be wrong with a fleet, told in one run.
 *
 * @param cases the coaches that could be read, each with its procedures filled in
 */
public record Check(List<Case> cases, Findings findings) {
    public Check {
        cases = List.copyOf(cases);
    }

    /**
     * @param soFar what reading has found already
     */
    public static Check of(Fleet fleet, Library library, ScreenWords screen, List<Finding> soFar) {
        List<Finding> findings = new ArrayList<>(soFar);
        Rules.OF_A_FLEET.forEach(rule -> rule.check(fleet, library).forEach(findings::add));
        library.scripts().forEach(script -> Unfilled.check(script, fleet, library, findings::add));
        List<Case> cases = new ArrayList<>();
        for (Unit unit : fleet.units()) {
            if (unit.facts().whole()) {
                Case coach = filled(new Coach(fleet, unit), library, screen, findings);
                Rules.OF_A_COACH.forEach(
                        rule -> rule.check(coach).forEach(finding -> findings.add(finding.on(unit.id()))));
                cases.add(coach);
            }
        }
        return new Check(cases, Findings.of(Acceptances.applied(findings, fleet)));
    }

    private static Case filled(Coach coach, Library library, ScreenWords screen, List<Finding> findings) {
        List<Procedure> procedures = new ArrayList<>();
        for (Script script : library.of(coach.unit())) {
            References references =
                    new References(coach, library, screen, !script.head().who().forRenters());
            procedures.add(Filling.fill(
                    script,
                    coach,
                    references,
                    finding -> findings.add(finding.on(coach.unit().id()))));
        }
        return new Case(coach, library, procedures);
    }
}
