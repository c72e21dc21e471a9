package bayfolio.publish;

import bayfolio.catalog.Catalog;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.compose.FleetDue;
import bayfolio.compose.FleetOverview;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.Overview;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.print.Book;
import bayfolio.render.print.Cards;
import bayfolio.render.print.Labels;
import bayfolio.render.print.Sheets;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.template.TemplateProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Composes, renders, audits, and only then swaps in. Whatever fails before leaves the last site as
 * it was.
 */
public final class Publisher {
    /** In what ways handbooks are given out, in the order in which they are made: the site offers what is printed. */
    private static final Map<String, Function<Means, Output>> OUTPUTS = outputs();

    /** Without it no page has an address. */
    public static final String WEB = "web";

    private Publisher() {}

    private static Map<String, Function<Means, Output>> outputs() {
        Map<String, Function<Means, Output>> outputs = new LinkedHashMap<>();
        outputs.put("book", Book::new);
        outputs.put("cards", Cards::new);
        outputs.put("labels", Labels::new);
        outputs.put("sheets", Sheets::new);
        outputs.put(WEB, WebSite::new);
        return Collections.unmodifiableMap(outputs);
    }

    /** Names of the ways in which handbooks are given out. */
    public static Set<String> ways() {
        return OUTPUTS.keySet();
    }

    /**
     * What is wanted.
     *
     * @param units ids of the coaches to publish anew, in whose descriptions and procedures nothing is wrong; others that
     *     were published before stay as they are
     * @param ways some of {@link #ways}; of these coaches nothing else is there afterwards
     * @param begun is told each coach when its files are made, since that may take long
     */
    public record Wanted(List<String> units, Set<String> ways, Printing printing, Consumer<String> begun) {
        /** By somebody who does not look on. */
        public Wanted(List<String> units, Set<String> ways, Printing printing) {
            this(units, ways, printing, coach -> {});
        }

        public Wanted {
            units = List.copyOf(units);
            ways = Set.copyOf(ways);
        }
    }

    /**
     * @param root the fleet folder, for its photos
     * @return the paths of the renters' site
     * @throws PublishException in one sentence, when something is wrong; nothing was changed then
     */
    public static Set<String> publish(Check check, Path root, Theme theme, Wanted wanted, Path out)
            throws IOException, PublishException {
        FleetFolder.refuse(root, out);
        try (OutputFolder output = OutputFolder.open(out)) {
            Map<String, Path> before = output.published();
            Map<String, CheckedCoach> chosen = check.units().stream()
                    .filter(unit -> wanted.units().contains(unit.id()))
                    .collect(Collectors.toMap(Unit::id, check::of));
            refuseWithout(wanted, before.keySet(), out);
            Means means = new Means(theme, check.catalogs(), check.fleet(), wanted.printing());
            List<Output> outputs = OUTPUTS.entrySet().stream()
                    .filter(way -> wanted.ways().contains(way.getKey()))
                    .map(way -> way.getValue().apply(means))
                    .toList();
            refuseComplaints(outputs);
            Map<String, Handbook> handbooks = new TreeMap<>();
            chosen.forEach((unit, coach) -> handbooks.put(unit, Composer.compose(coach)));
            Map<String, Handbook> rentersHandbooks = seenBy(Audience.RENTERS, handbooks);
            refuse(
                    "The renters' copy tells what is for staff",
                    rentersHandbooks.values().stream()
                            .flatMap(handbook -> Marks.of(handbook).stream())
                            .toList());
            Map<String, Media> media = new TreeMap<>();
            for (Map.Entry<String, CheckedCoach> coach : chosen.entrySet()) {
                media.put(coach.getKey(), Media.of(coach.getValue().unit(), root));
            }
            Copies copies = new Copies(check, chosen, media, outputs, wanted.begun());
            Map<String, byte[]> forRenters = copies.of(Audience.RENTERS, rentersHandbooks, below("web/", before));
            Map<String, byte[]> forStaff =
                    copies.of(Audience.STAFF, seenBy(Audience.STAFF, handbooks), below("staff/", before));
            refuseComplaints(outputs);
            Set<String> secret = new HashSet<>();
            chosen.values().forEach(coach -> secret.addAll(StaffTexts.of(coach)));
            Map<String, Map<String, byte[]>> sources = copies.sources(rentersHandbooks);
            refuse("The rendered site is wrong", Audit.of(read(forRenters, sources.values()), secret));
            refuse("The renters' copy tells what is for staff", copies.disclosures(sources, new TreeMap<>(forRenters)));
            refuse("The rendered staff copy is wrong", Audit.of(forStaff, Set.of()));
            Map<String, byte[]> both = new TreeMap<>();
            forRenters.forEach((path, bytes) -> both.put("web/" + path, bytes));
            forStaff.forEach((path, bytes) -> both.put("staff/" + path, bytes));
            output.swapIn(both);
            return forRenters.keySet();
        }
    }

    /** With what a file is made of in its place, where that is sooner read than the file. */
    private static Map<String, byte[]> read(Map<String, byte[]> files, Collection<Map<String, byte[]>> sources) {
        Map<String, byte[]> read = new TreeMap<>(files);
        sources.forEach(read::putAll);
        return read;
    }

    private static Map<String, Handbook> seenBy(Audience reader, Map<String, Handbook> handbooks) {
        Map<String, Handbook> seen = new TreeMap<>();
        handbooks.forEach((unit, handbook) -> seen.put(unit, handbook.seenBy(reader)));
        return seen;
    }

    /** The files of a root by their paths in it. */
    private static Map<String, Path> below(String root, Map<String, Path> files) {
        Map<String, Path> below = new TreeMap<>();
        files.forEach((path, file) -> {
            if (path.startsWith(root)) {
                below.put(path.substring(root.length()), file);
            }
        });
        return below;
    }

    /**
     * The files of either copy.
     *
     * @param check of the whole fleet
     * @param chosen the coaches to be made anew, by their ids
     * @param media all of theirs
     */
    private record Copies(
            Check check,
            Map<String, CheckedCoach> chosen,
            Map<String, Media> media,
            List<Output> outputs,
            Consumer<String> begun) {
        private Media media(String unit) {
            return Objects.requireNonNull(media.get(unit), unit);
        }

        /**
         * @param handbooks as the reader sees them
         * @param before what was published last; of it stays what is not made anew
         */
        Map<String, byte[]> of(Audience reader, Map<String, Handbook> handbooks, Map<String, Path> before)
                throws IOException {
            Map<String, byte[]> files = new TreeMap<>();
            List<Output.Entry> coaches = new ArrayList<>();
            for (String unit : check.fleet().coaches()) {
                Handbook handbook = handbooks.get(unit);
                CheckedCoach coach = chosen.get(unit);
                if (handbook != null && coach != null) {
                    Media seen = media(unit).seenBy(coach.unit(), reader);
                    if (reader == Audience.RENTERS) {
                        begun.accept(unit);
                    }
                    Map<String, byte[]> own = new TreeMap<>();
                    Output.Around around = new Output.Around(own, path -> bytes(before, path));
                    for (Output output : outputs) {
                        if (output.of(reader)) {
                            own.putAll(output.files(handbook, seen, around));
                        }
                    }
                    files.putAll(own);
                    coaches.add(WebSite.entry(handbook));
                } else {
                    Map<String, byte[]> own = read(before, unit + "/");
                    files.putAll(own);
                    files.putAll(read(before, WebSite.shortAddresses(unit)));
                    for (Output output : outputs) {
                        Optional<Output.Kept> kept = output.kept(unit, own);
                        if (kept.isPresent()) {
                            files.putAll(read(before, kept.get().needed()));
                            coaches.add(kept.get().entry());
                        }
                    }
                }
            }
            Output.Whole whole = reader == Audience.STAFF
                    ? new Output.Whole(coaches, overviews())
                    : Output.Whole.forRenters(coaches);
            for (Output output : outputs) {
                files.putAll(output.shared(whole));
            }
            return files;
        }

        /** Of all coaches as they are described now, those that are not made anew, too. */
        private List<Overview> overviews() {
            Catalog words = check.catalogs().of(check.fleet().languages());
            Predicate<Unit> sound =
                    unit -> check.findings().stopping(unit.id(), false).isEmpty();
            return List.of(FleetOverview.of(check.fleet(), words, sound), FleetDue.of(check.fleet(), words, sound));
        }

        private static Optional<byte[]> bytes(Map<String, Path> published, String path) {
            try {
                Path file = published.get(path);
                return file == null ? Optional.empty() : Optional.of(Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** What of it is in a folder. */
        private static Map<String, byte[]> read(Map<String, Path> published, String folder) throws IOException {
            Map<String, byte[]> read = new TreeMap<>();
            for (Map.Entry<String, Path> file : published.entrySet()) {
                if (file.getKey().startsWith(folder)) {
                    read.put(file.getKey(), Files.readAllBytes(file.getValue()));
                }
            }
            return read;
        }

        /**
         * What files of the renters' copy are made of, by coach and path.
         *
         * @param handbooks as renters see them
         */
        Map<String, Map<String, byte[]>> sources(Map<String, Handbook> handbooks) {
            Map<String, Map<String, byte[]>> sources = new TreeMap<>();
            handbooks.forEach((unit, handbook) -> sources.put(
                    unit,
                    sources(
                            handbook,
                            media(unit)
                                    .seenBy(
                                            Objects.requireNonNull(chosen.get(unit), unit)
                                                    .unit(),
                                            Audience.RENTERS))));
            return sources;
        }

        private Map<String, byte[]> sources(Handbook handbook, Media seen) {
            Map<String, byte[]> sources = new TreeMap<>();
            outputs.stream()
                    .filter(output -> output.of(Audience.RENTERS))
                    .forEach(output -> output.sources(handbook, seen).ifPresent(sources::putAll));
            return sources;
        }

        /**
         * @param sources see {@link #sources(Map)}
         * @param published the renters' copy
         */
        List<String> disclosures(Map<String, Map<String, byte[]>> sources, SortedMap<String, byte[]> published) {
            Check theirs = ForRenters.of(check, chosen.keySet());
            List<String> disclosures = new ArrayList<>();
            for (Unit unit : theirs.units()) {
                CheckedCoach coach = chosen.get(unit.id());
                if (coach != null) {
                    Handbook handbook = Composer.compose(theirs.of(unit)).seenBy(Audience.RENTERS);
                    Media seen = media(unit.id()).seenBy(unit, Audience.RENTERS);
                    // All paths of its folder: a zero is the letter after the slash.
                    Map<String, byte[]> files = new TreeMap<>(published.subMap(unit.id() + "/", unit.id() + "0"));
                    String led = WebSite.shortAddresses(unit.id());
                    files.putAll(published.subMap(led, led + Character.MAX_VALUE));
                    files.putAll(Objects.requireNonNull(sources.get(unit.id())));
                    Map<String, byte[]> without = new TreeMap<>();
                    // The site offers what is printed by its size, which is looked up, not made once more.
                    Output.Around around = new Output.Around(published, path -> Optional.empty());
                    for (Output output : outputs) {
                        if (output.of(Audience.RENTERS)) {
                            without.putAll(output.sources(handbook, seen)
                                    .orElseGet(() -> output.files(handbook, seen, around)));
                        }
                    }
                    disclosures.addAll(Disclosures.of(new Wording(coach.coach(), coach.words()), files, without));
                }
            }
            return disclosures;
        }
    }

    /** Pages that somebody was sent to are not taken away by leaving out a word of the call. */
    private static void refuseWithout(Wanted wanted, Set<String> before, Path out) throws PublishException {
        if (!wanted.ways().contains(WEB) && before.stream().anyMatch(path -> path.endsWith("/index.html"))) {
            throw new PublishException("`--only` leaves out `" + WEB + "`, and the pages in `" + out
                    + "` would be gone; name it, too, or choose another folder with --out.");
        }
    }

    private static String sentence(TemplateProblem complaint) {
        return complaint.at() + ": " + complaint.message();
    }

    private static void refuseComplaints(List<Output> outputs) throws PublishException {
        refuse(
                "The theme is wrong",
                outputs.stream()
                        .flatMap(each -> each.complaints().stream())
                        .map(Publisher::sentence)
                        .toList());
    }

    private static void refuse(String what, List<String> faults) throws PublishException {
        if (!faults.isEmpty()) {
            throw new PublishException(what
                    + ", nothing was published:\n"
                    + faults.stream().limit(50).map(fault -> "  " + fault).collect(Collectors.joining("\n"))
                    + (faults.size() > 50 ? "\n  and " + (faults.size() - 50) + " more" : ""));
        }
    }
}
