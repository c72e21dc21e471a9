package bayfolio.publish;

import bayfolio.read.Ledger;
import bayfolio.source.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * How the files of a fleet were when they were begun to be read, by their sizes and times, so that nothing is published of
 * which one half is older than the other.
 */
public final class FleetState {
    private static final List<String> READ = List.of("units", "themes");

    private final Path root;

    /** Digests of what is in each folder with files, by their paths: names, sizes and times. */
    private final Map<String, String> folders;

    /** Digests of what files say, by the folders or files that were asked for. */
    private final Map<String, byte[]> contents = new ConcurrentHashMap<>();

    private FleetState(Path root, Map<String, String> folders) {
        this.root = root;
        this.folders = Map.copyOf(folders);
    }

    Path root() {
        return root;
    }

    /** A digest of a file, or of all files in a folder with their paths; their bytes are read once. */
    byte[] contents(String within) throws IOException {
        byte[] known = contents.get(within);
        if (known == null) {
            known = read(within);
            contents.put(within, known);
        }
        return known;
    }

    private byte[] read(String within) throws IOException {
        MessageDigest digest = Digest.sha256();
        Path folder = root.resolve(within);
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            List<Path> files;
            try (Stream<Path> all = Files.walk(folder)) {
                files = all.filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                        .sorted()
                        .toList();
            }
            for (Path file : files) {
                byte[] bytes = Files.readAllBytes(file);
                String head = folder.relativize(file).toString().replace('\\', '/') + '\0' + bytes.length + '\0';
                digest.update(head.getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            }
        }
        return digest.digest();
    }

    /** To be taken before anything is read. */
    public static FleetState of(Path root) throws IOException {
        Map<String, StringBuilder> files = new TreeMap<>();
        for (String read : READ) {
            Path folder = root.resolve(read);
            if (Files.isDirectory(folder)) {
                Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes now) {
                        // It is written when all is published, and nothing is made of it alone.
                        if (Ledger.isIts(root.relativize(file).toString().replace('\\', '/'))) {
                            return FileVisitResult.CONTINUE;
                        }
                        files.computeIfAbsent(
                                        root.relativize(Objects.requireNonNull(file.getParent()))
                                                .toString()
                                                .replace('\\', '/'),
                                        it -> new StringBuilder())
                                .append(file.getFileName())
                                .append(' ')
                                .append(now.size())
                                .append(' ')
                                .append(now.lastModifiedTime())
                                .append('\n');
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException gone) {
                        return FileVisitResult.CONTINUE;
                    }
                });
            }
        }
        Map<String, String> folders = new TreeMap<>();
        files.forEach((folder, names) -> folders.put(
                folder,
                Digest.of(String.join("\n", names.toString().lines().sorted().toList()))));
        return new FleetState(root, folders);
    }

    /** @throws PublishException when a file is otherwise than it was */
    void refuseChanges() throws IOException, PublishException {
        Map<String, String> now = of(root).folders;
        Set<String> all = new TreeSet<>(folders.keySet());
        all.addAll(now.keySet());
        for (String folder : all) {
            if (!Objects.equals(now.get(folder), folders.get(folder))) {
                throw new PublishException("Something in `" + folder
                        + "` was changed while it was published; nothing was published. Run it again.");
            }
        }
    }
}
