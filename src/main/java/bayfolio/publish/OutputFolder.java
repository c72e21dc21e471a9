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
 * A folder that is published into, {@code web} within it being the public root. A list of what was
 * written, with checksums, tells its own files from foreign ones, which are never touched.
 */
final class OutputFolder {
    private static final String WEB = "web";
    private static final String NEXT = ".web-next";
    private static final String LAST = ".web-last";
    private static final String WRITTEN = "written.txt";

    private final Path folder;

    OutputFolder(Path folder) {
        this.folder = folder;
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
        Path web = folder.resolve(WEB);
        if (!there(web)) {
            return files;
        }
        // A link to a folder would be swapped away, and what it leads to would stay as it was.
        if (!Files.isDirectory(web, LinkOption.NOFOLLOW_LINKS)) {
            throw noFolder(web);
        }
        try (Stream<Path> paths = Files.walk(web)) {
            for (Path path : paths.filter(OutputFolder::isNoFolder).toList()) {
                String name = web.relativize(path).toString().replace('\\', '/');
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
        Path next = folder.resolve(NEXT);
        Path web = folder.resolve(WEB);
        Path last = folder.resolve(LAST);
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
        Path list = folder.resolve(WRITTEN);
        Path listNext = folder.resolve(WRITTEN + "-next");
        Files.writeString(listNext, written.toString(), StandardCharsets.UTF_8);
        delete(last);
        if (Files.exists(web)) {
            Files.move(web, last, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.move(next, web, StandardCopyOption.ATOMIC_MOVE);
        Files.move(listNext, list, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        delete(last);
    }

    /**
     * A swap that was cut short: without a site, the last one goes back where it was; with the next
     * one no longer beside, that one is the site, and its list becomes the list.
     */
    private void recover() throws IOException {
        Path last = folder.resolve(LAST);
        Path web = folder.resolve(WEB);
        Path listNext = folder.resolve(WRITTEN + "-next");
        if (there(last) && !there(web)) {
            Files.move(last, web, StandardCopyOption.ATOMIC_MOVE);
        } else if (there(web) && there(listNext) && !there(folder.resolve(NEXT))) {
            Files.move(
                    listNext,
                    folder.resolve(WRITTEN),
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        }
        Files.deleteIfExists(listNext);
        delete(last);
    }

    private Map<String, String> written() throws IOException {
        Map<String, String> written = new TreeMap<>();
        Path list = folder.resolve(WRITTEN);
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
