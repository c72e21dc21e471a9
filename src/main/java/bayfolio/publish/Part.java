package bayfolio.publish;

import bayfolio.source.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * What of an edition belongs together: the files of one coach in both roots, or what all coaches share.
 *
 * @param name the id of the coach, or {@link #SHARED}
 * @param made the digest of what it was made of; empty where it is always made anew
 * @param found what was found in the coach
 * @param files by their paths below both roots: {@code web/whimbrel/index.html}
 */
record Part(String name, String made, Found found, SortedMap<String, File> files) {
    /** No id of a coach. */
    static final String SHARED = "_shared";

    private static final String FOUND = "found ";
    private static final String FOR_STAFF = "for staff ";

    private static final int CHECKSUM = 64;

    /**
     * @param of the digest of what was looked at
     * @param lines a finding each
     * @param forStaff what is written for staff alone, to be looked for in the files of others
     */
    record Found(String of, List<String> lines, List<String> forStaff) {
        static final Found NOTHING = new Found("", List.of(), List.of());

        Found {
            lines = List.copyOf(lines);
            forStaff = List.copyOf(forStaff);
        }

        /** The same, with the texts for staff as somebody has them already. */
        Found with(UnaryOperator<String> same) {
            return new Found(of, lines, forStaff.stream().map(same).toList());
        }
    }

    /**
     * @param size in bytes
     * @param modified the time of its last change, in milliseconds: who finds it unchanged need not read the file
     */
    record File(String checksum, long size, long modified) {
        /** A line of a list, without the path at its end; nothing where it is none. */
        static Optional<File> read(String line, int size, int modified, int path) {
            try {
                return Optional.of(new File(
                        line.substring(0, size),
                        Long.parseLong(line, size + 1, modified, 10),
                        Long.parseLong(line, modified + 1, path, 10)));
            } catch (NumberFormatException spoilt) {
                return Optional.empty();
            }
        }

        static File of(byte[] bytes, long modified) {
            return new File(sha256(bytes), bytes.length, modified);
        }

        boolean holds(File other) {
            return size == other.size && checksum.equals(other.checksum);
        }

        /** Whether a file is still the one that was written. */
        boolean is(Path file) throws IOException {
            return is(file, Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS));
        }

        /** @param now what the system says of it, a link not followed */
        boolean is(Path file, BasicFileAttributes now) throws IOException {
            return now.isRegularFile()
                    && now.size() == size
                    && (now.lastModifiedTime().toMillis() == modified
                            || sha256(Files.readAllBytes(file)).equals(checksum));
        }
    }

    Part {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }

    static Part of(String name, String made, Found found, Map<String, byte[]> files, long modified) {
        SortedMap<String, File> all = new TreeMap<>();
        files.forEach((path, bytes) -> all.put(path, File.of(bytes, modified)));
        return new Part(name, made, found, all);
    }

    /** The same of a coach that was looked at again. */
    Part with(Found other) {
        return new Part(name, made, other, files);
    }

    /** In one step, so that it says all or nothing. */
    void write(Path file) throws IOException {
        StringBuilder lines = new StringBuilder("made ").append(made).append('\n');
        lines.append("looked at ").append(found.of).append('\n');
        found.lines.forEach(line -> lines.append(FOUND).append(line).append('\n'));
        found.forStaff.forEach(text -> lines.append(FOR_STAFF).append(text).append('\n'));
        files.forEach((path, it) -> lines.append(it.checksum)
                .append(' ')
                .append(it.size)
                .append(' ')
                .append(it.modified)
                .append(' ')
                .append(path)
                .append('\n'));
        Path next = file.resolveSibling(file.getFileName() + ".next");
        Files.writeString(next, lines, StandardCharsets.UTF_8);
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What a file says of it; a line that says nothing is as if it were not there. */
    static Part read(String name, Path file) throws IOException {
        String made = "";
        String looked = "";
        List<String> found = new ArrayList<>();
        List<String> forStaff = new ArrayList<>();
        SortedMap<String, File> files = new TreeMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (line.startsWith("made ")) {
                made = line.substring(5);
            } else if (line.startsWith("looked at ")) {
                looked = line.substring(10);
            } else if (line.startsWith(FOUND)) {
                found.add(line.substring(FOUND.length()));
            } else if (line.startsWith(FOR_STAFF)) {
                forStaff.add(line.substring(FOR_STAFF.length()));
            } else {
                // A large fleet has millions of these, which are read several times.
                int size = line.indexOf(' ');
                int modified = line.indexOf(' ', size + 1);
                int path = line.indexOf(' ', modified + 1);
                if (size == CHECKSUM && modified > 0 && path > 0 && path + 1 < line.length()) {
                    File.read(line, size, modified, path).ifPresent(it -> files.put(line.substring(path + 1), it));
                }
            }
        }
        return new Part(name, made, new Found(looked, found, forStaff), files);
    }

    /** The folders that its paths lead through. */
    Set<String> folders() {
        Set<String> folders = new HashSet<>();
        for (String path : files.keySet()) {
            for (int end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1)) {
                if (!folders.add(path.substring(0, end))) {
                    break;
                }
            }
        }
        return folders;
    }

    private static String sha256(byte[] bytes) {
        MessageDigest digest = Digest.sha256();
        digest.update(bytes);
        return Digest.whole(digest);
    }
}
