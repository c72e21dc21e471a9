package bayfolio.publish;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/**
 * The whole site as it was published once: its roots, and a list of the files of each {@link Part}, in a folder of its
 * own. A list is written before its files: what a run that died has left is known by it, and what none names is foreign
 * and stays.
 *
 * <pre>
 * web, staff          the roots
 * parts/whimbrel.txt  the files of a coach in both
 * parts/_shared.txt   the others
 * </pre>
 */
record Edition(Path folder) {
    private static final String PARTS = "parts";
    private static final String LIST = ".txt";

    /** Where the list of a part is, or will be. */
    Path list(String part) {
        return folder.resolve(PARTS).resolve(part + LIST);
    }

    boolean has(String part) {
        return Files.isRegularFile(list(part), LinkOption.NOFOLLOW_LINKS);
    }

    /** Nothing where there is no such part. */
    Optional<Part> part(String name) throws IOException {
        return has(name) ? Optional.of(Part.read(name, list(name))) : Optional.empty();
    }

    /** The names of its parts, in alphabetical order. */
    List<String> parts() throws IOException {
        List<String> names = new ArrayList<>();
        for (Path file : entries(folder.resolve(PARTS))) {
            String name = file.getFileName().toString();
            if (name.endsWith(LIST)) {
                names.add(name.substring(0, name.length() - LIST.length()));
            }
        }
        Collections.sort(names);
        return names;
    }

    /**
     * The part that a path belongs to: a coach has a folder in each root, and one for short addresses in its capital
     * letters.
     */
    String owner(String path) {
        return owner(path, this::has);
    }

    /** @param has whether there is a part of a name */
    static String owner(String path, Predicate<String> has) {
        String[] names = path.split("/", 4);
        if (names.length > 1 && has.test(names[1])) {
            return names[1];
        }
        return names.length > 2 && has.test(names[2].toLowerCase(Locale.ROOT))
                ? names[2].toLowerCase(Locale.ROOT)
                : Part.SHARED;
    }

    /** What paths begin with that belong to an owner as surely as a path of it does; empty where only that one does. */
    static String ownedWith(String owner, String path) {
        int coach = path.indexOf('/') + 1;
        int within = path.indexOf('/', coach) + 1;
        if (path.startsWith(owner + "/", coach)) {
            return path.substring(0, within);
        }
        return within == 0 ? "" : path.substring(0, path.indexOf('/', within) + 1);
    }

    /** Takes away what was written here; what was not stays, with the folders that hold it. */
    void delete() throws IOException {
        Set<String> common = ConcurrentHashMap.newKeySet();
        Workers.each(parts(), name -> common.addAll(delete(name)));
        deleteEmpty(common);
        for (Path left : entries(folder.resolve(PARTS))) {
            if (left.getFileName().toString().endsWith(LIST + ".next")) {
                Files.delete(left);
            }
        }
        deleteIfEmpty(folder.resolve(PARTS));
        deleteIfEmpty(folder);
    }

    /**
     * Takes away the files of a part.
     *
     * @return its folders that it may have in common with others
     */
    Set<String> delete(String name) throws IOException {
        Part part = Part.read(name, list(name));
        Set<String> common = take(part.files().keySet(), part.folders());
        // Last, since without it nobody would know what the rest is.
        Files.deleteIfExists(list(name));
        return common;
    }

    /**
     * Takes away files of a part, and folders of which nothing is left.
     *
     * @return those folders that it may have in common with others: threads make files in them meanwhile
     */
    Set<String> take(Set<String> files, Set<String> folders) throws IOException {
        Set<String> common = new HashSet<>();
        for (String path : files) {
            deleteFile(folder.resolve(path));
        }
        for (String each : longestFirst(folders)) {
            if (each.chars().filter(letter -> letter == '/').count() < 2) {
                common.add(each);
            } else {
                deleteIfEmpty(folder.resolve(each));
            }
        }
        return common;
    }

    /** When no thread makes files in it any more. */
    void deleteEmpty(Set<String> folders) throws IOException {
        for (String each : longestFirst(folders)) {
            deleteIfEmpty(folder.resolve(each));
        }
    }

    private static void deleteFile(Path file) throws IOException {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            Files.delete(file);
        }
    }

    private static List<String> longestFirst(Set<String> folders) {
        List<String> sorted = new ArrayList<>(folders);
        sorted.sort(Comparator.comparing(String::length).reversed());
        return sorted;
    }

    /** The system knows sooner than a look whether a folder is empty. */
    private static void deleteIfEmpty(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            Files.delete(folder);
        } catch (DirectoryNotEmptyException | NoSuchFileException stays) {
            // It is of use to others, or gone already.
        }
    }

    static boolean isEmpty(Path folder) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            return !entries.iterator().hasNext();
        }
    }

    private static List<Path> entries(Path folder) throws IOException {
        List<Path> all = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            entries.forEach(all::add);
        } catch (NoSuchFileException none) {
            return List.of();
        }
        return all;
    }
}
