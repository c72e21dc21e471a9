package bayfolio.read;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.render.BlankMedia;
import bayfolio.render.Means;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/**
 * The coaches of the demo fleet, each by itself, so that one can be changed in a thousand ways within minutes. That day
 * by which dates are judged stays that of the whole fleet.
 */
final class DemoCoaches {
    static final Lists LISTS = Lists.of(Folders.at(Path.of(".")));

    private final FleetReader.Reading reading;
    private final Catalogs screen;
    private final WebSite site;
    private final Map<String, List<String>> untouched = new ConcurrentHashMap<>();
    private final Map<String, Map<String, byte[]>> pages = new ConcurrentHashMap<>();

    private DemoCoaches(FleetReader.Reading reading, Theme theme) throws Exception {
        this.reading = reading;
        this.screen = theme.catalogs();
        this.site = new WebSite(new Means(theme, screen, reading.fleet(), Printing.USUAL));
    }

    static DemoCoaches read() {
        try {
            return new DemoCoaches(
                    FleetReader.read(Folders.at(Path.of("."))), Theme.load(Path.of("."), Theme.BUILT_IN));
        } catch (Exception e) {
            throw new IllegalStateException("the demo fleet cannot be read", e);
        }
    }

    /** Those described whole in a file of their own: a fact of another one stands in either of two. */
    List<Unit> units() {
        return whole(reading).fleet().units();
    }

    /** What was read, without the coaches of a model: those are not changed by changing one text. */
    static FleetReader.Reading whole(FleetReader.Reading reading) {
        Fleet all = reading.fleet();
        Fleet whole = new Fleet(
                        all.facts(),
                        all.units().stream()
                                .filter(unit -> unit.model().isEmpty())
                                .toList(),
                        all.shared())
                .asOf(all.asOf().orElseThrow());
        return new FleetReader.Reading(whole, reading.library(), DemoFleet.whole(), reading.findings());
    }

    Fleet fleet() {
        return reading.fleet();
    }

    /** The coach that a description describes. */
    Unit unit(SourceFile description) {
        return units().stream()
                .filter(unit -> unit.facts().at().file().path().equals(description.path()))
                .findFirst()
                .orElseThrow();
    }

    /** What is told of a changed description, and was not of the untouched one. */
    List<Finding> told(SourceFile changed) {
        List<Finding> findings = new ArrayList<>();
        Optional<Unit> unit = read(changed, findings::add);
        if (!findings.isEmpty() || unit.isEmpty()) {
            return findings;
        }
        // A coach alone may lack what another one explains.
        List<String> before = untouched.computeIfAbsent(
                changed.path(),
                path -> all(unit(changed)).stream().map(Finding::message).toList());
        return all(unit.get()).stream()
                .filter(finding -> !before.contains(finding.message()))
                .toList();
    }

    private static Optional<Unit> read(SourceFile changed, Consumer<Finding> findings) {
        return Resolved.of(Folders.at(Path.of(".")), changed, LISTS, findings).flatMap(Resolved::unit);
    }

    /** Whether a changed description makes a page of the staff's copy read differently. */
    boolean readDifferently(SourceFile changed) {
        Optional<Unit> unit = read(changed, it -> {});
        if (unit.isEmpty()) {
            return true;
        }
        Map<String, byte[]> before = pages.computeIfAbsent(changed.path(), path -> pages(unit(changed)));
        Map<String, byte[]> after = pages(unit.get());
        return !before.keySet().equals(after.keySet())
                || !before.entrySet().stream().allMatch(it -> Arrays.equals(it.getValue(), after.get(it.getKey())));
    }

    /** What is written at a place within a line. */
    static String text(Place at) {
        String line = at.file().line(at.line());
        return line.substring(
                line.offsetByCodePoints(0, at.column() - 1), line.offsetByCodePoints(0, at.endColumn() - 1));
    }

    /** The line after the last of a record, counted from 0. */
    static int end(List<String> lines, int first, int column) {
        int next = first + 1;
        while (next < lines.size() && (lines.get(next).isBlank() || indent(lines.get(next)) >= column - 1)) {
            next++;
        }
        return next;
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    private List<Finding> all(Unit unit) {
        return check(unit).findings().all();
    }

    private Map<String, byte[]> pages(Unit unit) {
        return new TreeMap<>(site.files(
                Composer.compose(check(unit).of(unit)).seenBy(Audience.STAFF),
                BlankMedia.of(unit),
                Output.Around.NOTHING));
    }

    private Check check(Unit unit) {
        Fleet alone = new Fleet(fleet().facts(), List.of(unit), fleet().shared())
                .asOf(fleet().asOf().orElseThrow());
        return Check.of(alone, reading.library(), screen, List.of());
    }
}
