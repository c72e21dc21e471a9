package bayfolio.read;

import bayfolio.document.NodeId;
import bayfolio.document.PageKind;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Left;
import bayfolio.model.TakenOut;
import bayfolio.model.Unit;
import bayfolio.source.Digest;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * All addresses that were ever published, one a line, sorted, without a day and without a number: two hands that add to it are
 * merged by taking the lines of both.
 *
 * <pre>
 * L/KNOT/L4                 the short address of a label
 * knot/do/level#done-when   a place on a page
 * knot/condition staff      a page of the staff's copy alone
 * </pre>
 *
 * <p>The addresses of a coach are packed until somebody asks for them: those of a thousand coaches are more than the coaches.
 */
public final class Ledger {
    public static final String FILE = "units/addresses.ledger";

    /** For git, which takes the lines of both sides then. */
    public static final String MERGED = FILE + " merge=union\n";

    /** Behind what renters were never given. */
    public static final String STAFF = " staff";

    private static final String HEAD =
            "# Every address that was ever published. `publish` adds new ones; take none out, and keep it with the descriptions.";

    /** What all addresses of a coach begin with. */
    private static final Pattern PART = Pattern.compile("L/[A-Z0-9-]+/|[a-z0-9-]+/");

    private static final Pattern LABEL = Pattern.compile("[A-Z0-9-]+");

    /** What a merge leaves behind that somebody has to settle. */
    private static final Pattern MARKER = Pattern.compile("(?:<{7}|\\|{7}|={7}|>{7})(?: .*)?");

    private static final AtomicInteger WRITTEN = new AtomicInteger();

    private final Path file;
    private final SortedMap<String, List<Packed>> parts;
    private final List<Integer> faulty;
    private final boolean tidy;
    private final String digest;

    private Ledger(
            Path file, SortedMap<String, List<Packed>> parts, List<Integer> faulty, boolean tidy, String digest) {
        this.file = file;
        this.parts = parts;
        this.faulty = faulty;
        this.tidy = tidy;
        this.digest = digest;
    }

    /** Of a fleet that was never published. */
    public static Ledger empty(Path root) {
        return new Ledger(root.resolve(FILE), new TreeMap<>(), List.of(), true, "");
    }

    /** What a fleet folder says; nothing where there is no such file. */
    public static Ledger read(Path root) throws IOException {
        Path file = root.resolve(FILE);
        if (!Files.exists(file)) {
            return empty(root);
        }
        SortedMap<String, List<Packed>> parts = new TreeMap<>();
        List<Integer> faulty = new ArrayList<>();
        MessageDigest digest = Digest.sha256();
        boolean tidy = true;
        StringBuilder together = new StringBuilder();
        String part = "";
        String before = "";
        int number = 0;
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (line.isBlank() || line.startsWith("#")) {
                    tidy &= number == 1 && line.equals(HEAD);
                    continue;
                }
                String its = part.isEmpty() || !line.startsWith(part) ? part(line) : part;
                if (its.isEmpty() || !isIn(its, line)) {
                    faulty.add(number);
                    continue;
                }
                tidy &= before.compareTo(line) < 0;
                before = line;
                if (!its.equals(part)) {
                    pack(part, together, parts);
                    part = its;
                }
                together.append(line, its.length(), line.length()).append('\n');
            }
        }
        pack(part, together, parts);
        return new Ledger(file, parts, List.copyOf(faulty), tidy && number > 0, Digest.whole(digest));
    }

    /** What of all addresses of a coach a line begins with; empty where it is none. */
    private static String part(String line) {
        Matcher part = PART.matcher(line);
        return part.lookingAt() ? part.group() : "";
    }

    private static boolean isIn(String part, String line) {
        String within = line.substring(part.length());
        return part.startsWith("L/")
                ? LABEL.matcher(within).matches()
                : NodeId.isWritten(
                        within.endsWith(STAFF) ? within.substring(0, within.length() - STAFF.length()) : within);
    }

    private static void pack(String part, StringBuilder lines, SortedMap<String, List<Packed>> parts) {
        if (lines.length() > 0) {
            parts.computeIfAbsent(part, it -> new ArrayList<>(1)).add(Packed.of(lines.toString()));
            lines.setLength(0);
        }
    }

    /** What it says is wrong with it, and which coaches are gone without a word. */
    static final Keeper.Reader<Told> READ = (folder, path, findings) -> {
        // It may be longer than what a person writes, so that it is not asked for as a text.
        folder.ask(new Seen(path));
        try {
            Ledger ledger = read(folder.root());
            return new Told(ledger.faults(), ledger);
        } catch (IOException e) {
            return new Told(
                    List.of(Finding.error(
                            "unreadable-file", Place.whole(new SourceFile(FILE, "")), "the file cannot be read")),
                    empty(folder.root()));
        }
    };

    /** By which it is told whether it is the same; nothing but this program writes it. */
    private record Seen(String path) implements Keeper.Question<String> {
        @Override
        public String answer(Folder folder) {
            try {
                BasicFileAttributes now = Files.readAttributes(folder.root().resolve(path), BasicFileAttributes.class);
                return now.size() + " " + now.lastModifiedTime();
            } catch (IOException none) {
                return "";
            }
        }
    }

    /** What was found in it. */
    record Told(List<Finding> faults, Ledger ledger) {
        Stream<Finding> of(Fleet fleet) {
            try {
                return Stream.concat(faults.stream(), ledger.gone(fleet).stream());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Coaches that are not in the fleet any more, and nobody has said what became of them. */
    public List<Finding> gone(Fleet fleet) throws IOException {
        Set<String> known = new HashSet<>(fleet.coaches());
        fleet.units()
                .forEach(unit -> unit.facts().ifRead(Unit.FORMERLY).stream()
                        .flatMap(ids -> ids.value().stream())
                        .forEach(id -> known.add(id.value())));
        FleetFacts facts = fleet.facts();
        // A coach that could not be read may be the one that is missed, under another id.
        boolean unread = fleet.coaches().size() > fleet.units().size()
                || fleet.units().stream().anyMatch(unit -> !unit.facts().read(Unit.FORMERLY));
        if (unread || !facts.facts().read(FleetFacts.LEFT)) {
            return List.of();
        }
        facts.facts().all(FleetFacts.LEFT).stream()
                .filter(left -> left.facts().read(Left.ID))
                .forEach(left -> known.add(left.id()));
        List<String> coaches =
                coaches().stream().filter(coach -> !known.contains(coach)).toList();
        if (coaches.isEmpty()) {
            return List.of();
        }
        List<Place> places = places(coaches.stream().map(this::first).toList());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < coaches.size(); i++) {
            findings.add(gone(coaches.get(i), places.get(i)));
        }
        return findings;
    }

    /** Which of the texts that a fleet has taken out were given out of each of its coaches, under whatever id that had. */
    Map<String, Set<String>> had(Fleet fleet) {
        Map<String, String> pages = new HashMap<>();
        fleet.facts().facts().ifRead(FleetFacts.TAKEN_OUT).stream()
                .flatMap(all -> all.value().stream())
                .flatMap(out -> out.value().facts().ifRead(TakenOut.WAS).stream())
                .map(Located::value)
                .forEach(was -> PageKind.pagesOf(TakenOut.kind(was))
                        .ifPresent(kind -> pages.put(kind.node(TakenOut.id(was)).page(), was)));
        Map<String, Set<String>> had = new HashMap<>();
        if (!pages.isEmpty()) {
            for (Unit unit : fleet.units()) {
                ids(unit)
                        .flatMap(id -> parts.getOrDefault(pages(id), List.of()).stream())
                        .flatMap(Packed::lines)
                        .flatMap(line -> Optional.ofNullable(pages.get(line.replace(STAFF, ""))).stream())
                        .forEach(was -> had.computeIfAbsent(unit.id(), it -> new TreeSet<>())
                                .add(was));
            }
        }
        return had;
    }

    private static Stream<String> ids(Unit unit) {
        return Stream.concat(
                unit.facts().ifRead(Unit.ID).stream().map(Located::value),
                unit.facts().ifRead(Unit.FORMERLY).stream()
                        .flatMap(ids -> ids.value().stream())
                        .map(Located::value));
    }

    private String first(String coach) {
        SortedSet<String> pages = of(pages(coach));
        return pages.isEmpty() ? labels(coach) + of(labels(coach)).first() : pages(coach) + pages.first();
    }

    private Finding gone(String coach, Place at) {
        long count =
                of(pages(coach)).stream().filter(line -> line.indexOf('#') < 0).count();
        return Finding.error(
                        "address-gone",
                        at,
                        "coach `" + coach + "` was published, and its " + count + (count == 1 ? " page" : " pages")
                                + " would be gone")
                .mend(
                        "If it was renamed, write `formerly: [" + coach
                                + "]` beside its new id; if not, write it under `left` in units/fleet.yaml, with `instead`, the coach that readers are led on to, or with `text`, which tells what became of it.");
    }

    /** What is no address, and what a merge has left. */
    public List<Finding> faults() throws IOException {
        if (faulty.isEmpty()) {
            return List.of();
        }
        SourceFile source = source();
        return faulty.stream().map(line -> fault(source, line)).toList();
    }

    private static Finding fault(SourceFile source, int number) {
        String line = source.line(number);
        Place at = Place.of(source, number, 1, line.codePointCount(0, line.length()));
        return MARKER.matcher(line).matches()
                ? Finding.error("conflict-marker", at, "`" + line + "` is left of a merge")
                        .mend("Take out the lines of marks and keep the addresses of both sides; with `" + FILE
                                + " merge=union` in .gitattributes git does so itself.")
                : Finding.error("no-address", at, "`" + line + "` is no address")
                        .mend(
                                "Write it as it was, such as `knot/do/level#done-when`, or take it out if it never was one.");
    }

    private SourceFile source() throws IOException {
        return new SourceFile(FILE, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
    }

    /** Where addresses stand in it. */
    public List<Place> places(List<String> addresses) throws IOException {
        SourceFile source = source();
        List<Place> places = new ArrayList<>();
        SortedMap<String, Integer> lines = new TreeMap<>();
        for (int number = 1; number <= source.lineCount(); number++) {
            lines.putIfAbsent(source.line(number), number);
        }
        for (String address : addresses) {
            int number = lines.getOrDefault(address, 1);
            places.add(Place.of(source, number, 1, address.length()));
        }
        return places;
    }

    /** Ids of the coaches that it has addresses of. */
    public SortedSet<String> coaches() {
        SortedSet<String> coaches = new TreeSet<>();
        parts.keySet()
                .forEach(part -> coaches.add(
                        part.replaceFirst("^L/", "").replace("/", "").toLowerCase(Locale.ROOT)));
        return coaches;
    }

    /** What all addresses of pages of a coach begin with. */
    public static String pages(String coach) {
        return coach + "/";
    }

    /** What all short addresses of a coach begin with. */
    public static String labels(String coach) {
        return "L/" + coach.toUpperCase(Locale.ROOT) + "/";
    }

    /** What of all addresses that begin so follows. */
    public SortedSet<String> of(String part) {
        SortedSet<String> lines = new TreeSet<>();
        parts.getOrDefault(part, List.of()).forEach(packed -> packed.lines().forEach(lines::add));
        return lines;
    }

    /** Lines that are kept in a tenth of their size. */
    public record Packed(byte[] deflated) {
        public static Packed of(String lines) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (DeflaterOutputStream out = new DeflaterOutputStream(bytes)) {
                out.write(lines.getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return new Packed(bytes.toByteArray());
        }

        public Stream<String> lines() {
            try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(deflated))) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Another text of it beside it, which is whole and need only take its place. */
    public record Next(Path written, Path file) implements AutoCloseable {
        public void swapIn() throws IOException {
            Files.move(written, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }

        @Override
        public void close() throws IOException {
            Files.deleteIfExists(written);
        }
    }

    /** Whether it is the file that was read. */
    public boolean is(Ledger other) {
        return digest.equals(other.digest);
    }

    /** Whether it would be written otherwise though nothing is new: what a merge leaves is in no order. */
    public boolean tidy() {
        return tidy;
    }

    /**
     * With what is new, sorted, each address once; nothing is in its place yet.
     *
     * @param added what follows, by what addresses begin with
     * @throws IOException where it cannot be written
     */
    public Next with(SortedMap<String, Packed> added) throws IOException {
        Path written = file.resolveSibling(
                "." + file.getFileName() + "-" + ProcessHandle.current().pid() + "-" + WRITTEN.incrementAndGet());
        Set<String> all = new TreeSet<>(parts.keySet());
        all.addAll(added.keySet());
        boolean whole = false;
        try (Writer out = Files.newBufferedWriter(written, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
            out.write(HEAD + "\n");
            for (String part : all) {
                SortedSet<String> lines = of(part);
                Packed more = added.get(part);
                if (more != null) {
                    more.lines().forEach(lines::add);
                }
                for (String line : lines) {
                    out.write(part + line + "\n");
                }
            }
            whole = true;
        } finally {
            if (!whole) {
                Files.deleteIfExists(written);
            }
        }
        if (Files.exists(file) && Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(written, Files.getPosixFilePermissions(file));
        }
        try (FileChannel channel = FileChannel.open(written, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        return new Next(written, file);
    }

    /** Whether a file beside it is one that is being written. */
    public static boolean isIts(String path) {
        return path.equals(FILE) || path.startsWith("units/." + FILE.substring("units/".length()) + "-");
    }
}
