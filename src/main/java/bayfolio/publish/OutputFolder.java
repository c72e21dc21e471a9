package bayfolio.publish;

import bayfolio.document.Audience;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The folder that is published into, with its two roots: {@code web}, which is public, and {@code staff}.
 *
 * <pre>
 * web               a link to .editions/current/web
 * staff             a link to .editions/current/staff
 * .editions/current a link to the edition that readers see
 * .editions/7       an {@link Edition}: web, staff and the lists of their files
 * .editions/spare   the edition before, which the next one is made of: most of its files are right already
 * .editions/lock    held while somebody publishes
 * </pre>
 *
 * <p>A new edition is written beside the last one, then {@code current} is replaced by one rename: whoever reads, and
 * whenever a run is killed, both roots are those of one edition, and there is always one.
 *
 * <p>Where a system has no links, or cannot replace one in a single step, {@code current} is a file that names the
 * edition, and the roots themselves are moved out of it; what a run that was killed has left undone the next one does.
 *
 * <p>Files that were not written here are never touched.
 */
final class OutputFolder implements AutoCloseable {
    static final List<String> ROOTS = List.of("web", "staff");

    /** The root of what a reader gets, with a slash at the end. */
    static String root(Audience reader) {
        return reader == Audience.STAFF ? "staff/" : "web/";
    }

    /** How long another publisher may take to end. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** What is asked of the file system where it matters in which order; tests stop it between two steps. */
    interface Disk {
        Disk REAL = new Disk() {};

        /** In one step, in place of what is there. */
        default void move(Path from, Path to) throws IOException {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }

        /** Whether a link to a folder can be made there, and replaced by another in one step. */
        default boolean links(Path folder) throws IOException {
            Path one = folder.resolve("link");
            Path other = folder.resolve("link-next");
            try {
                Files.deleteIfExists(one);
                Files.createSymbolicLink(one, Path.of("."));
                Files.createSymbolicLink(other, Path.of("."));
                move(other, one);
                return true;
            } catch (IOException | UnsupportedOperationException none) {
                return false;
            } finally {
                Files.deleteIfExists(one);
                Files.deleteIfExists(other);
            }
        }
    }

    private static final String SPARE = "spare";

    private final Path folder;
    private final Path editions;
    private final Path current;
    private final PublishLock lock;
    private final Disk disk;

    /** How many files of each part were there as they were written, when it was verified last. */
    private Map<String, Integer> unchanged = Map.of();

    private OutputFolder(Path folder, Path editions, PublishLock lock, Disk disk) {
        this.folder = folder;
        this.editions = editions;
        this.current = editions.resolve("current");
        this.lock = lock;
        this.disk = disk;
    }

    /**
     * Locked until it is closed.
     *
     * @throws PublishException when another publisher does not end, or when something there was not made here
     */
    static OutputFolder open(Path folder) throws IOException, PublishException {
        return open(folder, PATIENCE, Disk.REAL);
    }

    @SuppressWarnings("MustBeClosedChecker") // closed with the folder
    static OutputFolder open(Path folder, Duration patience, Disk disk) throws IOException, PublishException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw noFolder(folder);
        }
        Path editions = folder.resolve(".editions");
        if (there(editions) && !Files.isDirectory(editions, LinkOption.NOFOLLOW_LINKS)) {
            throw noFolder(editions);
        }
        Files.createDirectories(editions);
        PublishLock lock = PublishLock.take(folder, editions, patience);
        OutputFolder output = new OutputFolder(folder, editions, lock, disk);
        boolean sound = false;
        try {
            output.finish();
            output.clean();
            sound = true;
        } finally {
            if (!sound) {
                lock.close();
            }
        }
        return output;
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }

    /**
     * Refuses what is foreign below both roots.
     *
     * @throws PublishException when a file is there that was not written here, or was changed since
     */
    void verify() throws IOException, PublishException {
        Optional<Edition> named = current();
        Map<String, Integer> files = new ConcurrentHashMap<>();
        for (String root : ROOTS) {
            Path there = folder.resolve(root);
            if (!there(there)) {
                continue;
            }
            boolean linked = isLink(root);
            if (!linked && !Files.isDirectory(there, LinkOption.NOFOLLOW_LINKS)) {
                throw noFolder(there);
            }
            Path inside = inside(root, named);
            if (!Files.isDirectory(inside)) {
                continue;
            }
            // A folder in the place of the link, while the edition has its own.
            if (!linked && named.filter(it -> there(it.folder().resolve(root))).isPresent()) {
                throw foreign(there);
            }
            List<Path> entries;
            try (Stream<Path> all = Files.list(inside)) {
                entries = all.toList();
            }
            if (entries.isEmpty() && !new Known(named).holdsFolder(root)) {
                throw foreign(there);
            }
            Queue<Path> others = new ConcurrentLinkedQueue<>();
            Workers.each(entries, entry -> look(entry, root, new Known(named), files, others));
            Optional<Path> foreign = others.stream().min(Comparator.naturalOrder());
            if (foreign.isPresent()) {
                throw foreign(there.resolve(inside.relativize(foreign.get())));
            }
        }
        unchanged = Map.copyOf(files);
    }

    /**
     * Goes through an entry that lies in a root, asking the system once about each file: a large fleet has millions.
     *
     * @param files counts those of each part
     * @param others gets the first that was not written here
     */
    private static void look(Path entry, String root, Known known, Map<String, Integer> files, Queue<Path> others)
            throws IOException {
        Deque<String> folders = new ArrayDeque<>();
        folders.push(root);
        Files.walkFileTree(entry, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes now) throws IOException {
                String name = folders.element() + "/" + folder.getFileName();
                folders.push(name);
                return seen(known.holdsFolder(name) || !Edition.isEmpty(folder), folder);
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException failed) throws IOException {
                folders.pop();
                return super.postVisitDirectory(folder, failed);
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes now) throws IOException {
                return seen(known.holdsFile(folders.element() + "/" + file.getFileName(), file, now), file);
            }

            private FileVisitResult seen(boolean ours, Path path) {
                if (!ours) {
                    others.add(path);
                }
                return ours ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
            }
        });
        known.files.forEach((part, some) -> files.merge(part, some, Integer::sum));
    }

    /** What the lists of an edition say, of which one part at a time is kept in mind. */
    private static final class Known {
        private final Optional<Edition> edition;
        private Part part = new Part("", "", Part.Found.NOTHING, new TreeMap<>());
        private Set<String> folders = Set.of();

        /** How many of each part were found to be there, as they were written. */
        private final Map<String, Integer> files = new HashMap<>();

        /** What paths begin with that surely belong to the part. */
        private String place = "";

        Known(Optional<Edition> edition) {
            this.edition = edition;
        }

        boolean holdsFile(String name, Path path, BasicFileAttributes now) throws IOException {
            look(name);
            Part.File file = part.files().get(name);
            boolean holds = file != null && file.is(path, now);
            if (holds) {
                files.merge(part.name(), 1, Integer::sum);
            }
            return holds;
        }

        boolean holdsFolder(String name) throws IOException {
            look(name);
            return folders.contains(name);
        }

        private void look(String name) throws IOException {
            if (!place.isEmpty() && name.startsWith(place)) {
                return;
            }
            String owner = edition.map(it -> it.owner(name)).orElse(Part.SHARED);
            if (!part.name().equals(owner)) {
                part = edition.isPresent()
                        ? edition.get()
                                .part(owner)
                                .orElseGet(() -> new Part(owner, "", Part.Found.NOTHING, new TreeMap<>()))
                        : new Part(owner, "", Part.Found.NOTHING, new TreeMap<>());
                folders = part.folders();
            }
            place = Edition.ownedWith(owner, name);
        }
    }

    /** Where the files of a root lie that readers see. */
    private Path inside(String root, Optional<Edition> named) throws IOException {
        Path there = folder.resolve(root);
        return isLink(root) ? named.map(it -> it.folder().resolve(root)).orElse(there) : there;
    }

    /** An edition to be written; {@link #swapIn} makes readers see it. */
    NextEdition next() throws IOException, PublishException {
        Edition next = new Edition(editions.resolve(Integer.toString(1 + highest())));
        Edition spare = new Edition(editions.resolve(SPARE));
        if (there(spare.folder())) {
            disk.move(spare.folder(), next.folder());
        }
        return new NextEdition(
                next,
                current(),
                unchanged,
                folder::resolve,
                System.currentTimeMillis(),
                () -> disk.move(next.folder(), spare.folder()));
    }

    /**
     * Makes readers see an edition that is wholly written.
     *
     * @throws PublishException as {@link #verify}
     */
    void swapIn(NextEdition written) throws IOException, PublishException {
        // Once more, since nobody knows what was put there meanwhile.
        verify();
        boolean links = Files.isSymbolicLink(current) || disk.links(editions);
        takeOver(links);
        Optional<Edition> before = current();
        name(written.edition(), links);
        written.stays();
        finish();
        // Where somebody took away files of it, its lists say more than there is.
        if (links && before.isPresent() && written.foundWhole()) {
            disk.move(before.get().folder(), editions.resolve(SPARE));
        }
        clean();
    }

    /** Brings what is there into the form that one step can replace. */
    private void takeOver(boolean links) throws IOException, PublishException {
        if (!links) {
            return;
        }
        Optional<Edition> before = current();
        if (before.isPresent() && !Files.isSymbolicLink(current)) {
            name(before.get(), true);
        }
        for (String root : ROOTS) {
            Path there = folder.resolve(root);
            if (before.isPresent() && Files.isDirectory(there, LinkOption.NOFOLLOW_LINKS)) {
                disk.move(there, before.get().folder().resolve(root));
            }
            if (!there(there)) {
                link(root);
            }
        }
    }

    /** What a run that was killed had still to do, or what is left to do once an edition is named. */
    private void finish() throws IOException, PublishException {
        Optional<Edition> named = current();
        if (named.isEmpty()) {
            return;
        }
        for (String root : ROOTS) {
            Path inside = named.get().folder().resolve(root);
            Path there = folder.resolve(root);
            if (!there(inside)) {
                continue;
            }
            if (Files.isSymbolicLink(current)) {
                if (!there(there)) {
                    link(root);
                }
                continue;
            }
            if (there(there)) {
                disk.move(
                        there,
                        before().orElseThrow(() -> foreign(there)).folder().resolve(root));
            }
            disk.move(inside, there);
        }
    }

    /** Makes an edition the one that readers see. As a file it names the one before, too, which takes its roots back. */
    private void name(Edition edition, boolean link) throws IOException, PublishException {
        Path made = editions.resolve("current-next");
        Files.deleteIfExists(made);
        if (link) {
            Files.createSymbolicLink(made, edition.folder().getFileName());
        } else {
            String before = current().map(it -> " " + number(it)).orElse("");
            Files.writeString(made, number(edition) + before + "\n");
        }
        disk.move(made, current);
    }

    private void link(String root) throws IOException {
        Path made = editions.resolve("link");
        Files.deleteIfExists(made);
        Files.createSymbolicLink(made, target(root));
        disk.move(made, folder.resolve(root));
    }

    private static Path target(String root) {
        return Path.of(".editions", "current", root);
    }

    private boolean isLink(String root) throws IOException {
        Path there = folder.resolve(root);
        return Files.isSymbolicLink(there) && Files.readSymbolicLink(there).equals(target(root));
    }

    /** Takes away all editions but the one that readers see. */
    private void clean() throws IOException, PublishException {
        Optional<Edition> named = current();
        for (Edition edition : editions()) {
            if (!named.equals(Optional.of(edition))) {
                edition.delete();
            }
        }
        Edition spare = new Edition(editions.resolve(SPARE));
        if (there(spare.folder()) && !Files.isSymbolicLink(current)) {
            spare.delete();
        }
        for (String left : List.of("current-next", "link", "link-next")) {
            Files.deleteIfExists(editions.resolve(left));
        }
    }

    /** What readers see at a moment; who does not hold the folder must expect that it goes. */
    static Optional<Edition> seen(Path folder) throws IOException {
        try {
            return named(folder.resolve(".editions")).stream().findFirst();
        } catch (PublishException foreign) {
            return Optional.empty();
        }
    }

    /** The edition that readers see. */
    private Optional<Edition> current() throws IOException, PublishException {
        return named().stream().findFirst();
    }

    /** The one before, as long as its roots may still have to be put back. */
    private Optional<Edition> before() throws IOException, PublishException {
        return named().stream().skip(1).findFirst();
    }

    private List<Edition> named() throws IOException, PublishException {
        return named(editions);
    }

    private static List<Edition> named(Path editions) throws IOException, PublishException {
        Path current = editions.resolve("current");
        if (!there(current)) {
            return List.of();
        }
        boolean link = Files.isSymbolicLink(current);
        if (!link && !Files.isRegularFile(current)) {
            throw foreign(current);
        }
        String names = link
                ? Files.readSymbolicLink(current).toString()
                : Files.readString(current, StandardCharsets.UTF_8).strip();
        if (!Stream.of(names.split(" ", -1)).allMatch(OutputFolder::isNumber)) {
            throw foreign(current);
        }
        return Stream.of(names.split(" ", -1))
                .map(name -> new Edition(editions.resolve(name)))
                .toList();
    }

    private List<Edition> editions() throws IOException {
        List<Edition> all = new ArrayList<>();
        try (Stream<Path> entries = Files.list(editions)) {
            entries.filter(entry -> isNumber(entry.getFileName().toString()))
                    .filter(entry -> Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS))
                    .forEach(entry -> all.add(new Edition(entry)));
        }
        return all;
    }

    private int highest() throws IOException {
        return editions().stream().mapToInt(OutputFolder::number).max().orElse(0);
    }

    private static int number(Edition edition) {
        return Integer.parseInt(edition.folder().getFileName().toString());
    }

    private static boolean isNumber(String name) {
        return name.matches("[1-9][0-9]{0,8}");
    }

    private static boolean there(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    private static PublishException foreign(Path path) {
        return new PublishException("`"
                + path
                + "` was not written by this program, or was changed since; "
                + "move it away, or choose another folder with --out.");
    }

    private static PublishException noFolder(Path path) {
        return new PublishException("`" + path + "` is no folder; move it away or choose another with --out.");
    }
}
