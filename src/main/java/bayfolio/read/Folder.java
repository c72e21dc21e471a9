package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.Lazy;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.source.UnitsPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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

    /** What paths of the program's own files begin with, as people see them. */
    private static final String OWN = "library/";

    private static final String LIBRARY = "/bayfolio/library/";

    /** What the program brings along stays the same while it runs. */
    private static final Supplier<Set<String>> NAMES_OF_THE_PROGRAM = new Lazy<>(Folder::namesOfTheProgram);

    private static final Map<String, Texted> TEXTS_OF_THE_PROGRAM = new ConcurrentHashMap<>();

    private final Path root;
    private final Keeper keeper;

    /** What was asked at this moment, with the answers; empty where it is looked up each time. */
    private final Optional<Moment> moment;

    /** Where it is written down what somebody asks, with the answers. */
    private final Optional<Map<Keeper.Question<?>, Object>> asked;

    /** Texts that stand in place of those on disk, by their paths. */
    private final Map<String, String> instead;

    /** As it is whenever it is asked; what is read of it at one moment is kept for the next. */
    public Folder(Path root) {
        this(root, new Keeper());
    }

    /** What is kept of it is kept there. */
    Folder(Path root, Keeper keeper) {
        this(root, keeper, Optional.empty(), Optional.empty(), Map.of());
    }

    private Folder(
            Path root,
            Keeper keeper,
            Optional<Moment> moment,
            Optional<Map<Keeper.Question<?>, Object>> asked,
            Map<String, String> instead) {
        this.root = root;
        this.keeper = keeper;
        this.moment = moment;
        this.asked = asked;
        this.instead = instead;
    }

    public Path root() {
        return root;
    }

    /** Another one, of which what it has in common with this one need not be read anew. */
    public Folder at(Path other) {
        return new Folder(other, keeper, Optional.empty(), Optional.empty(), Map.of());
    }

    /**
     * The same folder as it would be with other texts in some of its files.
     *
     * @param texts by their paths, such as {@code units/dunlin/unit.yaml}
     */
    public Folder with(Map<String, String> texts) {
        return new Folder(root, keeper, Optional.empty(), Optional.empty(), Map.copyOf(texts));
    }

    /** As it is now: whatever is asked twice has one answer. */
    Folder now() {
        return moment.isPresent()
                ? this
                : new Folder(root, keeper, Optional.of(new Moment()), Optional.empty(), instead);
    }

    /** The same, which writes down what it is asked. */
    Folder written(Map<Keeper.Question<?>, Object> questions) {
        return new Folder(root, keeper, moment, Optional.of(questions), instead);
    }

    /** Of what was not asked for since {@link #now} nothing is kept any more. */
    void forgetTheRest() {
        moment.ifPresent(it -> keeper.forgetAllBut(it.asked()));
    }

    <A> A ask(Keeper.Question<A> question) {
        Folder plain = asked.isPresent() ? new Folder(root, keeper, moment, Optional.empty(), instead) : this;
        A answer = moment.isPresent() ? moment.get().answer(question, plain) : question.answer(plain);
        asked.ifPresent(questions -> questions.put(question, question.known(answer)));
        return answer;
    }

    /** Answers that were given at one moment. */
    private static final class Moment {
        private final Map<Keeper.Question<?>, Lazy<Object>> answers = new ConcurrentHashMap<>();

        /** Those are answered anew each time, as all that they are made of was answered at the moment. */
        private final Set<Keeper.Question<?>> large = ConcurrentHashMap.newKeySet();

        @SuppressWarnings("unchecked") // a question always has answers of one type
        <A> A answer(Keeper.Question<A> question, Folder folder) {
            if (question.isLarge()) {
                large.add(question);
                return question.answer(folder);
            }
            return (A) answers.computeIfAbsent(question, it -> new Lazy<>(() -> it.answer(folder)))
                    .get();
        }

        Set<Keeper.Question<?>> asked() {
            Set<Keeper.Question<?>> asked = new HashSet<>(answers.keySet());
            asked.addAll(large);
            return asked;
        }
    }

    /** What a reader makes of something, worked out anew only where something it asked for is not as it was. */
    <T> T read(Keeper.Reader<T> reader, String name, Consumer<Finding> findings) {
        Keeper.Kept<T> kept = now().ask(keeper.wanted(reader, name));
        kept.findings().forEach(findings);
        return kept.result();
    }

    public boolean has(String path) {
        return ask(new There(path));
    }

    private record There(String path) implements Keeper.Question<Boolean> {
        @Override
        public Boolean answer(Folder folder) {
            return Files.exists(folder.root.resolve(path)) || isBuiltIn(path);
        }
    }

    /** A text file; one that cannot be read is told and left out. */
    public Optional<SourceFile> text(String path, Consumer<Finding> findings) {
        Texted text = ask(new Text(path));
        text.findings.forEach(findings);
        return text.file;
    }

    /** The file that a place names. */
    public Optional<SourceFile> named(String path) {
        return text(path.startsWith(OWN) ? SHARED + path.substring(OWN.length()) : path, told -> {})
                .filter(file -> file.path().equals(path));
    }

    /** What a file says, with what is wrong with it. */
    record Texted(Optional<SourceFile> file, List<Finding> findings) {
        boolean says(Texted other) {
            // One of the program has another path than the same one in the folder.
            return findings.equals(other.findings)
                    && file.map(SourceFile::path).equals(other.file.map(SourceFile::path))
                    && file.map(SourceFile::text).equals(other.file.map(SourceFile::text));
        }
    }

    record Text(String path) implements Keeper.Question<Texted> {
        @Override
        public Texted answer(Folder folder) {
            Optional<FileStamp> now =
                    folder.instead.containsKey(path) ? Optional.empty() : FileStamp.of(folder.root.resolve(path));
            return folder.keeper.unchanged(path, now).orElseGet(() -> {
                List<Finding> findings = new ArrayList<>();
                Optional<SourceFile> file = folder.fresh(path, findings::add);
                // What could not be read may be readable the next time.
                return folder.keeper.same(
                        path, new Texted(file, List.copyOf(findings)), file.isPresent() ? now : Optional.empty());
            });
        }
    }

    private Optional<SourceFile> fresh(String path, Consumer<Finding> findings) {
        Path file = root.resolve(path);
        SourceFile empty = new SourceFile(path, "");
        try {
            if (instead.containsKey(path)) {
                return decode(
                        path, Objects.requireNonNull(instead.get(path)).getBytes(StandardCharsets.UTF_8), findings);
            }
            if (!Files.exists(file)) {
                Optional<Texted> builtIn = textOfTheProgram(path);
                if (builtIn.isEmpty()) {
                    findings.accept(unreadable(empty, "the file is missing"));
                    return Optional.empty();
                }
                builtIn.get().findings.forEach(findings);
                return builtIn.get().file;
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
                findings.accept(tooLarge(empty, bytes));
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
        if (bytes.length > MOST_BYTES) {
            findings.accept(tooLarge(empty, bytes.length));
            return Optional.empty();
        }
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

    private static Finding tooLarge(SourceFile file, long bytes) {
        return unreadable(file, "the file has " + bytes + " bytes; the most that is read is " + MOST_BYTES);
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

    /** What offers editors the ids of a model, as a file beside it; empty where the model cannot be read. */
    public Optional<SourceFile> schemaOf(String model) {
        return text(Model.FOLDER + "/" + model + "/model.yaml", told -> {})
                .flatMap(file -> Model.of(file, told -> {}))
                .map(it -> new SourceFile(it.file().folder() + "/" + SchemaWriter.fileName(Unit.SHAPE), it.schema()));
    }

    /** Paths of the texts of facts in other languages, of those that lie beside a description. */
    public List<String> factTexts(String beside) {
        String root = beside + "/" + FleetReader.TRANSLATIONS;
        return folders(root).stream()
                .map(language -> root + "/" + language + "/" + FleetReader.FACTS)
                .filter(this::has)
                .toList();
    }

    /** Names of the folders of coaches, sorted. */
    public List<String> coaches() {
        return folders("units").stream().filter(UnitsPath::isCoach).toList();
    }

    /** Names of the folders in a folder, sorted; hidden ones are left out. */
    List<String> folders(String path) {
        return ask(new Folders(path));
    }

    private record Folders(String path) implements Keeper.Question<List<String>> {
        @Override
        public List<String> answer(Folder folder) {
            return folder.list(path, Files::isDirectory);
        }
    }

    /** Names of the files with an ending, sorted, those of the built-in library among them. */
    public List<String> files(String path, String ending) {
        return ask(new Names(path, ending));
    }

    private record Names(String path, String ending) implements Keeper.Question<List<String>> {
        @Override
        public List<String> answer(Folder folder) {
            return folder.names(path, ending);
        }
    }

    private List<String> names(String path, String ending) {
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

    private List<String> list(String path, Predicate<Path> kind) {
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
            throw new UncheckedIOException("cannot list " + folder, e);
        }
    }

    private static boolean isBuiltIn(String path) {
        return path.startsWith(SHARED) && library().contains(path.substring(SHARED.length()));
    }

    private static Optional<Texted> textOfTheProgram(String path) {
        return isBuiltIn(path)
                ? Optional.of(TEXTS_OF_THE_PROGRAM.computeIfAbsent(path, it -> {
                    List<Finding> findings = new ArrayList<>();
                    Optional<SourceFile> file =
                            builtIn(it).flatMap(bytes -> decode(it.replace(SHARED, OWN), bytes, findings::add));
                    return new Texted(file, List.copyOf(findings));
                }))
                : Optional.empty();
    }

    private static Optional<byte[]> builtIn(String path) {
        if (!path.startsWith(SHARED)) {
            return Optional.empty();
        }
        try (InputStream in = Folder.class.getResourceAsStream(LIBRARY + path.substring(SHARED.length()))) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the built-in library", e);
        }
    }

    private static Set<String> library() {
        return NAMES_OF_THE_PROGRAM.get();
    }

    private static Set<String> namesOfTheProgram() {
        String index = LIBRARY + "index.txt";
        try (InputStream in = Objects.requireNonNull(Folder.class.getResourceAsStream(index), index)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank())
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the built-in library", e);
        }
    }
}
