package bayfolio.publish;

import bayfolio.catalog.Catalog;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.compose.FleetDue;
import bayfolio.compose.FleetOverview;
import bayfolio.compose.FleetToday;
import bayfolio.document.Audience;
import bayfolio.document.NodeId;
import bayfolio.document.Overview;
import bayfolio.document.Today;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Editions;
import bayfolio.finding.FindingLine;
import bayfolio.model.Coach;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.read.Folder;
import bayfolio.render.Means;
import bayfolio.render.Output;
import bayfolio.render.web.WebSite;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A site while it is made, a coach at a time in each thread. */
final class Site {
    private final Check check;
    private final FleetState fleet;
    private final Means means;
    private final Publisher.Wanted wanted;
    private final NextEdition next;
    private final GivenOut given;
    private final Map<Audience, Audit.Outside> outside;
    private final Map<CoachJob.Fault, SortedMap<String, List<String>>> faults = new ConcurrentHashMap<>();
    private final Map<Audience, SortedMap<String, Output.Entry>> entries =
            Map.of(Audience.RENTERS, new ConcurrentSkipListMap<>(), Audience.STAFF, new ConcurrentSkipListMap<>());
    private final Set<String> needed = ConcurrentHashMap.newKeySet();
    private final AtomicInteger pages = new AtomicInteger();
    private final Queue<AsPrinted> printed = new ConcurrentLinkedQueue<>();

    /** That no thread uses now, since none is made for two. */
    private final Queue<List<Output>> idle = new ConcurrentLinkedQueue<>();

    /** Of all coaches that are wanted, when one of them is made: what is for staff of one may be typed for another, too. */
    private Phrases staffTexts = Phrases.NONE;

    Site(Check check, FleetState fleet, Means means, Publisher.Wanted wanted, NextEdition next, GivenOut given) {
        this.check = check;
        this.fleet = fleet;
        this.means = means;
        this.wanted = wanted;
        this.next = next;
        this.given = given;
        String base = check.fleet().basePath();
        this.outside = Map.of(Audience.RENTERS, new Audit.Outside(base), Audience.STAFF, new Audit.Outside(base));
    }

    /** Those that are wanted are made, if they are not as they were; of others stays what was published before. */
    void coaches() throws IOException {
        Set<String> these = Set.copyOf(wanted.units());
        Inputs inputs = new Inputs(check.fleet(), fleet);
        SortedMap<String, String> changed = new ConcurrentSkipListMap<>();
        Map<String, Part.Found> found = new ConcurrentHashMap<>();
        // Most of what is for staff is for those of many coaches, in the same words: each is in mind once.
        Map<String, String> texts = new ConcurrentHashMap<>();
        Workers.each(check.fleet().coaches(), coach -> {
            Optional<Part> last = next.last(coach);
            Optional<Unit> wantedNow = these.contains(coach) ? check.units().find(coach) : Optional.empty();
            if (wantedNow.isEmpty()) {
                if (last.isPresent()) {
                    keep(last.get(), last.get().found());
                }
                return;
            }
            Unit unit = wantedNow.get();
            Part.Found now = found(unit, inputs, last).with(text -> texts.computeIfAbsent(text, it -> it));
            found.put(coach, now);
            String key = inputs.ofFiles(unit, check.library(), wanted);
            Optional<Part> stays = last.filter(part -> isAsItWas(part, made(key, given.digest(unit))));
            if (stays.isPresent()) {
                keep(stays.get(), now);
            } else {
                changed.put(coach, key);
            }
        });
        staffTexts = new Phrases(texts.keySet());
        ForRenters forRenters = new ForRenters(check);
        Workers.each(
                List.copyOf(changed.keySet()),
                coach -> make(
                        check.units().find(coach).orElseThrow(),
                        Objects.requireNonNull(changed.get(coach)),
                        Objects.requireNonNull(found.get(coach)),
                        forRenters));
    }

    private boolean isAsItWas(Part last, String key) {
        return !wanted.fresh() && last.made().equals(key) && next.isWhole(last);
    }

    /** All that the files of a coach are made of: old addresses, too. */
    private static String made(String key, String given) {
        return key + " " + given;
    }

    /** What the check found in it, in one run with what is for staff of it; that is sooner read than worked out again. */
    private Part.Found found(Unit unit, Inputs inputs, Optional<Part> last) throws IOException {
        String of = inputs.ofFindings(unit);
        Optional<Part.Found> known = last.map(Part::found).filter(it -> it.of().equals(of) && !wanted.fresh());
        return new Part.Found(
                of,
                check.ofCoaches().getOrDefault(unit.id(), List.of()).stream()
                        .map(FindingLine::of)
                        .toList(),
                known.map(Part.Found::forStaff)
                        .orElseGet(() ->
                                StaffTexts.of(check.of(unit)).stream().sorted().toList()));
    }

    private void make(Unit unit, String key, Part.Found found, ForRenters forRenters) throws IOException {
        wanted.begun().accept(unit.id());
        List<Output> outputs = taken();
        CoachJob.Made made = new CoachJob(check, forRenters, fleet.root(), outputs, staffTexts, next::readLast)
                .run(
                        unit,
                        outside,
                        Map.of(
                                Audience.RENTERS, given.of(unit, Audience.RENTERS),
                                Audience.STAFF, given.of(unit, Audience.STAFF)));
        made.faults().forEach((fault, sentences) -> tell(fault, unit.id(), sentences));
        if (made.faults().values().stream().allMatch(List::isEmpty)) {
            given.lost(unit, of(made.lost(), Audience.RENTERS), of(made.lost(), Audience.STAFF));
            String after = given.add(unit, of(made.given(), Audience.RENTERS), of(made.given(), Audience.STAFF));
            next.write(unit.id(), made(key, after), found, made.files());
            made.printed().ifPresent(printed::add);
            listed(unit.id(), outputs, path -> Optional.ofNullable(made.files().get(path)));
            count(made.files().keySet());
        }
        idle.add(outputs);
    }

    private static <T> T of(Map<Audience, T> all, Audience reader) {
        return Objects.requireNonNull(all.get(reader));
    }

    private void keep(Part part, Part.Found found) {
        next.keep(part, found);
        List<Output> outputs = taken();
        listed(part.name(), outputs, next::read);
        idle.add(outputs);
        count(part.files().keySet());
    }

    private List<Output> taken() {
        List<Output> mine = idle.poll();
        return mine == null ? Publisher.outputs(means, wanted) : mine;
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
        if (wanted.ways().contains(Publisher.WEB)) {
            check.units().only(Set.copyOf(wanted.elsewhere())::contains).stream()
                    .map(this::elsewhere)
                    .forEach(entry -> entries.values().forEach(those -> those.put(entry.unit(), entry)));
        }
        Map<String, byte[]> shared = new TreeMap<>();
        entries.forEach((reader, those) -> {
            List<Output.Entry> coaches = List.copyOf(those.values());
            Output.Whole whole = reader == Audience.STAFF
                    ? whole(reader, coaches, Optional.of(today()), overviews())
                    : whole(reader, coaches, Optional.empty(), List.of());
            Map<String, byte[]> files = new TreeMap<>();
            outputs.forEach(each -> files.putAll(each.shared(whole)));
            Phrases secret = reader == Audience.STAFF ? Phrases.NONE : staffTexts;
            tell(CoachJob.Fault.wrong(reader), Part.SHARED, Audit.of(files, secret, outside(reader)));
            files.forEach((path, bytes) -> shared.put(OutputFolder.root(reader) + path, bytes));
        });
        needed.removeIf(folder -> shared.keySet().stream().anyMatch(path -> path.startsWith(folder)));
        next.writeShared(shared, needed);
        count(shared.keySet());
        outside.forEach((reader, links) -> tell(
                CoachJob.Fault.wrong(reader),
                Part.SHARED,
                links.faults(path -> wanted.elsewhere().contains(path.replaceFirst("/.*", ""))
                        ? Optional.of(new byte[0])
                        : next.read(OutputFolder.root(reader) + path))));
    }

    private Output.Whole whole(
            Audience reader, List<Output.Entry> coaches, Optional<Today> today, List<Overview> overviews) {
        Set<String> there = coaches.stream().map(Output.Entry::unit).collect(Collectors.toSet());
        return new Output.Whole(
                coaches,
                today,
                overviews,
                given.renamed(check.fleet(), reader, there),
                check.fleet().facts().facts().all(FleetFacts.LEFT).stream()
                        .map(left -> new Output.Gone(
                                left.id(),
                                left.name(),
                                left.text().orElse(""),
                                left.instead().filter(there::contains).orElse(""),
                                given.left(left.id(), reader)))
                        .toList());
    }

    private Audit.Outside outside(Audience reader) {
        return Objects.requireNonNull(outside.get(reader));
    }

    /** A coach that somebody else publishes. */
    private Output.Entry elsewhere(Unit unit) {
        Catalog words = check.catalogs().of(new Coach(check.fleet(), unit).languages());
        return WebSite.entry(unit.id(), Composer.cover(unit, words));
    }

    /** Of all coaches as they are described now, those that are not made anew, too. */
    private List<Overview> overviews() {
        Catalog words = check.catalogs().of(check.fleet().languages());
        return List.of(
                FleetOverview.of(check.fleet(), words, this::isSound),
                FleetDue.of(check.fleet(), words, this::isSound));
    }

    private boolean isSound(String coach) {
        return check.findings().stopping(coach, false).isEmpty();
    }

    private Today today() {
        Folder folder = new Folder(fleet.root());
        return FleetToday.of(
                check.fleet(),
                check.catalogs().of(check.fleet().languages()),
                this::isSound,
                wanted.booked(),
                coach -> check.fleet()
                        .find(coach)
                        .map(unit -> Editions.of(folder, unit, finding -> {}).last())
                        .orElse(0),
                this::isThere);
    }

    /** Whether staff find a page; what somebody else publishes is laid beside this. */
    private boolean isThere(String coach, NodeId page) {
        return wanted.elsewhere().contains(coach)
                || next.read(OutputFolder.root(Audience.STAFF) + coach + "/" + WebSite.file(page))
                        .isPresent();
    }

    private void tell(CoachJob.Fault fault, String part, List<String> sentences) {
        faults.computeIfAbsent(fault, it -> new ConcurrentSkipListMap<>())
                .merge(
                        part,
                        sentences,
                        (some, others) ->
                                Stream.concat(some.stream(), others.stream()).toList());
    }

    /** One sentence each, in the order of the parts. */
    List<String> faults(CoachJob.Fault fault) {
        return faults.getOrDefault(fault, new TreeMap<>()).values().stream()
                .flatMap(List::stream)
                .toList();
    }

    /** What threads have made to give out with; none of them makes any more. */
    Stream<Output> used() {
        return idle.stream().flatMap(List::stream);
    }

    /** Books of editions, where it is not yet written down how they are printed. */
    List<AsPrinted> printed() {
        return List.copyOf(printed);
    }

    private void count(Set<String> paths) {
        String renters = OutputFolder.root(Audience.RENTERS);
        pages.addAndGet((int) paths.stream()
                .filter(path -> path.startsWith(renters) && path.endsWith(".html"))
                .filter(path -> !path.equals(renters + WebSite.NOT_FOUND))
                .count());
    }

    /** How many the renters' site has. */
    int pages() {
        return pages.get();
    }
}
