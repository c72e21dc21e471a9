package bayfolio.finding;

import bayfolio.source.Place;
import bayfolio.source.UnitsPath;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that is wrong with what a writer wrote, at the place where it is wrong.
 *
 * @param code names the rule, in kebab-case; stable, with a page of its own
 * @param message one sentence that names the thing and its value as written, without a full stop
 * @param near names that were probably meant, nearest first, four at most
 * @param mend what to do about it, one sentence; empty where the near name says it all
 * @param units ids of the coaches for which it is wrong; empty where it is wrong for the whole
 *     fleet
 */
public record Finding(
        String code,
        Severity severity,
        Place at,
        String message,
        List<String> near,
        Optional<String> mend,
        List<String> units) {

    /** File order, then code and message, so that a report never flickers. */
    public static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::at).thenComparing(Finding::code).thenComparing(Finding::message);

    public Finding {
        near = List.copyOf(near);
        units = List.copyOf(units);
    }

    public static Finding error(String code, Place at, String message) {
        return new Finding(code, Severity.ERROR, at, message, List.of(), Optional.empty(), List.of());
    }

    public static Finding warning(String code, Place at, String message) {
        return new Finding(code, Severity.WARNING, at, message, List.of(), Optional.empty(), List.of());
    }

    public static Finding note(String code, Place at, String message) {
        return new Finding(code, Severity.NOTE, at, message, List.of(), Optional.empty(), List.of());
    }

    public Finding near(List<String> names) {
        return new Finding(code, severity, at, message, names, mend, units);
    }

    public Finding mend(String sentence) {
        return new Finding(code, severity, at, message, near, Optional.of(sentence), units);
    }

    public Finding on(String unit) {
        return new Finding(code, severity, at, message, near, mend, List.of(unit));
    }

    /** The same for coaches. */
    public Finding on(List<String> coaches) {
        return new Finding(code, severity, at, message, near, mend, coaches);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The coaches that it is about: those that it names, or the one whose file it is in; none where it is about all. */
    public List<String> coaches() {
        return units.isEmpty() ? UnitsPath.coach(at.file().path()).map(List::of).orElse(units) : units;
    }

    /** Whether it keeps a handbook from being published. */
    public boolean stops(boolean strict) {
        return isError() || strict && severity == Severity.WARNING;
    }

    /**
     * The same fault at the same place, told once for all coaches. The first telling keeps its near
     * names and mend.
     */
    Finding with(List<Finding> same) {
        Set<String> together = new LinkedHashSet<>(units);
        same.forEach(finding -> together.addAll(finding.units));
        return new Finding(code, severity, at, message, near, mend, new ArrayList<>(together));
    }
}
