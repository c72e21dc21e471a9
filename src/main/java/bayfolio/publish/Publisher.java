package bayfolio.publish;

import bayfolio.catalog.Catalog;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.compose.FleetDue;
import bayfolio.compose.FleetOverview;
import bayfolio.document.Audience;
import bayfolio.document.Overview;
import bayfolio.model.Coach;
import bayfolio.model.Unit;
import bayfolio.render.Means;
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
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Composes, renders and audits a coach at a time in each thread, and only then swaps in. Whatever fails before leaves the
 * last site as it was; no more of the fleet is in mind than what threads have in hand, and what is wrong.
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
     * @param elsewhere ids of coaches that are published by somebody else, to be laid beside these: they are listed with them
     * @param ways some of {@link #ways}; of these coaches nothing else is there afterwards
     * @param fresh whether those are made anew, too, of which nothing is otherwise than when they were published last
     * @param begun is told each coach when its files are made, since that may take long
     */
    public record Wanted(
            List<String> units,
            List<String> elsewhere,
            Set<String> ways,
            Printing printing,
            boolean fresh,
            Consumer<String> begun) {
        /** By somebody who does not look on. */
        public Wanted(List<String> units, Set<String> ways, Printing printing) {
            this(units, List.of(), ways, printing, false, coach -> {});
        }

        public Wanted {
            units = List.copyOf(units);
            elsewhere = List.copyOf(elsewhere);
            ways = Set.copyOf(ways);
        }
    }

    /**
     * @param fleet as it was before it was read
     * @throws PublishException in one sentence, when something is wrong; nothing was changed then
     */
    public static Published publish(Check check, FleetState fleet, Theme theme, Wanted wanted, Path out)
            throws IOException, PublishException {
        FleetFolder.refuse(fleet.root(), out);
        try (OutputFolder output = OutputFolder.open(out)) {
            output.verify();
            Means means = new Means(theme, check.catalogs(), check.fleet(), wanted.printing());
            List<Output> outputs = outputs(means, wanted);
            refuseComplaints(outputs.stream());
            try (NextEdition next = output.next()) {
                refuseWithout(wanted, next, out);
                Site site = new Site(check, fleet.root(), means, wanted, next);
                site.coaches();
                site.shared(outputs);
                refuseComplaints(Stream.concat(outputs.stream(), site.used()));
                site.refuseFaults();
                Published published = new Published(site.pages(), next.changed());
                fleet.refuseChanges();
                output.swapIn(next);
                return published;
            }
        }
    }

    /**
     * What was published.
     *
     * @param pages how many the renters' site has
     * @param changed paths of files that are new, other than before, or gone, below the folder that was published into
     */
    public record Published(int pages, Set<String> changed) {}

    private static List<Output> outputs(Means means, Wanted wanted) {
        return OUTPUTS.entrySet().stream()
                .filter(way -> wanted.ways().contains(way.getKey()))
                .map(way -> way.getValue().apply(means))
                .toList();
    }

    /** A site while it is made, a coach at a time in each thread. */
    private static final class Site {
        private final Check check;
        private final Path root;
        private final Means means;
        private final Wanted wanted;
        private final NextEdition next;
        private final ForRenters forRenters;
        private final Inputs inputs;
        private final Map<Audience, Audit.Outside> outside;
        private final Map<String, Map<CoachJob.Fault, List<String>>> faults = new ConcurrentSkipListMap<>();
        private final Map<Audience, Map<String, Output.Entry>> entries =
                Map.of(Audience.RENTERS, new ConcurrentSkipListMap<>(), Audience.STAFF, new ConcurrentSkipListMap<>());
        private final Set<String> needed = ConcurrentHashMap.newKeySet();
        private final AtomicInteger pages = new AtomicInteger();
        /** Of each thread, since no way of giving out is made for two. */
        private final Queue<List<Output>> idle = new ConcurrentLinkedQueue<>();

        private final Queue<List<Output>> all = new ConcurrentLinkedQueue<>();

        Site(Check check, Path root, Means means, Wanted wanted, NextEdition next) throws IOException {
            this.check = check;
            this.root = root;
            this.means = means;
            this.wanted = wanted;
            this.next = next;
            this.forRenters = new ForRenters(check);
            String base = check.fleet().basePath();
            this.outside = Map.of(Audience.RENTERS, new Audit.Outside(base), Audience.STAFF, new Audit.Outside(base));
            this.inputs = new Inputs(check, root, wanted);
        }

        /** Those that are wanted are made, if they are not as they were; of others stays what was published before. */
        void coaches() throws IOException {
            Map<String, Unit> units = check.units().stream()
                    .filter(unit -> wanted.units().contains(unit.id()))
                    .collect(Collectors.toMap(Unit::id, unit -> unit));
            Workers.each(check.fleet().coaches(), coach -> {
                Unit unit = units.get(coach);
                if (unit != null) {
                    make(unit);
                } else if (next.last(coach).isPresent()) {
                    keep(coach);
                }
            });
        }

        private void make(Unit unit) throws IOException {
            String key = inputs.of(unit);
            Optional<Part> last = next.last(unit.id());
            if (!wanted.fresh()
                    && last.filter(part -> part.made().equals(key) && next.isWhole(part))
                            .isPresent()) {
                keep(unit.id());
                return;
            }
            wanted.begun().accept(unit.id());
            List<Output> mine = idle.poll();
            if (mine == null) {
                mine = outputs(means, wanted);
                all.add(mine);
            }
            CoachJob.Made made = new CoachJob(check, forRenters, root, mine, next::readLast).run(unit, outside);
            idle.add(mine);
            faults.put(unit.id(), made.faults());
            if (made.faults().values().stream().allMatch(List::isEmpty)) {
                next.write(unit.id(), key, made.files());
                listed(unit.id(), mine, path -> Optional.ofNullable(made.files().get(path)));
                pages.addAndGet(renters(made.files().keySet()));
            }
        }

        private void keep(String coach) throws IOException {
            next.keep(coach);
            listed(coach, outputs(means, wanted), next::read);
            pages.addAndGet(
                    renters(next.edition().part(coach).orElseThrow().files().keySet()));
        }

        /** A coach in the lists of all, by what its own files say. */
        private void listed(String coach, List<Output> outputs, Function<String, Optional<byte[]>> files) {
            entries.forEach((reader, those) ->
                    outputs.forEach(each -> each.kept(coach, path -> files.apply(OutputFolder.root(reader) + path))
                            .ifPresent(kept -> {
                                those.put(coach, kept.entry());
                                needed.add(OutputFolder.root(reader) + kept.needed());
                            })));
        }

        /** Before the last part: all coaches must be there. */
        void shared(List<Output> outputs) throws IOException {
            if (wanted.ways().contains(WEB)) {
                check.units().stream()
                        .filter(unit -> wanted.elsewhere().contains(unit.id()))
                        .forEach(unit -> entries.values()
                                .forEach(those -> those.put(
                                        unit.id(),
                                        WebSite.entry(
                                                unit.id(),
                                                Composer.cover(
                                                        unit,
                                                        check.catalogs()
                                                                .of(new Coach(check.fleet(), unit).languages()))))));
            }
            Map<String, byte[]> shared = new TreeMap<>();
            for (Map.Entry<Audience, Map<String, Output.Entry>> those : entries.entrySet()) {
                Audience reader = those.getKey();
                List<Output.Entry> coaches = List.copyOf(those.getValue().values());
                Output.Whole whole = reader == Audience.STAFF
                        ? new Output.Whole(coaches, overviews())
                        : Output.Whole.forRenters(coaches);
                Map<String, byte[]> files = new TreeMap<>();
                outputs.forEach(each -> files.putAll(each.shared(whole)));
                List<String> wrong = Audit.of(files, Set.of(), Objects.requireNonNull(outside.get(reader)));
                faults.computeIfAbsent(Part.SHARED, it -> new EnumMap<>(CoachJob.Fault.class))
                        .put(reader == Audience.STAFF ? CoachJob.Fault.WRONG_FOR_STAFF : CoachJob.Fault.WRONG, wrong);
                files.forEach((path, bytes) -> shared.put(OutputFolder.root(reader) + path, bytes));
                pages.addAndGet(reader == Audience.STAFF ? 0 : pages(files.keySet()));
            }
            needed.removeIf(folder -> shared.keySet().stream().anyMatch(path -> path.startsWith(folder)));
            next.writeShared(shared, needed);
            outside.forEach((reader, links) -> faults.computeIfAbsent(
                            Part.SHARED, it -> new EnumMap<>(CoachJob.Fault.class))
                    .merge(
                            reader == Audience.STAFF ? CoachJob.Fault.WRONG_FOR_STAFF : CoachJob.Fault.WRONG,
                            links.faults(path -> wanted.elsewhere().contains(path.replaceFirst("/.*", ""))
                                    ? Optional.of(new byte[0])
                                    : next.read(OutputFolder.root(reader) + path)),
                            (some, others) -> Stream.concat(some.stream(), others.stream())
                                    .toList()));
        }

        /** Of all coaches as they are described now, those that are not made anew, too. */
        private List<Overview> overviews() {
            Catalog words = check.catalogs().of(check.fleet().languages());
            Predicate<Unit> sound =
                    unit -> check.findings().stopping(unit.id(), false).isEmpty();
            return List.of(FleetOverview.of(check.fleet(), words, sound), FleetDue.of(check.fleet(), words, sound));
        }

        void refuseFaults() throws PublishException {
            for (CoachJob.Fault fault : CoachJob.Fault.values()) {
                refuse(
                        fault.sentence(),
                        faults.values().stream()
                                .flatMap(those -> those.getOrDefault(fault, List.of()).stream())
                                .toList());
            }
        }

        /** All ways of giving out that threads have made. */
        Stream<Output> used() {
            return all.stream().flatMap(List::stream);
        }

        int pages() {
            return pages.get();
        }

        private static int renters(Set<String> paths) {
            return pages(paths.stream()
                    .filter(path -> path.startsWith(OutputFolder.root(Audience.RENTERS)))
                    .collect(Collectors.toSet()));
        }

        private static int pages(Set<String> paths) {
            return (int) paths.stream()
                    .filter(path -> path.endsWith(".html") && !path.equals(WebSite.NOT_FOUND))
                    .count();
        }
    }

    /** Pages that somebody was sent to are not taken away by leaving out a word of the call. */
    private static void refuseWithout(Wanted wanted, NextEdition next, Path out) throws PublishException {
        if (!wanted.ways().contains(WEB)
                && next.readLast(OutputFolder.root(Audience.RENTERS) + "index.html")
                        .isPresent()) {
            throw new PublishException("`--only` leaves out `" + WEB + "`, and the pages in `" + out
                    + "` would be gone; name it, too, or choose another folder with --out.");
        }
    }

    private static String sentence(TemplateProblem complaint) {
        return complaint.at() + ": " + complaint.message();
    }

    private static void refuseComplaints(Stream<Output> outputs) throws PublishException {
        refuse(
                "The theme is wrong",
                outputs.flatMap(each -> each.complaints().stream())
                        .map(Publisher::sentence)
                        .distinct()
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
