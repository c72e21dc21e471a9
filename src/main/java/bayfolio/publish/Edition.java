package bayfolio.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The whole site as it was published once: its roots, and a list of all files in them with their checksums, in a folder
 * of its own. The list is written before the files: what a run that died has left is known by it, and what it does not
 * name is foreign and stays.
 */
record Edition(Path folder) {
    private static final String LIST = "written.txt";

    /** @param files by their paths below the folder */
    void write(Map<String, byte[]> files) throws IOException {
        Map<String, String> checksums = new TreeMap<>();
        files.forEach((path, bytes) -> checksums.put(path, checksum(bytes)));
        writeList(checksums);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    /** The list alone, of files that are there already or will be. */
    void writeList(Map<String, String> checksums) throws IOException {
        StringBuilder lines = new StringBuilder();
        checksums.forEach((path, checksum) ->
                lines.append(checksum).append("  ").append(path).append('\n'));
        Files.createDirectory(folder);
        Files.writeString(folder.resolve(LIST), lines, StandardCharsets.UTF_8);
    }

    /** Checksums by paths. */
    Map<String, String> list() throws IOException {
        return list(folder.resolve(LIST));
    }

    /** What a list says; nothing where there is none. */
    static Map<String, String> list(Path file) throws IOException {
        Map<String, String> checksums = new TreeMap<>();
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                int gap = line.indexOf("  ");
                if (gap > 0) {
                    checksums.put(line.substring(gap + 2), line.substring(0, gap));
                }
            }
        }
        return checksums;
    }

    static String checksum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The folders that paths lead through, those above them included. */
    static Set<String> folders(Set<String> paths) {
        Set<String> folders = new HashSet<>();
        for (String path : paths) {
            for (int end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1)) {
                folders.add(path.substring(0, end));
            }
        }
        return folders;
    }

    /** Takes away what was written here; what was not stays, with the folders that hold it. */
    void delete() throws IOException {
        Set<String> files = list().keySet();
        Set<String> folders = folders(files);
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (files.contains(path(file)) && attributes.isRegularFile()) {
                    Files.delete(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException failure) throws IOException {
                if (folders.contains(path(each)) && isEmpty(each)) {
                    Files.delete(each);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        // Last, since without it nobody would know what the rest is.
        Path list = folder.resolve(LIST);
        if (holdsNothingBut(list)) {
            Files.deleteIfExists(list);
            Files.delete(folder);
        }
    }

    private String path(Path below) {
        return folder.relativize(below).toString().replace('\\', '/');
    }

    static boolean isEmpty(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        }
    }

    private boolean holdsNothingBut(Path list) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.allMatch(list::equals);
        }
    }
}
