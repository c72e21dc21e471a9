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
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.source.Lazy;
import bayfolio.source.UnitsPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

/**
 * What the fleet folder says: pages of the coaches in which nothing was wrong when they were looked at last, and of each other
 * coach the last that were good. A page is made when somebody asks for it, so that a large fleet is not all in mind.
 *
 * @param number goes up with each that somebody may see
 * @param coaches those that were good when they were looked at last, by their ids
 * @param shared what belongs to no coach, made when somebody asks for it
 * @param taken media of coaches, as they were read last
 */
record Draft(
        int number,
        Path root,
        Findings findings,
        WebSite site,
        Map<String, Seen> coaches,
        Map<String, KeptEditions> editions,
        Lazy<Map<String, byte[]>> shared,
        Map<String, Kept> taken) {

    /** The media of a coach, and what they were made of. */
    record Kept(String of, Media media) {}

    /**
     * The editions of a coach, and what they were read from.
     *
     * @param issued empty where there are none
     * @param faults what is wrong with them
     */
    record KeptEditions(String of, Optional<Issued> issued, List<Finding> faults) {}

    /** A coach with its procedures, and what was made of it. */
    private record Made(CheckedCoach coach, Handbook handbook) {}

    /**
     * A coach as either reader sees it; made when somebody asks, and kept.
     *
     * @param entry of it in the list of all
     * @param made what its files say
     * @param whole the same with what is otherwise than in its last edition; to find that takes longer than to make it
     * @param asked whether somebody has looked at a page of it
     */
    record Seen(
            Output.Entry entry,
            Lazy<Made> made,
            Lazy<Handbook> whole,
            Map<Audience, Handbook> by,
            AtomicBoolean asked) {
        static Seen of(Output.Entry entry, Lazy<Made> made, Optional<Issued> issued, boolean asked) {
            return new Seen(
                    entry,
                    made,
                    new Lazy<>(() -> issued.map(it -> WhatChanged.in(made.get().handbook, made.get().coach, it))
                            .orElseGet(() -> made.get().handbook)),
                    new ConcurrentHashMap<>(),
                    new AtomicBoolean(asked));
        }

        Handbook now() {
            asked.set(true);
            return made.get().handbook;
        }

        Handbook by(Audience reader) {
            asked.set(true);
            return by.computeIfAbsent(reader, it -> whole.get().seenBy(it));
        }

        Unit unit() {
            return made.get().coach.unit();
        }
    }

    /** Where nothing was looked at yet. */
    static Draft none(Path root, FleetReader.Reading reading, Theme theme) throws IOException {
        return new Draft(
                0,
                root,
                Findings.of(List.of()),
                site(reading, theme),
                Map.of(),
                Map.of(),
                new Lazy<>(Map::of),
                new ConcurrentHashMap<>());
    }

    private static WebSite site(FleetReader.Reading reading, Theme theme) throws IOException {
        return new WebSite(new Means(theme, theme.catalogs(), reading.fleet(), Printing.USUAL));
    }

    /** Ids of the coaches of which somebody has looked at a page. */
    Set<String> asked() {
        return coaches.entrySet().stream()
                .filter(each -> each.getValue().asked.get())
                .map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** For words and marks that belong to no coach. */
    Draft with(FleetReader.Reading reading, Theme theme) throws IOException {
        return new Draft(number, root, findings, site(reading, theme), coaches, editions, shared, taken);
    }

    /** The same for whoever waits for the next one. */
    Draft numbered(int other) {
        return new Draft(other, root, findings, site, coaches, editions, shared, taken);
    }

    /**
     * The next one; coaches in which something is wrong stay as they were.
     *
     * @param looked those that are looked at; what was found in others before stays
     */
    Draft next(FleetReader.Reading reading, Theme theme, Set<String> looked) throws IOException {
        Fleet fleet = reading.fleet();
        Units these = fleet.units().only(looked::contains);
        Set<String> asked = asked();
        // Pages and findings of what somebody looks at are made side by side; pages of a coach that is wrong are thrown
        // away.
        Map<String, CompletableFuture<Made>> begun = new ConcurrentHashMap<>();
        Check check = Check.of(fleet, reading.library(), theme.catalogs(), reading.findings(), these, filled -> {
            String coach = filled.unit().id();
            if (asked.contains(coach)) {
                begun.put(coach, CompletableFuture.supplyAsync(() -> made(filled)));
            }
        });
        List<Finding> all = new ArrayList<>();
        Set<String> known = Set.copyOf(fleet.coaches());
        boolean some = !looked.containsAll(known);
        check.findings().all().stream()
                .filter(finding -> concerns(finding, looked) || Collections.disjoint(finding.coaches(), known))
                // Which has its sense for a sister that is not looked at now; a check tells.
                .filter(finding -> !(some && isOfAModel(finding)))
                .forEach(all::add);
        for (Finding before : this.findings.all()) {
            List<String> others = before.coaches().stream()
                    .filter(coach -> known.contains(coach) && !looked.contains(coach))
                    .toList();
            if (!others.isEmpty()) {
                all.add(before.on(others));
            }
        }
        Map<String, KeptEditions> editions = new HashMap<>(this.editions);
        for (Unit unit : these) {
            KeptEditions its = editions(unit, root);
            editions.put(unit.id(), its);
            all.addAll(its.faults());
        }
        Findings findings = Findings.of(all);
        Map<String, Seen> coaches = new HashMap<>(this.coaches);
        for (Unit unit : these) {
            String coach = unit.id();
            if (findings.stopping(coach, false).isEmpty()) {
                CompletableFuture<Made> made = begun.get(coach);
                Handbook.Cover cover = Composer.cover(unit, theme.catalogs().of(new Coach(fleet, unit).languages()));
                coaches.put(
                        coach,
                        Seen.of(
                                WebSite.entry(coach, cover),
                                new Lazy<>(
                                        made != null
                                                ? made::join
                                                : () -> made(check.of(fleet.units()
                                                        .find(coach)
                                                        .orElseThrow()))),
                                Objects.requireNonNull(editions.get(coach)).issued(),
                                asked.contains(coach)));
            }
        }
        List<Output.Entry> entries = fleet.coaches().stream()
                .flatMap(coach -> Optional.ofNullable(coaches.get(coach)).stream())
                .map(Seen::entry)
                .toList();
        return new Draft(
                number + 1,
                root,
                findings,
                site,
                coaches,
                editions,
                new Lazy<>(() -> site.shared(Output.Whole.forRenters(entries))),
                taken);
    }

    private static Made made(CheckedCoach coach) {
        return new Made(coach, Composer.compose(coach));
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
    Optional<byte[]> file(Audience reader, String path) throws IOException {
        byte[] one = shared.get().get(path);
        if (one != null) {
            return Optional.of(one);
        }
        Optional<Seen> seen = unit(path).map(coaches::get);
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = seen.get().unit();
        return site.file(
                seen.get().by(reader), media(unit).seenBy(unit, reader), path.substring(path.indexOf('/') + 1));
    }

    private Media media(Unit unit) throws IOException {
        Kept kept = taken.get(unit.id());
        try {
            String of = files(Media.sources(unit, root));
            if (kept == null || !kept.of.equals(of)) {
                kept = new Kept(of, Media.of(unit, root));
                taken.put(unit.id(), kept);
            }
        } catch (IOException | RuntimeException beingWritten) {
            if (kept == null) {
                throw beingWritten;
            }
        }
        return kept.media;
    }

    /** The coach whose folder a path is in. */
    static Optional<String> unit(String path) {
        int slash = path.indexOf('/');
        return slash < 0 ? Optional.empty() : Optional.of(path.substring(0, slash));
    }

    /** An acceptance that is for all coaches of a model. */
    private static boolean isOfAModel(Finding finding) {
        return finding.code().equals("acceptance-without-finding")
                && UnitsPath.model(finding.at().file().path()).isPresent();
    }

    private static boolean concerns(Finding finding, Set<String> coaches) {
        return finding.coaches().isEmpty() || !Collections.disjoint(finding.coaches(), coaches);
    }

    /** What is wrong, of the coach of a page or of all. */
    List<Finding> about(String path) {
        Optional<String> unit = unit(path);
        return findings.all().stream()
                .filter(finding -> unit.isEmpty() || concerns(finding, Set.of(unit.get())))
                .toList();
    }
}
