package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.source.UnitsPath;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A fleet folder on disk, with the shared library of the program behind it: what {@code
 * units/shared} does not hold is taken from there.
 */
public final class Folder {
    /**
     * No description that a person wrote is longer; what is, is a mistake and is not read into
     * memory.
     */
    static final int MOST_BYTES = 1_000_000;

    /**
     * Of a line, and of a paragraph of Markdown, which is read as one: some ten pages. Much of what looks at a text goes
     * through it again from each of its marks, and stays quick so.
     */
    static final int MOST_CHARACTERS = 10_000;

    private static final String SHARED = "units/shared/";
    private static final String LIBRARY = "/bayfolio/library/";

    private final Path root;

    public Folder(Path root) {
        this.root = root;
    }

    public Path root() {
        return root;
    }

    public boolean has(String path) {
        return Files.exists(root.resolve(path)) || builtIn(path).isPresent();
    }

    /** A text file; one that cannot be read is told and left out. */
    Optional<SourceFile> text(String path, Consumer<Finding> findings) {
        Path file = root.resolve(path);
        SourceFile empty = new SourceFile(path, "");
        try {
            if (!Files.exists(file)) {
                Optional<byte[]> builtIn = builtIn(path);
                if (builtIn.isEmpty()) {
                    findings.accept(unreadable(empty, "the file is missing"));
                    return Optional.empty();
                }
                return decode(path.replace(SHARED, "library/"), builtIn.get(), findings);
            }
            if (!holds(file)) {
                findings.accept(unreadable(empty, "this is a link that leads out of the fleet folder")
                        .mend("Put the file itself there."));
                return Optional.empty();
            }
            if (!Files.isRegularFile(file)) {
                findings.accept(unreadable(empty, "this is no file"));
                return Optional.empty();
            }
            long bytes = Files.size(file);
            if (bytes > MOST_BYTES) {
                findings.accept(
                        unreadable(empty, "the file has " + bytes + " bytes; the most that is read is " + MOST_BYTES));
                return Optional.empty();
            }
            return decode(path, Files.readAllBytes(file), findings);
        } catch (IOException e) {
            findings.accept(unreadable(empty, "the file cannot be read"));
            return Optional.empty();
        }
    }

    /** Whether a file that is there lies within, whatever links lead to it. */
    boolean holds(Path file) throws IOException {
        return file.toRealPath().startsWith(root.toRealPath());
    }

    private static Optional<SourceFile> decode(String path, byte[] bytes, Consumer<Finding> findings) {
        SourceFile empty = new SourceFile(path, "");
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            findings.accept(unreadable(empty, "the file is not UTF-8 text"));
            return Optional.empty();
        }
        if (text.indexOf('\0') >= 0) {
            findings.accept(unreadable(empty, "the file is binary, not text"));
            return Optional.empty();
        }
        if (text.isBlank()) {
            findings.accept(unreadable(empty, "the file is empty"));
            return Optional.empty();
        }
        String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
        SourceFile file = new SourceFile(
                path,
                HiddenCharacters.shown(path, unmarked.replace("\r\n", "\n").replace('\r', '\n'), findings));
        for (int line = 1; line <= file.lineCount(); line++) {
            int length = file.line(line).length();
            if (length > MOST_CHARACTERS) {
                findings.accept(tooLong(Place.of(file, line, 1, 0), "this line", length));
                return Optional.empty();
            }
        }
        return Optional.of(file);
    }

    static Finding tooLong(Place at, String what, int length) {
        return Finding.error(
                        "unreadable-file",
                        at,
                        what + " has " + length + " characters; the most that is read is " + MOST_CHARACTERS)
                .mend("Break it into several.");
    }

    private static Finding unreadable(SourceFile file, String message) {
        return Finding.error("unreadable-file", Place.whole(file), message);
    }

    /** Names of the models, sorted. */
    public List<String> models() {
        return folders(Model.FOLDER);
    }

    /** Names of the countries, sorted. */
    public List<String> countries() {
        return files(SHARED + FleetReader.COUNTRIES, ".yaml").stream()
                .map(name -> name.substring(0, name.length() - ".yaml".length()))
                .toList();
    }

    /** What editors complete and check by, where it is not there yet; and beside each model what offers its ids. */
    public void writeSchemas() throws IOException {
        for (String name : library()) {
            Path there = root.resolve(SHARED + name);
            if (name.endsWith(".schema.json") && !Files.exists(there)) {
                Files.createDirectories(there.toAbsolutePath().getParent());
                Files.write(there, builtIn(SHARED + name).orElseThrow());
            }
        }
        for (String model : models()) {
            Optional<Model> read = text(Model.FOLDER + "/" + model + "/model.yaml", told -> {})
                    .flatMap(file -> Model.of(file, told -> {}));
            if (read.isPresent()) {
                read.get().writeSchema(this);
            }
        }
    }

    /** Names of the folders of coaches, sorted. */
    public List<String> coaches() {
        return folders("units").stream().filter(UnitsPath::isCoach).toList();
    }

    /** Names of the folders in a folder, sorted; hidden ones are left out. */
    List<String> folders(String path) {
        return list(path, Files::isDirectory);
    }

    /** Names of the files with an ending, sorted, those of the built-in library among them. */
    public List<String> files(String path, String ending) {
        TreeSet<String> names = new TreeSet<>(list(path, Files::isRegularFile));
        if ((path + "/").startsWith(SHARED)) {
            String inside = (path + "/").substring(SHARED.length());
            library().stream()
                    .filter(name -> name.startsWith(inside) && name.indexOf('/', inside.length()) < 0)
                    .map(name -> name.substring(inside.length()))
                    .forEach(names::add);
        }
        return names.stream().filter(name -> name.endsWith(ending)).toList();
    }

    private List<String> list(String path, java.util.function.Predicate<Path> kind) {
        Path folder = root.resolve(path);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(kind)
                    .map(entry -> entry.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("cannot list " + folder, e);
        }
    }

    private static Optional<byte[]> builtIn(String path) {
        if (!path.startsWith(SHARED)) {
            return Optional.empty();
        }
        try (InputStream in = Folder.class.getResourceAsStream(LIBRARY + path.substring(SHARED.length()))) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("cannot read the built-in library", e);
        }
    }

    private static List<String> library() {
        String index = LIBRARY + "index.txt";
        try (InputStream in = Objects.requireNonNull(Folder.class.getResourceAsStream(index), index)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("cannot read the built-in library", e);
        }
    }
}
