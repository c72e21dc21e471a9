package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A change of a coach drawn with all its consequences, as a careful writer enters it: facts given anew, left out or
 * added, in one description.
 */
final class TrueEdits {
    private static final Pattern FIGURE = Pattern.compile("([0-9][0-9,]*(?:\\.[0-9]+)?)");

    private final Unit unit;
    private final String what;
    private final List<Change> changes = new ArrayList<>();

    /** Lines from one to before another, counted from 0, that give way to others. */
    private record Change(int from, int to, List<String> lines) {}

    TrueEdits(Unit unit, String what) {
        this.unit = unit;
        this.what = what;
    }

    String name() {
        return unit.id() + ": " + what;
    }

    boolean changes() {
        return !changes.isEmpty();
    }

    /** A fact given anew where the record states it already. */
    TrueEdits anew(Described record, Key<?> key, String value) {
        if (record.facts().has(key)) {
            put(record, key, value);
        }
        return this;
    }

    /** A fact given anew, or for the first time. */
    TrueEdits put(Described record, Key<?> key, String value) {
        List<String> lines = lines();
        if (record.facts().has(key)) {
            Place at = record.facts().at(key);
            int line = at.line() - 1;
            String before = lines.get(line);
            String head = before.substring(0, before.offsetByCodePoints(0, at.column() - 1));
            String tail =
                    at.line() == at.endLine() ? before.substring(before.offsetByCodePoints(0, at.endColumn() - 1)) : "";
            changes.add(new Change(line, at.endLine(), List.of(head + value + tail)));
        } else {
            int line = record.facts().at().line() - 1;
            String indent = " ".repeat(record.facts().at().column() - 1);
            String first = lines.get(line);
            changes.add(new Change(line, line + 1, List.of(first, indent + key.name() + ": " + value)));
        }
        return this;
    }

    /** The first figure of each fact times a factor, in its unit, to four digits. */
    TrueEdits times(double factor, Described record, Key<?>... keys) {
        for (Key<?> key : keys) {
            if (record.facts().has(key)) {
                put(record, key, times(factor, DemoCoaches.text(record.facts().at(key))));
            }
        }
        return this;
    }

    /** Something said besides, behind what a text says. */
    TrueEdits besides(Described record, Key<String> key, String sentence) {
        Place at = record.facts().at(key);
        String before = DemoCoaches.text(at);
        String stop = before.endsWith(".") ? " " : ". ";
        return put(record, key, before + stop + sentence);
    }

    /** A thing more, in a list that the coach has. */
    TrueEdits more(Key<?> list, String... facts) {
        int line = unit.facts().at(list).line() - 1;
        List<String> added = new ArrayList<>();
        for (String fact : facts) {
            added.add((added.isEmpty() ? "  - " : "    ") + fact);
        }
        added.add(lines().get(line));
        changes.add(new Change(line, line + 1, added));
        return this;
    }

    /** A thing or record less. */
    TrueEdits less(Described record) {
        Place at = record.facts().at();
        changes.add(new Change(at.line() - 1, DemoCoaches.end(lines(), at.line() - 1, at.column()), List.of()));
        return this;
    }

    SourceFile after() {
        List<String> lines = lines();
        List<Change> fromTheEnd = new ArrayList<>(changes);
        Collections.reverse(fromTheEnd);
        fromTheEnd.sort(Comparator.comparingInt(Change::from).reversed());
        for (Change change : fromTheEnd) {
            List<String> gone = lines.subList(change.from, change.to);
            gone.clear();
            lines.addAll(change.from, change.lines);
        }
        return new SourceFile(unit.facts().at().file().path(), String.join("\n", lines) + "\n");
    }

    private static String times(double factor, String written) {
        Matcher figure = FIGURE.matcher(written);
        if (!figure.find()) {
            return written;
        }
        String scaled = BigDecimal.valueOf(Double.parseDouble(figure.group(1).replace(",", "")) * factor)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
        return written.substring(0, figure.start()) + scaled + written.substring(figure.end());
    }

    private List<String> lines() {
        return new ArrayList<>(unit.facts().at().file().text().lines().toList());
    }
}
