package bayfolio.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.render.theme.Theme;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo fleet in a language of brackets: each word of the catalog stands in a pair of them, so what stands outside was
 * typed by a writer, or by a programmer who should not have.
 */
final class PseudoLanguageTest {
    private static final Path ROOT = Path.of("");
    private static final Pattern BRACKETED = Pattern.compile("⟦[^⟧]*⟧");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}'’-]*");

    /** Where pieces of several writers' texts are put together. */
    private static final String JOINTS = "[\\n\\x01+=×/(),.:;?!\"“”…·–]+";

    /** Attributes that are read out. */
    private static final List<String> READ = List.of("alt", "aria-label", "title", "data-title");

    @TempDir
    Path folder;

    @Test
    void everyLetterOutsideItsBracketsComesFromAWritersFile() throws Exception {
        Path out = folder.resolve("out");
        DemoFleet.of(fleet()).publish(out, DemoFleet.looked().toArray(String[]::new));

        Typed typed = new Typed();
        Set<String> untyped = new TreeSet<>();
        int read = 0;
        for (Map.Entry<String, byte[]> file :
                DemoFleet.files(out.resolve("staff")).entrySet()) {
            if (file.getKey().matches(".*\\.(html|figures\\.js)")) {
                String text = new String(file.getValue(), StandardCharsets.UTF_8);
                for (String run : file.getKey().endsWith(".html") ? outside(Jsoup.parse(text)) : outside(text)) {
                    read++;
                    typed.strange(run).ifPresent(word -> untyped.add(file.getKey() + ": `" + word + "` in: " + run));
                }
            }
        }

        assertThat(read).isGreaterThan(40_000);
        assertThat(untyped).isEmpty();
    }

    /** The fleet of this repository, all of it in a language that is made here of the English one. */
    private Path fleet() throws Exception {
        Path fleet = folder.resolve("fleet");
        DemoFleet.copy(ROOT, fleet);
        Map<String, String> words = new TreeMap<>();
        Theme.load(ROOT, Theme.BUILT_IN)
                .catalogs()
                .of(Catalogs.ENGLISH)
                .patterns()
                // Other names are parted by commas.
                .forEach((key, pattern) -> words.put(
                        key,
                        key.startsWith("also.")
                                ? Stream.of(pattern.value().split(", ", -1))
                                        .map(PseudoLanguageTest::bracketed)
                                        .collect(Collectors.joining(", "))
                                : bracketed(pattern.value())));
        Path theme = Files.createDirectories(fleet.resolve("themes/harbor"));
        Files.writeString(
                theme.resolve("words-xx.properties"),
                words.entrySet().stream()
                        .map(word -> word.getKey() + " = " + word.getValue().replaceFirst("^ ", "\\\\ ") + "\n")
                        .collect(Collectors.joining()));
        try (Stream<Path> files = Files.walk(fleet.resolve("units"))) {
            for (Path file : files.filter(it -> it.toString().matches(".*(fleet|unit|model)\\.yaml"))
                    .toList()) {
                Files.writeString(file, Files.readString(file).replaceFirst("(?m)^languages: .*$", "languages: [xx]"));
            }
        }
        return fleet;
    }

    private static String bracketed(String pattern) {
        return Message.of(pattern)
                .with(words -> words.isBlank() ? words : "⟦" + words + "⟧")
                .pattern();
    }

    /** What stands outside of brackets, block by block. */
    private static List<String> outside(Document page) {
        // A letter is no word, and the same in each language that has it.
        page.select(".letters, .page-letter h1, .page-letter header").remove();
        // Nor is an address.
        page.select(".address").forEach(it -> {
            assertThat(it.text()).matches("https://\\S+");
            it.remove();
        });
        page.title("");
        StringBuilder text = new StringBuilder();
        page.traverse(new NodeVisitor() {
            @Override
            public void head(Node node, int depth) {
                if (node instanceof TextNode words) {
                    text.append(words.getWholeText());
                } else if (node instanceof Element element) {
                    text.append(element.isBlock() || element.nameIs("summary") ? "\n" : "");
                    READ.forEach(name -> text.append(element.hasAttr(name) ? "\n" + element.attr(name) + "\n" : ""));
                    if (element.hasAttr("data-asks")) {
                        said(JsonParser.parseString(element.attr("data-asks")), text);
                    }
                }
            }

            @Override
            public void tail(Node node, int depth) {
                if (node instanceof Element element && element.isBlock()) {
                    text.append('\n');
                }
            }
        });
        return runs(text);
    }

    /** Of the figures of a form, which hold the words of its answers. */
    private static List<String> outside(String figures) {
        StringBuilder text = new StringBuilder();
        said(JsonParser.parseString(figures.substring(figures.indexOf("{\""), figures.lastIndexOf(')'))), text);
        return runs(text);
    }

    private static List<String> runs(StringBuilder text) {
        return Arrays.stream(BRACKETED
                        .matcher(text.toString().replace('\u00A0', ' '))
                        .replaceAll("\u0001")
                        .split(JOINTS))
                .map(String::strip)
                .filter(run -> WORD.matcher(run).find())
                .toList();
    }

    /** Names and words that a form shows; ids and names of messages are for its script. */
    private static void said(JsonElement json, StringBuilder text) {
        if (json.isJsonArray()) {
            json.getAsJsonArray().forEach(each -> {
                if (each.isJsonPrimitive() && each.getAsJsonPrimitive().isString()) {
                    text.append('\n').append(each.getAsString()).append('\n');
                } else {
                    said(each, text);
                }
            });
        } else if (json.isJsonObject()) {
            json.getAsJsonObject().asMap().forEach((key, value) -> {
                if (key.equals("label")
                        || value.isJsonPrimitive() && Set.of("name", "label").contains(key) && shown(json)) {
                    text.append('\n').append(value.getAsString()).append('\n');
                } else {
                    said(value, text);
                }
            });
        }
    }

    /** A field has a name besides its label, which nobody reads. */
    private static boolean shown(JsonElement json) {
        return !json.getAsJsonObject().has("label");
    }

    /** All that stands in files of writers, by words that follow one another. */
    private static final class Typed {
        private final Set<String> rows = new HashSet<>();
        private final Set<String> pieces = new HashSet<>();

        Typed() throws IOException {
            try (Stream<Path> files = Files.walk(ROOT.resolve("units"))) {
                for (Path file : files.filter(it -> it.toString().matches(".*\\.(yaml|md|vtt)"))
                        .sorted()
                        .toList()) {
                    add(Files.readString(file));
                }
            }
        }

        private void add(String text) {
            String marked = text.replaceAll("\\{\\{[^}]*}}|\\[]\\([^)]*\\)|\\{#[^}]*}", "\n\n")
                    .replaceAll("]\\([^)]*\\)", " ")
                    .replaceAll("[*_`\\[\\]>#]", " ");
            List<String> words = words(marked);
            for (int i = 0; i < words.size(); i++) {
                for (int length = 2; length <= 3 && i + length <= words.size(); length++) {
                    rows.add(String.join(" ", words.subList(i, i + length)));
                }
            }
            // A value, a sentence, or what stands between two names of a template.
            for (String piece : marked.replaceAll("\\n(?!\\n)", "\n").split(JOINTS)) {
                pieces.add(String.join(" ", words(piece)));
            }
        }

        private static List<String> words(String text) {
            List<String> words = new ArrayList<>();
            Matcher word = WORD.matcher(text);
            while (word.find()) {
                words.add(word.group().toLowerCase(Locale.ROOT));
            }
            return words;
        }

        /** A word that stands with its neighbors nowhere in those files, and by itself as no piece of them. */
        Optional<String> strange(String run) {
            List<String> words = words(run);
            if (pieces.contains(String.join(" ", words))) {
                return Optional.empty();
            }
            boolean[] known = new boolean[words.size()];
            for (int i = 0; i < words.size(); i++) {
                for (int length = 2; length <= 3 && i + length <= words.size(); length++) {
                    boolean enough = length == 3 || words.size() < 4;
                    if (rows.contains(String.join(" ", words.subList(i, i + length))) && enough) {
                        Arrays.fill(known, i, i + length, true);
                    }
                }
            }
            for (int i = 0; i < words.size(); i++) {
                boolean piece = pieces.contains(words.get(i));
                for (int to = i + 2; !piece && to <= words.size(); to++) {
                    piece = pieces.contains(String.join(" ", words.subList(i, to)));
                }
                if (!known[i] && !piece && !within(words, i)) {
                    return Optional.of(words.get(i));
                }
            }
            return Optional.empty();
        }

        /** Whether it is inside or at the end of a piece. */
        private boolean within(List<String> words, int at) {
            for (int from = 0; from < at; from++) {
                for (int to = at + 1; to <= words.size(); to++) {
                    if (pieces.contains(String.join(" ", words.subList(from, to)))) {
                        return true;
                    }
                }
            }
            return false;
        }
    }
}
