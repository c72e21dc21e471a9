package bayfolio.preview;

import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.model.Fleet;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.Means;
import bayfolio.render.Output;
import bayfolio.render.Photographs;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * What the fleet folder says at one moment: pages of the coaches in which nothing is wrong, and of each other coach the last
 * that were good. It never changes.
 *
 * @param number goes up with each
 */
record Draft(
        int number,
        Findings findings,
        WebSite site,
        Map<String, Handbook> handbooks,
        Map<String, Pictured> photographs,
        Map<String, byte[]> shared) {

    /** The photographs of a coach, and what they were made of. */
    record Pictured(String of, Photographs photographs) {}

    static Draft first(Path root, FleetReader.Reading reading, Theme theme) throws IOException {
        return make(1, root, reading, theme, site(reading, theme), Optional.empty(), Map.of(), Map.of(), List.of());
    }

    /**
     * The next one; coaches in which something is wrong stay as they were.
     *
     * @param only the coach that is looked at; all where none is named
     */
    Draft next(Path root, FleetReader.Reading now, Theme theme, Optional<String> only) throws IOException {
        return make(
                number + 1,
                root,
                now,
                theme,
                only.isPresent() ? site : site(now, theme),
                only,
                handbooks,
                photographs,
                findings.all());
    }

    private static WebSite site(FleetReader.Reading reading, Theme theme) throws IOException {
        return new WebSite(new Means(theme, theme.catalogs(), reading.fleet()));
    }

    private static Draft make(
            int number,
            Path root,
            FleetReader.Reading reading,
            Theme theme,
            WebSite site,
            Optional<String> only,
            Map<String, Handbook> before,
            Map<String, Pictured> pictured,
            List<Finding> known)
            throws IOException {
        Fleet fleet = reading.fleet();
        List<Unit> looked = fleet.units().stream()
                .filter(unit -> only.isEmpty() || only.get().equals(unit.id()))
                .toList();
        // Pages and findings are made side by side; pages of a coach in which something is wrong are thrown away.
        Check unchecked = new Check(fleet, reading.library(), theme.catalogs(), looked, Findings.of(List.of()));
        Map<String, CompletableFuture<Handbook>> made = new HashMap<>();
        looked.forEach(
                unit -> made.put(unit.id(), CompletableFuture.supplyAsync(() -> Composer.compose(unchecked.of(unit)))));
        Check check = Check.of(fleet, reading.library(), theme.catalogs(), reading.findings(), looked);
        List<Finding> all = new ArrayList<>();
        check.findings().all().stream()
                .filter(finding -> only.isEmpty() || concerns(finding, only.get()))
                .forEach(all::add);
        known.stream()
                .filter(finding -> only.isPresent() && !concerns(finding, only.get()))
                .forEach(all::add);
        Findings findings = Findings.of(all);
        Map<String, Handbook> handbooks = new HashMap<>(before);
        Map<String, Pictured> photographs = new HashMap<>(pictured);
        for (Unit unit : looked) {
            if (findings.stopping(unit.id(), false).isEmpty()) {
                handbooks.put(
                        unit.id(), Objects.requireNonNull(made.get(unit.id())).join());
                Path folder = root.resolve(unit.folder()).resolve("photos");
                String of = files(unit, folder);
                Pictured kept = photographs.get(unit.id());
                if (kept == null || !kept.of().equals(of)) {
                    photographs.put(unit.id(), new Pictured(of, Photographs.of(unit, folder)));
                }
            }
        }
        List<Output.Entry> coaches = new ArrayList<>();
        for (String unit : fleet.coaches()) {
            Handbook handbook = handbooks.get(unit);
            if (handbook != null) {
                coaches.add(WebSite.entry(handbook));
            }
        }
        return new Draft(number, findings, site, handbooks, photographs, site.shared(coaches));
    }

    /** Photos are large: they are made anew where a file or its day is another. */
    private static String files(Unit unit, Path folder) throws IOException {
        StringBuilder files = new StringBuilder();
        for (Photo photo : unit.photos()) {
            Path file = folder.resolve(photo.file());
            files.append(photo.id())
                    .append(' ')
                    .append(Files.getLastModifiedTime(file))
                    .append(' ')
                    .append(Files.size(file))
                    .append(';');
        }
        return files.toString();
    }

    /** @param path below the root of the site */
    Optional<byte[]> file(Audience reader, String path) {
        byte[] one = shared.get(path);
        if (one != null) {
            return Optional.of(one);
        }
        return unit(path).flatMap(unit -> {
            Handbook handbook = handbooks.get(unit);
            Pictured pictured = photographs.get(unit);
            return handbook == null || pictured == null
                    ? Optional.empty()
                    : site.file(handbook.seenBy(reader), pictured.photographs(), path.substring(unit.length() + 1));
        });
    }

    /** The coach whose folder a path is in. */
    static Optional<String> unit(String path) {
        int slash = path.indexOf('/');
        return slash < 0 ? Optional.empty() : Optional.of(path.substring(0, slash));
    }

    private static boolean concerns(Finding finding, String unit) {
        return finding.coaches().isEmpty() || finding.coaches().contains(unit);
    }

    /** What is wrong, of the coach of a page or of all. */
    List<Finding> about(String path) {
        Optional<String> unit = unit(path);
        return findings.all().stream()
                .filter(finding -> unit.isEmpty() || concerns(finding, unit.get()))
                .toList();
    }
}
