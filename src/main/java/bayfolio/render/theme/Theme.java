package bayfolio.render.theme;

import bayfolio.catalog.Catalogs;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a theme. A theme in the fleet folder may hold only what it changes, of the screen
 * words, too: the rest comes from the built-in one.
 */
public final class Theme {
    /** The theme that the program carries. */
    public static final String BUILT_IN = "harbor";

    private static final String WORDS = "words-";
    private static final String PROPERTIES = ".properties";
    private static final String RESOURCES = "/bayfolio/themes/";

    private final String name;
    private final Map<String, byte[]> files;

    /** Words that the program carries, by path. */
    private final Map<String, byte[]> builtInWords;

    private final JsonObject manifest;

    /** Read when they are first asked for. */
    private @Nullable Catalogs catalogs;

    private Theme(String name, Map<String, byte[]> files, Map<String, byte[]> builtInWords) throws IOException {
        this.name = name;
        this.files = files;
        this.builtInWords = builtInWords;
        SourceFile look = text("manifest.json").orElseThrow();
        try {
            this.manifest = JsonParser.parseString(look.text()).getAsJsonObject();
        } catch (JsonParseException | IllegalStateException e) {
            throw new IOException(look.path() + ": it is no object of JSON", e);
        }
    }

    /**
     * @param root the fleet folder; its {@code themes/<name>} lies over the built-in theme
     * @throws UnknownThemeException when there is no such theme
     */
    public static Theme load(Path root, String name) throws IOException, UnknownThemeException {
        // A name, not a way out of the folder of themes.
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            throw new UnknownThemeException(name);
        }
        Map<String, byte[]> files = new TreeMap<>(builtIn());
        Map<String, byte[]> words = new TreeMap<>(files);
        words.keySet().removeIf(path -> !path.endsWith(PROPERTIES));
        files.keySet().removeAll(words.keySet());
        Path folder = root.resolve("themes").resolve(name);
        if (Files.isDirectory(folder)) {
            if (!folder.toRealPath().startsWith(root.toRealPath())) {
                throw leadsOut(folder, "the fleet folder");
            }
            try (Stream<Path> paths = Files.walk(folder.toRealPath())) {
                for (Path path : paths.filter(Theme::isFileOrLink).toList()) {
                    if (!path.toRealPath().startsWith(folder.toRealPath())) {
                        throw leadsOut(path, "its theme");
                    }
                    if (!Files.isRegularFile(path)) {
                        continue;
                    }
                    String file =
                            folder.toRealPath().relativize(path).toString().replace('\\', '/');
                    files.put(file, Files.readAllBytes(path));
                }
            }
        } else if (!name.equals(BUILT_IN)) {
            throw new UnknownThemeException(name);
        }
        return new Theme(name, files, words);
    }

    private static boolean isFileOrLink(Path path) {
        return Files.isRegularFile(path) || Files.isSymbolicLink(path) && Files.exists(path);
    }

    private static IOException leadsOut(Path path, String of) {
        return new FileSystemException(path.toString(), null, "it is a link that leads out of " + of);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    private static Map<String, byte[]> builtIn() throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String path : new String(resource("index.txt"), StandardCharsets.UTF_8)
                .lines()
                .toList()) {
            if (path.startsWith(BUILT_IN + "/")) {
                files.put(path.substring(BUILT_IN.length() + 1), resource(path));
            }
        }
        return files;
    }

    private static byte[] resource(String path) throws IOException {
        try (InputStream in = Objects.requireNonNull(Theme.class.getResourceAsStream(RESOURCES + path), path)) {
            return in.readAllBytes();
        }
    }

    /** A template by its path without ending. */
    public Optional<SourceFile> template(String path) {
        // A line break at the end of a partial would print as a space inside a sentence.
        return text(path + ".mustache")
                .map(file -> new SourceFile(file.path(), file.text().stripTrailing()));
    }

    private Optional<SourceFile> text(String path) {
        return Optional.ofNullable(files.get(path))
                .map(bytes -> new SourceFile("themes/" + name + "/" + path, text(bytes)));
    }

    /** A file that is part of a page by its path, such as the style of one that stands alone. */
    public Optional<SourceFile> part(String path) {
        return text(path);
    }

    /** The script by which a phone keeps a handbook; its list of files comes from the program. */
    public Optional<SourceFile> worker() {
        return text("worker.js");
    }

    /** Colors and display of a handbook on the first screen of a phone; its name comes from the program. */
    public JsonObject manifest() {
        return manifest;
    }

    /** What is drawn on tiles, by name: the path of each, in a field of 24 by 24. */
    public Map<String, String> symbols() {
        Map<String, String> symbols = new TreeMap<>();
        text("symbols.txt").ifPresent(file -> {
            try {
                patterns(file).forEach((symbol, path) -> symbols.put(symbol, path.value()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return symbols;
    }

    /** Files that go to the site as they are: style, script, fonts. */
    public Map<String, byte[]> assets() {
        return below("assets/");
    }

    /** The same for pages that staff alone have: no phone of a renter keeps them. */
    public Map<String, byte[]> staffAssets() {
        return below("staff/");
    }

    private Map<String, byte[]> below(String folder) {
        Map<String, byte[]> below = new TreeMap<>();
        files.forEach((path, bytes) -> {
            if (path.startsWith(folder)) {
                below.put(path.substring(folder.length()), bytes);
            }
        });
        return below;
    }

    /** What it says, in all languages that it has words for. */
    public synchronized Catalogs catalogs() throws IOException {
        if (catalogs == null) {
            catalogs = readCatalogs();
        }
        return catalogs;
    }

    private Catalogs readCatalogs() throws IOException {
        Map<String, List<Catalogs.Words>> languages = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : builtInWords.entrySet()) {
            add(file, BUILT_IN, true, languages);
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            add(file, name, false, languages);
        }
        return new Catalogs(languages);
    }

    private static void add(
            Map.Entry<String, byte[]> file, String theme, boolean builtIn, Map<String, List<Catalogs.Words>> languages)
            throws IOException {
        String path = file.getKey();
        if (path.startsWith(WORDS) && path.endsWith(PROPERTIES)) {
            SourceFile source = new SourceFile("themes/" + theme + "/" + path, text(file.getValue()));
            languages
                    .computeIfAbsent(
                            path.substring(WORDS.length(), path.length() - PROPERTIES.length()),
                            it -> new ArrayList<>())
                    .add(new Catalogs.Words(patterns(source), builtIn));
        }
    }

    /** Messages by their keys, each where it is written; of a key that is there twice the later one holds. */
    private static Map<String, Located<String>> patterns(SourceFile file) throws IOException {
        Map<String, Located<String>> patterns = new TreeMap<>();
        StringBuilder logical = new StringBuilder();
        int begun = 1;
        int number = 0;
        for (String line : file.text().split("\n", -1)) {
            number++;
            if (logical.isEmpty()) {
                begun = number;
            }
            logical.append(line);
            if (goesOn(line)) {
                logical.append('\n');
                continue;
            }
            Properties one = new Properties();
            try {
                one.load(new StringReader(logical.toString()));
            } catch (IllegalArgumentException e) {
                throw new IOException(file.path() + ":" + begun + ": " + e.getMessage(), e);
            }
            int at = begun;
            int length = logical.toString().stripTrailing().length();
            one.forEach((key, value) ->
                    patterns.put(key.toString(), new Located<>(value.toString(), Place.of(file, at, 1, length))));
            logical.setLength(0);
        }
        return patterns;
    }

    private static boolean goesOn(String line) {
        int slashes = line.length() - line.replaceFirst("\\\\+$", "").length();
        return slashes % 2 == 1 && !line.stripLeading().startsWith("#");
    }
}
