package bayfolio.preview;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.compose.WhatChanged;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.edition.Editions;
import bayfolio.edition.Issued;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.source.Lazy;
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
import java.util.concurrent.ConcurrentHashMap;

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
        Map<String, Seen> handbooks,
        Map<String, Kept> media,
        Map<String, KeptEditions> editions,
        Map<String, byte[]> shared) {

    /** The media of a coach, and what they were made of. */
    record Kept(String of, Unit unit, Media media) {}

    /**
     * The editions of a coach, and what they were read from.
     *
     * @param issued empty where there are none
     * @param faults what is wrong with them
     */
    record KeptEditions(String of, Optional<Issued> issued, List<Finding> faults) {}

    /** A coach that was looked at, and its handbook as soon as it is made. */
    private record Made(CheckedCoach coach, CompletableFuture<Handbook> handbook) {}

    /**
     * A coach as either reader sees it; made when somebody asks, and kept.
     *
     * @param now what its files say
     * @param whole the same with what is otherwise than in its last edition; to find that takes longer than to make it
     */
    record Seen(Handbook now, Lazy<Handbook> whole, Map<Audience, Handbook> by) {
        static Seen of(Handbook now, CheckedCoach coach, Optional<Issued> issued) {
            return new Seen(
                    now,
                    issued.map(it -> new Lazy<>(() -> WhatChanged.in(now, coach, it)))
                            .orElseGet(() -> new Lazy<>(() -> now)),
                    new ConcurrentHashMap<>());
        }

        Handbook by(Audience reader) {
            return by.computeIfAbsent(reader, it -> whole.get().seenBy(it));
        }
    }

    static Draft first(Path root, FleetReader.Reading reading, Theme theme) throws IOException {
        return new Draft(0, Findings.of(List.of()), site(reading, theme), Map.of(), Map.of(), Map.of(), Map.of())
                .next(root, reading, theme, Optional.empty());
    }

    private static WebSite site(FleetReader.Reading reading, Theme theme) throws IOException {
        return new WebSite(new Means(theme, theme.catalogs(), reading.fleet(), Printing.USUAL));
    }

    /**
     * The next one; coaches in which something is wrong stay as they were.
     *
     * @param only the coach that is looked at; all where none is named
     */
    Draft next(Path root, FleetReader.Reading reading, Theme theme, Optional<String> only) throws IOException {
        WebSite site = number == 0 || only.isPresent() ? this.site : site(reading, theme);
        Fleet fleet = reading.fleet();
        List<Unit> looked = fleet.units().stream()
                .filter(unit -> only.isEmpty() || only.get().equals(unit.id()))
                .toList();
        // Pages and findings are made side by side; pages of a coach in which something is wrong are thrown away.
        Map<String, Made> made = new ConcurrentHashMap<>();
        Check check = Check.of(
                fleet,
                reading.library(),
                theme.catalogs(),
                reading.findings(),
                looked,
                filled -> made.put(
                        filled.unit().id(),
                        new Made(filled, CompletableFuture.supplyAsync(() -> Composer.compose(filled)))));
        List<Finding> all = new ArrayList<>();
        check.findings().all().stream()
                .filter(finding -> only.isEmpty() || concerns(finding, only.get()))
                .forEach(all::add);
        this.findings.all().stream()
                .filter(finding -> only.isPresent() && !concerns(finding, only.get()))
                .forEach(all::add);
        Map<String, KeptEditions> editions = new HashMap<>(this.editions);
        for (Unit unit : looked) {
            KeptEditions its = editions(unit, root);
            editions.put(unit.id(), its);
            all.addAll(its.faults());
        }
        Findings findings = Findings.of(all);
        Map<String, Seen> handbooks = new HashMap<>(this.handbooks);
        Map<String, Kept> media = new HashMap<>(this.media);
        for (Unit unit : looked) {
            if (findings.stopping(unit.id(), false).isEmpty()) {
                Made one = Objects.requireNonNull(made.get(unit.id()));
                KeptEditions its = Objects.requireNonNull(editions.get(unit.id()));
                handbooks.put(unit.id(), Seen.of(one.handbook().join(), one.coach(), its.issued()));
                String of = files(Media.sources(unit, root));
                Kept kept = media.get(unit.id());
                Media taken = kept != null && kept.of().equals(of) ? kept.media() : Media.of(unit, root);
                media.put(unit.id(), new Kept(of, unit, taken));
            }
        }
        List<Output.Entry> coaches = new ArrayList<>();
        for (String unit : fleet.coaches()) {
            Seen handbook = handbooks.get(unit);
            if (handbook != null) {
                coaches.add(WebSite.entry(handbook.now()));
            }
        }
        return new Draft(
                number + 1, findings, site, handbooks, media, editions, site.shared(Output.Whole.forRenters(coaches)));
    }

    private KeptEditions editions(Unit unit, Path root) throws IOException {
        Folder folder = new Folder(root);
        String of = files(Editions.files(folder, unit.id()));
        KeptEditions known = editions.get(unit.id());
        if (known != null && known.of().equals(of)) {
            return known;
        }
        // Where one before the last is needed and cannot be read, pages have no bars; `publish` tells why.
        Editions all = Editions.of(folder, unit, told -> {});
        return new KeptEditions(
                of,
                Optional.of(all).filter(it -> it.last() > 0).map(it -> new Issued(it, told -> {})),
                Editions.faults(folder, unit));
    }

    /** Photos, films and editions are large: they are read anew where a file or its day is another. */
    private static String files(List<Path> all) throws IOException {
        StringBuilder files = new StringBuilder();
        for (Path file : all) {
            files.append(file)
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
            Seen handbook = handbooks.get(unit);
            Kept kept = media.get(unit);
            return handbook == null || kept == null
                    ? Optional.empty()
                    : site.file(
                            handbook.by(reader),
                            kept.media().seenBy(kept.unit(), reader),
                            path.substring(unit.length() + 1));
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
