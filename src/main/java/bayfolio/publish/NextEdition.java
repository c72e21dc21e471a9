package bayfolio.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/**
 * An edition that is being written beside the last one, part by part; nobody sees it yet. It is made of the one before the
 * last, where that is still there: then most of its files are in their places already. A file that holds what it held last is
 * not written once more: both editions have the one file. Several threads may write parts of it at once.
 */
final class NextEdition implements AutoCloseable {
    /** Where what was published last lies, by its path below both roots. */
    private final Function<String, Path> last;

    private final Optional<Edition> before;

    /** How many files of each part of the last one are there as they were written. */
    private final Map<String, Integer> unchanged;

    private final Edition edition;
    private final long now;
    /** Paths of what somebody had taken away. */
    private final Set<String> remade = ConcurrentHashMap.newKeySet();

    /** Folders that several parts may have had in common, and that may be empty now. */
    private final Set<String> common = ConcurrentHashMap.newKeySet();

    /** Names of parts whose files were written. */
    private final Set<String> written = ConcurrentHashMap.newKeySet();

    /**
     * Names of parts whose files stay, with what was found in the coach: they are laid into it when it is known that something
     * is new. Their lists are read again then, since those of ten thousand coaches are not kept in mind.
     */
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();

    /** @param found that its list does not say already */
    private record Kept(Optional<Part.Found> found) {}

    /** Whether a part is not what it was. */
    private final AtomicBoolean isNew = new AtomicBoolean();

    /** Whether it is made of the one before the last. */
    private final boolean reused;

    private boolean seen;
    private boolean unneeded;
    private final Spared spared;

    /** Lays an edition aside, for the next one to be made of. */
    interface Spared {
        void lay() throws IOException;
    }

    /**
     * @param edition with what the one before the last had, or empty
     * @param before the last one
     * @param unchanged how many files of each of its parts are there as they were written
     */
    NextEdition(
            Edition edition,
            Optional<Edition> before,
            Map<String, Integer> unchanged,
            Function<String, Path> last,
            long now,
            Spared spared)
            throws IOException {
        this.unchanged = unchanged;
        this.spared = spared;
        this.edition = edition;
        this.before = before;
        this.last = last;
        this.now = now;
        this.reused = !edition.parts().isEmpty();
        Files.createDirectories(edition.list(Part.SHARED).getParent());
    }

    Edition edition() {
        return edition;
    }

    /** Readers see it: it stays. */
    void stays() {
        seen = true;
    }

    /** Nothing is new: it is of use to the next one alone. */
    void unneeded() {
        unneeded = true;
    }

    /** Whether nobody had taken away any file of the last one. */
    boolean foundWhole() {
        return remade.isEmpty();
    }

    /**
     * @param made the digest of what the part was made of
     * @param found in the coach
     * @param files all of the part, by their paths below both roots
     */
    void write(String part, String made, Part.Found found, Map<String, byte[]> files) throws IOException {
        write(part, made, found, files, Map.of());
    }

    /** @param stay files of what was published last that are part of it, too */
    private void write(
            String name, String made, Part.Found found, Map<String, byte[]> files, Map<String, Part.File> stay)
            throws IOException {
        Optional<Part> last = last(name);
        SortedMap<String, Part.File> was = last.map(Part::files).orElseGet(TreeMap::new);
        Part part = Part.of(name, made, found, files, now);
        SortedMap<String, Part.File> all = new TreeMap<>(stay);
        part.files().forEach((path, file) -> {
            Part.File old = was.get(path);
            all.put(path, old != null && old.holds(file) ? old : file);
        });
        Part next = new Part(name, made, found, all);
        if (!last.equals(Optional.of(next))) {
            isNew.set(true);
        }
        written.add(name);
        Folders folders = new Folders();
        Set<String> there = list(next);
        for (Map.Entry<String, Part.File> file : all.entrySet()) {
            String path = file.getKey();
            byte[] bytes = files.get(path);
            boolean same = bytes == null || file.getValue().equals(was.get(path));
            boolean isThere = there.contains(path);
            boolean gone = same && !(isThere ? isInLast(path) : link(path, file.getValue(), folders));
            if (gone) {
                remade.add(path);
            }
            if (bytes != null && (gone || !same)) {
                isNew.set(true);
                if (!isThere) {
                    write(path, bytes, file.getValue(), folders);
                }
            }
        }
    }

    /**
     * Writes the list of a part, when all is away that it does not name.
     *
     * @return paths of files that are in their places already
     */
    private Set<String> list(Part part) throws IOException {
        Optional<Part> spare = edition.part(part.name());
        Set<String> there = new HashSet<>();
        if (spare.isPresent()) {
            Set<String> others = new HashSet<>();
            for (Map.Entry<String, Part.File> file : spare.get().files().entrySet()) {
                String path = file.getKey();
                if (file.getValue().equals(part.files().get(path)) && isInPlace(path, file.getValue())) {
                    there.add(path);
                } else if (!isOfAnother(path, part.name())) {
                    others.add(path);
                }
            }
            Set<String> empty = spare.get().folders();
            empty.removeAll(part.folders());
            common.addAll(edition.take(others, empty));
        }
        part.write(edition.list(part.name()));
        if (reused) {
            for (String path : part.files().keySet()) {
                if (!there.contains(path)) {
                    // It may have been another part's.
                    Files.deleteIfExists(edition.folder().resolve(path));
                }
            }
        }
        return there;
    }

    /** Whether a file is as it was written: what was changed in the last edition was changed here, too, where both have the one file. */
    private boolean isInPlace(String path, Part.File file) throws IOException {
        try {
            return file.is(edition.folder().resolve(path));
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    private boolean areInPlace(Part part) throws IOException {
        for (Map.Entry<String, Part.File> file : part.files().entrySet()) {
            if (!isInPlace(file.getKey(), file.getValue())) {
                return false;
            }
        }
        return true;
    }

    /** Whether another part has written a file in the place of one that this part had. */
    private boolean isOfAnother(String path, String part) throws IOException {
        String owner = Edition.owner(path, written::contains);
        return !owner.equals(part)
                && written.contains(owner)
                && edition.part(owner)
                        .filter(it -> it.files().containsKey(path))
                        .isPresent();
    }

    private boolean stays(String part) {
        return written.contains(part) || kept.containsKey(part);
    }

    /**
     * What all coaches share; after all others were written or kept.
     *
     * @param needed folders of what was published last that pages need which are not made anew, below both roots
     */
    void writeShared(Map<String, byte[]> files, Set<String> needed) throws IOException {
        // Pages of a coach that was sold are among them; before, they were its own.
        List<String> gone = new ArrayList<>(edition.parts());
        gone.removeIf(name -> name.equals(Part.SHARED) || stays(name));
        Workers.each(gone, name -> common.addAll(edition.delete(name)));
        Map<String, Part.File> stay = new TreeMap<>();
        last(Part.SHARED)
                .ifPresent(part -> part.files().forEach((path, file) -> {
                    if (needed.stream().anyMatch(path::startsWith)) {
                        stay.put(path, file);
                    }
                }));
        write(Part.SHARED, "", Part.Found.NOTHING, files, stay);
    }

    /**
     * A part with the files that were published last.
     *
     * @param found in the coach
     */
    void keep(Part last, Part.Found found) {
        boolean same = last.found().equals(found);
        if (!same) {
            isNew.set(true);
        }
        kept.put(last.name(), new Kept(same ? Optional.empty() : Optional.of(found)));
    }

    /** Whether it differs from the last one; once all parts were written or kept. */
    boolean isNew() throws IOException {
        boolean gone = false;
        if (before.isPresent()) {
            for (String name : before.get().parts()) {
                gone |= !kept.containsKey(name) && !written.contains(name);
            }
        }
        return gone || isNew.get();
    }

    /** Lays in what was kept. */
    void complete() throws IOException {
        Workers.each(List.copyOf(kept.keySet()), name -> {
            Kept stays = Objects.requireNonNull(kept.get(name));
            Part last = last(name).orElseThrow();
            Part part = stays.found.map(last::with).orElse(last);
            if (stays.found.isEmpty()
                    && edition.has(name)
                    && Files.mismatch(edition.list(name), before.orElseThrow().list(name)) < 0
                    && areInPlace(part)) {
                return;
            }
            Folders folders = new Folders();
            Set<String> there = list(part);
            for (Map.Entry<String, Part.File> file : part.files().entrySet()) {
                if (!there.contains(file.getKey())) {
                    link(file.getKey(), file.getValue(), folders);
                }
            }
        });
        edition.deleteEmpty(common);
        kept.clear();
    }

    /** Whether nobody took away a file of a part since it was published last. */
    boolean isWhole(Part part) {
        return unchanged.getOrDefault(part.name(), 0) == part.files().size();
    }

    private boolean isInLast(String path) {
        return Files.exists(last.apply(path), LinkOption.NOFOLLOW_LINKS);
    }

    Optional<Part> last(String name) throws IOException {
        return before.isPresent() ? before.get().part(name) : Optional.empty();
    }

    /** Where a file of it lies, by its path below both roots; nothing where it has none. */
    private Optional<Path> file(String path) {
        String owner = Edition.owner(path, this::stays);
        Optional<Path> file = written.contains(owner)
                ? Optional.of(edition.folder().resolve(path))
                : Optional.of(last.apply(path)).filter(it -> kept.containsKey(owner));
        return file.filter(Files::isRegularFile);
    }

    /** What was published last, by its path below both roots; nothing where it is gone. */
    Optional<byte[]> readLast(String path) {
        try {
            if (before.isEmpty()
                    || last(before.get().owner(path))
                            .filter(part -> part.files().containsKey(path))
                            .isEmpty()) {
                return Optional.empty();
            }
            Path file = last.apply(path);
            return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What was written or kept already, by its path below both roots. */
    Optional<byte[]> read(String path) {
        try {
            Optional<Path> file = file(path);
            return file.isPresent() ? Optional.of(Files.readAllBytes(file.get())) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Paths of what is other than it was last, is new or is gone, below both roots. */
    Set<String> changed() throws IOException {
        Set<String> all = new TreeSet<>(remade);
        Set<String> names = new TreeSet<>(written);
        names.addAll(before.isPresent() ? before.get().parts() : List.of());
        names.removeAll(kept.keySet());
        for (String name : names) {
            Map<String, Part.File> was = last(name).map(Part::files).orElseGet(TreeMap::new);
            Map<String, Part.File> is =
                    written.contains(name) ? edition.part(name).orElseThrow().files() : Map.of();
            is.forEach((path, file) -> {
                Part.File old = was.get(path);
                if (old == null || !old.holds(file)) {
                    all.add(path);
                }
            });
            was.keySet().stream().filter(path -> !is.containsKey(path)).forEach(all::add);
        }
        return all;
    }

    private void write(String path, byte[] bytes, Part.File file, Folders folders) throws IOException {
        Path to = folders.place(path);
        // Never into a file that the last edition has, too.
        Files.write(to, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Files.setLastModifiedTime(to, FileTime.fromMillis(file.modified()));
    }

    /** Whether it was there: what somebody took away is made anew. */
    private boolean link(String path, Part.File file, Folders folders) throws IOException {
        if (!isInLast(path)) {
            return false;
        }
        Path from = last.apply(path);
        Path to = folders.place(path);
        try {
            Files.createLink(to, from);
        } catch (FileAlreadyExistsException twice) {
            throw twice;
        } catch (IOException | UnsupportedOperationException noLinks) {
            Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
            Files.setLastModifiedTime(to, FileTime.fromMillis(file.modified()));
        }
        return true;
    }

    /** Those that are there for a part; it has a hundred, and a large fleet a million. */
    private final class Folders {
        private final Set<String> made = new HashSet<>();

        Path place(String path) throws IOException {
            Path to = edition.folder().resolve(path);
            if (made.add(path.substring(0, path.lastIndexOf('/')))) {
                Files.createDirectories(to.getParent());
            }
            return to;
        }
    }

    /** Unless it is of use, nothing of it stays: what was written so far would keep a full disk full. */
    @Override
    public void close() throws IOException {
        if (unneeded) {
            edition.deleteEmpty(common);
            spared.lay();
        } else if (!seen) {
            edition.delete();
        }
    }
}
