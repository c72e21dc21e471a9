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
import java.util.stream.Stream;

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
        findings.addAll(ofTheFleet(fleet, library));
        List<Unit> whole =
                fleet.units().stream().filter(unit -> unit.facts().whole()).toList();
        // Coaches have nothing to do with each other and rules have no state; the order stays that of the fleet. Where
        // there are few, what one coach takes is shared out; both at once, threads would wait for each other.
        boolean many = whole.size() >= Runtime.getRuntime().availableProcessors();
        List<Seen> seen = stream(whole, many)
                .map(unit -> look(new Coach(fleet, unit), library, screen, !many))
                .toList();
        seen.forEach(it -> findings.addAll(it.findings));
        return new Check(seen.stream().map(Seen::coach).toList(), Findings.of(Acceptances.applied(findings, fleet)));
    }

    private static <T> Stream<T> stream(List<T> all, boolean sideBySide) {
        return sideBySide ? all.parallelStream() : all.stream();
    }

    /** What is wrong with the fleet as a whole and with its texts, whatever coach they are filled in for. */
    private static List<Finding> ofTheFleet(Fleet fleet, Library library) {
        List<Finding> findings = new ArrayList<>();
        Rules.OF_A_FLEET.parallelStream()
                .map(rule -> rule.check(fleet, library).toList())
                .forEachOrdered(findings::addAll);
        List<TextRule> ofTexts =
                Rules.OF_A_TEXT.stream().map(rule -> rule.of(fleet)).toList();
        findings.addAll(Text.each(
                fleet,
                library,
                TextRule.class,
                ofTexts,
                text -> ofTexts.stream().flatMap(rule -> rule.check(text))));
        library.scripts().parallelStream()
                .map(script -> script.once(ScriptRule.class, Rules.OF_A_SCRIPT, Check::ofAScript))
                .forEachOrdered(findings::addAll);
        Unfilled.check(fleet, library, findings::add);
        return findings;
    }

    private static List<Finding> ofAScript(Script script) {
        return Rules.OF_A_SCRIPT.stream().flatMap(rule -> rule.check(script)).toList();
    }

    /** One coach with all that is wrong with it. */
    private record Seen(Case coach, List<Finding> findings) {}

    private static Seen look(Coach coach, Library library, ScreenWords screen, boolean sideBySide) {
        List<Finding> findings = new ArrayList<>();
        List<Filled> all = stream(library.of(coach.unit(), coach.features()), sideBySide)
                .map(script -> filled(script, coach, library, screen))
                .toList();
        all.forEach(it -> findings.addAll(it.findings));
        Case filled =
                new Case(coach, library, all.stream().map(Filled::procedure).toList());
        stream(Rules.OF_A_COACH, sideBySide)
                .map(rule -> rule.check(filled).toList())
                .forEachOrdered(told -> told.forEach(
                        finding -> findings.add(finding.on(coach.unit().id()))));
        return new Seen(filled, findings);
    }

    /** One procedure with what could not be filled in. */
    private record Filled(Procedure procedure, List<Finding> findings) {}

    private static Filled filled(Script script, Coach coach, Library library, ScreenWords screen) {
        References references =
                new References(coach, library, screen, !script.head().who().forRenters());
        List<Finding> findings = new ArrayList<>();
        Procedure procedure = Filling.fill(
                script,
                coach,
                references,
                finding -> findings.add(finding.on(coach.unit().id())));
        return new Filled(procedure, findings);
    }
}
