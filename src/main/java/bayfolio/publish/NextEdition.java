package bayfolio.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
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
 * An edition that is being written beside the last one, part by part; nobody sees it yet. A file that holds what it held
 * last is not written once more: both editions have the one file. Several threads may write parts of it at once.
 */
final class NextEdition implements AutoCloseable {
    /** Where what was published last lies, by its path below both roots. */
    private final Function<String, Path> last;

    private final Optional<Edition> before;
    private final Edition edition;
    private final long now;
    private final Set<String> folders = ConcurrentHashMap.newKeySet();

    /** Paths of what somebody had taken away. */
    private final Set<String> remade = ConcurrentHashMap.newKeySet();

    /**
     * Names of parts whose files stay, with what was found in the coach: they are laid into it when it is known that something
     * is new. Their lists are read again then, since those of ten thousand coaches are not kept in mind.
     */
    private final Map<String, Part.Found> kept = new ConcurrentHashMap<>();

    /** Whether a part is not what it was. */
    private final AtomicBoolean isNew = new AtomicBoolean();

    private boolean seen;

    NextEdition(Edition edition, Optional<Edition> before, Function<String, Path> last, long now) throws IOException {
        this.edition = edition;
        this.before = before;
        this.last = last;
        this.now = now;
        Files.createDirectories(edition.list(Part.SHARED).getParent());
    }

    Edition edition() {
        return edition;
    }

    /** Readers see it: it stays. */
    void stays() {
        seen = true;
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
        next.write(edition.list(name));
        for (Map.Entry<String, Part.File> file : all.entrySet()) {
            String path = file.getKey();
            byte[] bytes = files.get(path);
            boolean same = bytes == null || file.getValue().equals(was.get(path));
            if (!(same && link(path, file.getValue())) && bytes != null) {
                if (same) {
                    remade.add(path);
                }
                isNew.set(true);
                write(path, bytes, file.getValue());
            }
        }
    }

    /**
     * What all coaches share.
     *
     * @param needed folders of what was published last that pages need which are not made anew, below both roots
     */
    void writeShared(Map<String, byte[]> files, Set<String> needed) throws IOException {
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
        if (!last.found().equals(found)) {
            isNew.set(true);
        }
        kept.put(last.name(), found);
    }

    /** Whether it differs from the last one; once all parts were written or kept. */
    boolean isNew() throws IOException {
        boolean gone = false;
        if (before.isPresent()) {
            for (String name : before.get().parts()) {
                gone |= !kept.containsKey(name) && !edition.has(name);
            }
        }
        return gone || isNew.get();
    }

    /** Lays in what was kept. */
    void complete() throws IOException {
        Workers.each(List.copyOf(kept.keySet()), name -> {
            Part part = last(name).orElseThrow().with(Objects.requireNonNull(kept.get(name)));
            part.write(edition.list(part.name()));
            for (Map.Entry<String, Part.File> file : part.files().entrySet()) {
                link(file.getKey(), file.getValue());
            }
        });
        kept.clear();
    }

    /** Whether nobody took away a file of a part since it was published last. */
    boolean isWhole(Part part) {
        return part.files().keySet().stream()
                .allMatch(path -> Files.exists(last.apply(path), LinkOption.NOFOLLOW_LINKS));
    }

    Optional<Part> last(String name) throws IOException {
        return before.isPresent() ? before.get().part(name) : Optional.empty();
    }

    /** Where a file of it lies, by its path below both roots; nothing where it has none. */
    private Optional<Path> file(String path) {
        Path written = edition.folder().resolve(path);
        if (Files.exists(written, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(written);
        }
        Path stays = last.apply(path);
        return before.isPresent() && kept.containsKey(before.get().owner(path)) && Files.isRegularFile(stays)
                ? Optional.of(stays)
                : Optional.empty();
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
        Set<String> names = new TreeSet<>(edition.parts());
        names.addAll(before.isPresent() ? before.get().parts() : List.of());
        names.removeAll(kept.keySet());
        for (String name : names) {
            Map<String, Part.File> was = last(name).map(Part::files).orElseGet(TreeMap::new);
            Map<String, Part.File> is = edition.part(name).map(Part::files).orElseGet(TreeMap::new);
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

    private void write(String path, byte[] bytes, Part.File file) throws IOException {
        Path to = place(path);
        // Never into a file that the last edition has, too.
        Files.write(to, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Files.setLastModifiedTime(to, FileTime.fromMillis(file.modified()));
    }

    /** Whether it was there: what somebody took away is made anew. */
    private boolean link(String path, Part.File file) throws IOException {
        Path from = last.apply(path);
        if (!Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        Path to = place(path);
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

    private Path place(String path) throws IOException {
        Path to = edition.folder().resolve(path);
        String above = path.substring(0, path.lastIndexOf('/'));
        if (!folders.contains(above)) {
            Files.createDirectories(to.getParent());
            folders.add(above);
        }
        return to;
    }

    /** Unless it was swapped in, nothing of it stays: what was written so far would keep a full disk full. */
    @Override
    public void close() throws IOException {
        if (!seen) {
            edition.delete();
        }
    }
}
