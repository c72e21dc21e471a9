package bayfolio.check;

import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.check.text.LanguageWithoutWords;
import bayfolio.check.text.MessagesOfThemes;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.model.Whose;
import bayfolio.procedure.Library;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.ProcedureFiller;
import bayfolio.procedure.References;
import bayfolio.procedure.Script;
import bayfolio.procedure.ScriptChecker;
import bayfolio.source.UnitsPath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * All that is known to be wrong with a fleet, told in one run.
 *
 * @param catalogs the words of all languages
 * @param ofCoaches what was found in each that was looked at, by its id, whether or not somebody lives with it
 */
public record Check(
        Fleet fleet, Library library, Catalogs catalogs, Findings findings, Map<String, List<Finding>> ofCoaches) {
    public Check {
        ofCoaches = Map.copyOf(ofCoaches);
    }

    /** The coaches that could be read. */
    public Units units() {
        return fleet.units();
    }

    /** What is known already of coaches that are as they were when they were looked at last. */
    public interface Known {
        Known NOTHING = unit -> Optional.empty();

        /** What was found in it; empty where it must be looked at. */
        Optional<List<Finding>> of(Unit unit);
    }

    /**
     * @param soFar what reading has found already
     */
    public static Check of(Fleet fleet, Library library, Catalogs catalogs, List<Finding> soFar) {
        return of(fleet, library, catalogs, soFar, fleet.units(), Known.NOTHING, coach -> {});
    }

    /** Where some coaches need not be looked at. */
    public static Check of(Fleet fleet, Library library, Catalogs catalogs, List<Finding> soFar, Known known) {
        return of(fleet, library, catalogs, soFar, fleet.units(), known, coach -> {});
    }

    /**
     * Where only some coaches are looked at; what it says of others is not all.
     *
     * @param looked those of the fleet that are looked at
     * @param filled gets each of them with its procedures, before rules look at it
     */
    public static Check of(
            Fleet fleet,
            Library library,
            Catalogs catalogs,
            List<Finding> soFar,
            List<Unit> looked,
            Consumer<CheckedCoach> filled) {
        return of(fleet, library, catalogs, soFar, looked, Known.NOTHING, filled);
    }

    private static Check of(
            Fleet fleet,
            Library library,
            Catalogs catalogs,
            List<Finding> soFar,
            List<Unit> looked,
            Known known,
            Consumer<CheckedCoach> filled) {
        List<Finding> findings = new ArrayList<>(soFar);
        LanguageWithoutWords.check(fleet, catalogs).forEach(findings::add);
        MessagesOfThemes.check(catalogs).forEach(findings::add);
        findings.addAll(ofTheFleet(fleet, library));
        // Coaches have nothing to do with each other and rules have no state; the order stays that of the fleet. Where
        // there are few, what one coach takes is shared out; both at once, threads would wait for each other.
        boolean many = looked.size() >= Runtime.getRuntime().availableProcessors();
        List<Looked> found = stream(looked, many)
                .map(unit -> new Looked(
                        unit.id(),
                        known.of(unit).orElseGet(() -> look(new Coach(fleet, unit), library, catalogs, !many, filled))))
                .toList();
        Map<String, List<Finding>> ofCoaches = new HashMap<>();
        found.forEach(each -> {
            findings.addAll(each.findings);
            ofCoaches.putIfAbsent(each.unit, each.findings);
        });
        return new Check(
                fleet,
                library,
                catalogs,
                Findings.of(Acceptances.applied(
                        findings.stream()
                                .map(finding -> ofAModel(finding, fleet))
                                .toList(),
                        fleet,
                        soFar.stream().noneMatch(Finding::isError))),
                ofCoaches);
    }

    /** What was found in a coach. */
    private record Looked(String unit, List<Finding> findings) {
        Looked {
            findings = List.copyOf(findings);
        }
    }

    /** What is wrong with a text of a model is wrong for all of its coaches. */
    private static Finding ofAModel(Finding finding, Fleet fleet) {
        return UnitsPath.model(finding.at().file().path())
                .filter(model -> finding.units().isEmpty())
                .map(model ->
                        finding.on(fleet.units().of(new Whose.OfAModel(model)).ids()))
                .orElse(finding);
    }

    /** A coach with its procedures; filled in anew, as those of a thousand coaches are not kept. */
    public CheckedCoach of(Unit unit) {
        return filled(new Coach(fleet, unit), library, catalogs, false, finding -> {});
    }

    private static <T> Stream<T> stream(List<T> all, boolean sideBySide) {
        return sideBySide ? all.parallelStream() : all.stream();
    }

    /** What is wrong with the fleet as a whole and with its texts, whatever coach they are filled in for. */
    private static List<Finding> ofTheFleet(Fleet fleet, Library library) {
        List<Finding> findings = new ArrayList<>();
        Rules.OF_A_FLEET.parallelStream()
                .map(rule -> judged(() -> rule.check(fleet, library)))
                .forEachOrdered(findings::addAll);
        List<TextRule> ofTexts =
                Rules.OF_A_TEXT.stream().map(rule -> rule.of(fleet)).toList();
        findings.addAll(Text.each(
                fleet, library, ofTexts, (text, rules) -> rules.stream().flatMap(rule -> rule.check(text))));
        library.texts().parallelStream()
                .map(script -> script.once(Rules.OF_A_SCRIPT, Check::ofAScript))
                .forEachOrdered(findings::addAll);
        ScriptChecker.check(fleet, library, findings::add);
        findings.addAll(library.translations().check(library));
        findings.addAll(library.translations().facts().check(fleet));
        return findings;
    }

    /** What a rule finds before it asks for what could not be read. */
    private static List<Finding> judged(Supplier<Stream<Finding>> rule) {
        List<Finding> findings = new ArrayList<>();
        UnreadException.upTo(() -> rule.get().forEachOrdered(findings::add));
        return findings;
    }

    private static List<Finding> ofAScript(Script script, List<ScriptRule> rules) {
        return rules.stream()
                .flatMap(rule -> judged(() -> rule.check(script)).stream())
                .toList();
    }

    /** All that is wrong with one coach. */
    private static List<Finding> look(
            Coach coach, Library library, Catalogs catalogs, boolean sideBySide, Consumer<CheckedCoach> told) {
        String unit = coach.unit().id();
        List<Finding> findings = new ArrayList<>();
        CheckedCoach filled = filled(coach, library, catalogs, sideBySide, finding -> findings.add(finding.on(unit)));
        told.accept(filled);
        stream(Rules.OF_A_COACH, sideBySide)
                .map(rule -> judged(() -> rule.check(filled)))
                .forEachOrdered(found -> found.forEach(finding -> findings.add(finding.on(unit))));
        return findings;
    }

    private static CheckedCoach filled(
            Coach coach, Library library, Catalogs catalogs, boolean sideBySide, Consumer<Finding> findings) {
        Catalog words = catalogs.of(coach.languages());
        // What is for one coach depends on no other one: so what is known of it holds while it is as it was.
        Coach told = library.translations().facts().in(words.language(), coach).alone();
        List<Filled> all = stream(library.of(coach.unit()), sideBySide)
                .map(script -> library.translations().in(words.language(), script))
                .map(script -> filled(script, told, library, words))
                .toList();
        all.forEach(it -> it.findings.forEach(findings));
        return new CheckedCoach(
                coach.alone(),
                told,
                library,
                words,
                all.stream().map(Filled::procedure).toList());
    }

    /** One procedure with what could not be filled in. */
    private record Filled(Procedure procedure, List<Finding> findings) {}

    private static Filled filled(Script script, Coach coach, Library library, Catalog words) {
        References references = References.of(script, coach, library, words);
        List<Finding> findings = new ArrayList<>();
        return new Filled(ProcedureFiller.fill(script, coach, references, findings::add), findings);
    }
}
