package bayfolio.publish;

import bayfolio.document.Addresses;
import bayfolio.document.Audience;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.read.Ledger;
import bayfolio.source.Digest;
import bayfolio.source.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;

/** The addresses that the ledger of a fleet has, those that are new, and those that would be gone. */
final class GivenOut {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Path root;
    private final boolean kept;
    private final Ledger ledger;

    /** By what addresses begin with; of each coach only what is new, and packed. */
    private final SortedMap<String, Ledger.Packed> added = new ConcurrentSkipListMap<>();

    /** Addresses of pages as they stand in the ledger, with the finding of each. */
    private final SortedMap<String, Lost> lost = new ConcurrentSkipListMap<>();

    private record Lost(String message, String mend, String coach) {}

    private GivenOut(Path root, boolean kept, Ledger ledger) {
        this.root = root;
        this.kept = kept;
        this.ledger = ledger;
    }

    /**
     * @param kept whether what is published is written down; otherwise nothing was given out before
     * @throws PublishException when the ledger holds what is no address
     */
    static GivenOut of(Path root, boolean kept) throws IOException, PublishException {
        Ledger ledger = kept ? Ledger.read(root) : Ledger.empty(root);
        List<Finding> faults = ledger.faults();
        if (!faults.isEmpty()) {
            throw refused(faults);
        }
        return new GivenOut(root, kept, ledger);
    }

    /** Ids of a coach, the one that it has and those that it had. */
    private static Stream<String> ids(Unit unit) {
        return Stream.concat(
                Stream.of(unit.id()),
                unit.facts().all(Unit.FORMERLY).stream().distinct().filter(id -> !id.equals(unit.id())));
    }

    /** All that a reader was ever given of a coach, under whatever id it had. */
    Addresses of(Unit unit, Audience reader) {
        SortedSet<String> nodes = new TreeSet<>();
        SortedSet<String> labels = new TreeSet<>();
        ids(unit).forEach(id -> {
            nodes.addAll(pages(id, reader));
            if (reader == Audience.RENTERS) {
                labels.addAll(ledger.of(Ledger.labels(id)));
            }
        });
        return new Addresses(nodes, labels);
    }

    /** Of what was given out under an id. */
    private SortedSet<String> pages(String id, Audience reader) {
        SortedSet<String> nodes = new TreeSet<>();
        ledger.of(Ledger.pages(id)).forEach(line -> {
            boolean staff = line.endsWith(Ledger.STAFF);
            if (!staff || reader == Audience.STAFF) {
                nodes.add(staff ? line.substring(0, line.length() - Ledger.STAFF.length()) : line);
            }
        });
        return nodes;
    }

    /** By which a coach is known that was made of the same. */
    String digest(Unit unit) {
        return digest(unit, new TreeSet<>(), new TreeSet<>());
    }

    private String digest(Unit unit, SortedSet<String> morePages, SortedSet<String> moreLabels) {
        MessageDigest digest = Digest.sha256();
        ids(unit).forEach(id -> {
            boolean now = id.equals(unit.id());
            add(digest, Ledger.pages(id), now ? morePages : new TreeSet<>());
            add(digest, Ledger.labels(id), now ? moreLabels : new TreeSet<>());
        });
        return Digest.whole(digest);
    }

    private void add(MessageDigest digest, String part, SortedSet<String> more) {
        SortedSet<String> all = ledger.of(part);
        all.addAll(more);
        all.forEach(line -> digest.update((part + line + "\n").getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * A coach as it is given out now.
     *
     * @return its digest from then on
     */
    String add(Unit unit, Addresses renters, Addresses staff) {
        SortedSet<String> pages = new TreeSet<>(renters.nodes());
        staff.nodes().stream()
                .filter(node -> !renters.nodes().contains(node))
                .forEach(node -> pages.add(node + Ledger.STAFF));
        add(Ledger.pages(unit.id()), pages);
        add(Ledger.labels(unit.id()), renters.labels());
        return digest(unit, pages, new TreeSet<>(renters.labels()));
    }

    private void add(String part, SortedSet<String> lines) {
        SortedSet<String> fresh = new TreeSet<>(lines);
        fresh.removeAll(ledger.of(part));
        if (!fresh.isEmpty()) {
            added.put(part, Ledger.Packed.of(String.join("\n", fresh) + "\n"));
        }
    }

    /** Pages of a coach that would be gone. */
    void lost(Unit unit, SortedSet<String> renters, SortedSet<String> staff) {
        ids(unit).forEach(id -> {
            SortedSet<String> lines = ledger.of(Ledger.pages(id));
            Stream.concat(renters.stream(), staff.stream().map(page -> page + Ledger.STAFF))
                    .forEach(page -> lines.stream()
                            .filter(line -> isOn(line, page))
                            .findFirst()
                            .ifPresent(line -> lost.put(Ledger.pages(id) + line, page(unit, id, page))));
        });
    }

    /** Whether an address is that of a page, or of a place on it, for the same readers. */
    private static boolean isOn(String line, String page) {
        boolean staff = page.endsWith(Ledger.STAFF);
        String address = staff ? page.substring(0, page.length() - Ledger.STAFF.length()) : page;
        return line.endsWith(Ledger.STAFF) == staff && (line.equals(page) || line.startsWith(address + "#"));
    }

    private static Lost page(Unit unit, String coach, String line) {
        String page = line.replace(Ledger.STAFF, "");
        String id = page.substring(page.indexOf('/') + 1).replaceFirst("--.*", "");
        String kind = page.substring(0, Math.max(0, page.indexOf('/'))).replaceFirst("^do$", "procedure");
        return new Lost(
                "`" + Ledger.pages(coach) + page + "` was published and would be gone",
                "If it was renamed, write `formerly: [" + id
                        + "]` beside its new id; if not, write under `taken-out` of the coach `was: "
                        + kind + ":" + id
                        + "` with `instead`, which leads readers on to what takes its place, or with `text`, which tells what became of it."
                        + (Form.ofSteps(kind).isPresent()
                                ? " If coaches shared it, one line under `taken-out` in units/fleet.yaml says so for all that had it."
                                : ""),
                unit.id());
    }

    /** @throws PublishException with all that would be gone, each in its line of the ledger */
    void refuseLost(Fleet fleet) throws IOException, PublishException {
        List<Finding> findings = new ArrayList<>(ledger.gone(fleet));
        List<String> addresses = List.copyOf(lost.keySet());
        List<Place> places = addresses.isEmpty() ? List.of() : ledger.places(addresses);
        for (int i = 0; i < addresses.size(); i++) {
            Lost it = lost.get(addresses.get(i));
            if (it != null) {
                findings.add(Finding.error("address-gone", places.get(i), it.message)
                        .mend(it.mend)
                        .on(it.coach));
            }
        }
        if (!findings.isEmpty()) {
            throw refused(findings);
        }
    }

    private static PublishException refused(List<Finding> all) {
        Findings findings = Findings.of(all);
        return new PublishException(TextReport.of(findings, false) + "\n"
                + TextReport.summary(findings).strip() + "\nNothing was published.");
    }

    /**
     * Old addresses of coaches that have another id by now: files below the root of a reader, with those that they lead to.
     *
     * @param there ids of the coaches that this reader gets
     */
    SortedMap<String, String> renamed(Fleet fleet, Audience reader, Set<String> there) {
        SortedMap<String, String> led = new TreeMap<>();
        fleet.units().stream()
                .filter(unit -> unit.facts().read(Unit.ID) && there.contains(unit.id()))
                .forEach(unit -> ids(unit).skip(1).forEach(old -> {
                    pages(old, reader).stream()
                            .filter(node -> node.indexOf('#') < 0)
                            .forEach(page -> led.put(old + "/" + page, unit.id() + "/" + page));
                    if (reader == Audience.RENTERS) {
                        ledger.of(Ledger.labels(old))
                                .forEach(code -> led.put(Ledger.labels(old) + code, Ledger.labels(unit.id()) + code));
                    }
                }));
        return led;
    }

    /** All pages and labels of a coach that has left the fleet. */
    SortedSet<String> left(String coach, Audience reader) {
        SortedSet<String> all = new TreeSet<>();
        pages(coach, reader).stream()
                .filter(node -> node.indexOf('#') < 0)
                .forEach(page -> all.add(Ledger.pages(coach) + page));
        if (reader == Audience.RENTERS) {
            ledger.of(Ledger.labels(coach)).forEach(code -> all.add(Ledger.labels(coach) + code));
        }
        return all;
    }

    /** What the ledger is going to be; that it can be written is known before anything is swapped in. */
    final class Writing implements AutoCloseable {
        private final Optional<PublishLock> lock;
        private final Optional<Ledger.Next> next;

        private Writing(Optional<PublishLock> lock, Optional<Ledger.Next> next) {
            this.lock = lock;
            this.next = next;
        }

        void swapIn() throws IOException {
            if (next.isPresent()) {
                next.get().swapIn();
            }
        }

        @Override
        public void close() throws IOException {
            try {
                if (next.isPresent()) {
                    next.get().close();
                }
            } finally {
                if (lock.isPresent()) {
                    lock.get().close();
                }
            }
        }
    }

    /** @throws PublishException where something is new and cannot be written down */
    @SuppressWarnings("MustBeClosedChecker") // closed with the writing
    Writing writing() throws IOException, PublishException {
        if (!kept || added.isEmpty() && ledger.tidy()) {
            return new Writing(Optional.empty(), Optional.empty());
        }
        // Beside the fleet and not in it: nobody wants to keep a lock under version control.
        Path within = Path.of(
                System.getProperty("java.io.tmpdir", "."),
                "bayfolio-" + Digest.of(root.toRealPath() + " " + Ledger.FILE));
        Files.createDirectories(within);
        PublishLock lock = PublishLock.take(root.resolve(Ledger.FILE), within, PATIENCE);
        boolean taken = false;
        try {
            Writing writing = written(lock);
            taken = true;
            return writing;
        } finally {
            if (!taken) {
                lock.close();
            }
        }
    }

    private Writing written(PublishLock lock) throws IOException, PublishException {
        Ledger now = Ledger.read(root);
        List<Finding> faults = now.faults();
        if (!faults.isEmpty()) {
            throw refused(faults);
        }
        try {
            return new Writing(Optional.of(lock), Optional.of(now.with(added)));
        } catch (IOException e) {
            if (added.isEmpty()) {
                return new Writing(Optional.of(lock), Optional.empty());
            }
            throw new PublishException(
                    "`" + root.resolve(Ledger.FILE)
                            + "` cannot be written, and addresses are new that it has to hold; nothing was published. Make its folder writable, or publish in a copy of the fleet and keep the file of that.");
        }
    }
}
