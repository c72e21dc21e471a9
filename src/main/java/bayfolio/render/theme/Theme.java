package bayfolio.render.theme;

import bayfolio.prose.ScreenWords;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The files of a theme. A theme in the fleet folder may hold only what it changes, of the screen
 * words, too: the rest comes from the built-in one.
 */
public final class Theme {
    /** The theme that the program carries. */
    public static final String BUILT_IN = "harbor";

    private static final String ENGLISH = "en-US";
    private static final String WORDS = "words-";
    private static final String PROPERTIES = ".properties";
    private static final String RESOURCES = "/bayfolio/themes/";

    private final String name;
    private final Map<String, byte[]> files;

    private Theme(String name, Map<String, byte[]> files) {
        this.name = name;
        this.files = files;
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
                    byte[] own = Files.readAllBytes(path);
                    if (file.endsWith(PROPERTIES)) {
                        files.merge(file, own, Theme::after);
                    } else {
                        files.put(file, own);
                    }
                }
            }
        } else if (!name.equals(BUILT_IN)) {
            throw new UnknownThemeException(name);
        }
        return new Theme(name, files);
    }

    private static boolean isFileOrLink(Path path) {
        return Files.isRegularFile(path) || Files.isSymbolicLink(path) && Files.exists(path);
    }

    private static IOException leadsOut(Path path, String of) {
        return new FileSystemException(path.toString(), null, "it is a link that leads out of " + of);
    }

    /** Of a word that both have, the later one holds. */
    private static byte[] after(byte[] first, byte[] second) {
        return (text(first) + "\n" + text(second)).getBytes(StandardCharsets.UTF_8);
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

    /** Files that go to the site as they are: style, script, fonts. */
    public Map<String, byte[]> assets() {
        Map<String, byte[]> assets = new TreeMap<>();
        files.forEach((path, bytes) -> {
            if (path.startsWith("assets/")) {
                assets.put(path.substring("assets/".length()), bytes);
            }
        });
        return assets;
    }

    /**
     * The screen words of a language; of its main language where the region has none of its own,
     * and English for the rest.
     */
    public ScreenWords words(String language) throws IOException {
        Map<String, String> words = new TreeMap<>();
        for (String each : List.of("en", language.replaceFirst("-.*", ""), language)) {
            Optional<SourceFile> file = text(WORDS + each + PROPERTIES);
            if (file.isPresent()) {
                Properties properties = new Properties();
                try {
                    properties.load(new StringReader(file.get().text()));
                } catch (IllegalArgumentException e) {
                    throw new IOException(file.get().path() + ": " + e.getMessage(), e);
                }
                properties.forEach((key, value) -> words.put(key.toString(), value.toString()));
            }
        }
        return new ScreenWords(language, words, languages());
    }

    /** The first of these languages that it has words for; English where there is none, which the check tells. */
    public ScreenWords words(List<String> languages) throws IOException {
        ScreenWords english = words(ENGLISH);
        Optional<String> first = languages.stream().filter(english::has).findFirst();
        return first.isPresent() ? words(first.get()) : english;
    }

    private List<String> languages() {
        return files.keySet().stream()
                .filter(path -> path.startsWith(WORDS) && path.endsWith(PROPERTIES))
                .map(path -> path.substring(WORDS.length(), path.length() - PROPERTIES.length()))
                .toList();
    }
}
