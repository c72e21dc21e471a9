package bayfolio.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A root within the folder that is published into: {@code web}, which is public, or {@code staff}. A list of what was
 * written, with checksums, tells its own files from foreign ones, which are never touched.
 */
final class OutputFolder {
    private final Path folder;
    private final Path root;
    private final Path next;
    private final Path last;
    private final Path list;
    private final Path listNext;

    OutputFolder(Path folder, String name) {
        this.folder = folder;
        this.root = folder.resolve(name);
        this.next = folder.resolve("." + name + "-next");
        this.last = folder.resolve("." + name + "-last");
        this.list = folder.resolve(name + "-written.txt");
        this.listNext = folder.resolve(name + "-written.txt-next");
    }

    /**
     * The files published last, by path below the public root.
     *
     * @throws PublishException when a file is there that was not written here, or was changed since
     */
    Map<String, byte[]> published() throws IOException, PublishException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw noFolder(folder);
        }
        recover();
        Map<String, String> written = written();
        Map<String, byte[]> files = new TreeMap<>();
        if (!there(root)) {
            return files;
        }
        // A link to a folder would be swapped away, and what it leads to would stay as it was.
        if (!Files.isDirectory(root, LinkOption.NOFOLLOW_LINKS)) {
            throw noFolder(root);
        }
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.filter(OutputFolder::isNoFolder).toList()) {
                String name = root.relativize(path).toString().replace('\\', '/');
                if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                    throw foreign(path);
                }
                byte[] bytes = Files.readAllBytes(path);
                if (!checksum(bytes).equals(written.get(name))) {
                    throw foreign(path);
                }
                files.put(name, bytes);
            }
        }
        return files;
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

    private static boolean there(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    private static boolean isNoFolder(Path path) {
        return !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Writes a whole site beside the last one, then swaps it in. */
    void swapIn(Map<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        delete(next);
        StringBuilder written = new StringBuilder();
        for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
            Path path = next.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
            written.append(checksum(file.getValue()))
                    .append("  ")
                    .append(file.getKey())
                    .append('\n');
        }
        // The list goes first: should the machine stop here, the next run finds both sites' files
        // known or recovers.
        Files.writeString(listNext, written.toString(), StandardCharsets.UTF_8);
        delete(last);
        if (Files.exists(root)) {
            Files.move(root, last, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.move(next, root, StandardCopyOption.ATOMIC_MOVE);
        Files.move(listNext, list, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        delete(last);
    }

    /**
     * A swap that was cut short: without a site, the last one goes back where it was; with the next
     * one no longer beside, that one is the site, and its list becomes the list.
     */
    private void recover() throws IOException {
        if (there(last) && !there(root)) {
            Files.move(last, root, StandardCopyOption.ATOMIC_MOVE);
        } else if (there(root) && there(listNext) && !there(next)) {
            Files.move(listNext, list, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }
        Files.deleteIfExists(listNext);
        delete(last);
    }

    private Map<String, String> written() throws IOException {
        Map<String, String> written = new TreeMap<>();
        if (Files.exists(list)) {
            for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
                int gap = line.indexOf("  ");
                if (gap > 0) {
                    written.put(line.substring(gap + 2), line.substring(0, gap));
                }
            }
        }
        return written;
    }

    private static String checksum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path each, java.io.IOException failure) throws IOException {
                    Files.delete(each);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }
}
