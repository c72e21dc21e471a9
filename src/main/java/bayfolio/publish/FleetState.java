package bayfolio.publish;

import bayfolio.source.Digest;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How the files of a fleet were when they were begun to be read, by their sizes and times, so that nothing is published of
 * which one half is older than the other.
 *
 * @param root the fleet folder
 * @param folders digests of what is in each folder with files, by their paths
 */
public record FleetState(Path root, Map<String, String> folders) {
    private static final List<String> READ = List.of("units", "themes");

    /** To be taken before anything is read. */
    public static FleetState of(Path root) throws IOException {
        Map<String, StringBuilder> files = new TreeMap<>();
        for (String read : READ) {
            Path folder = root.resolve(read);
            if (Files.isDirectory(folder)) {
                Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes now) {
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
