package bayfolio.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Code that makes what readers get has no sentences of its own: what it says stands in a catalog. */
final class EnglishInCodeTest {
    private static final Path CODE = Path.of("src/main/java/bayfolio");

    /** Rooms whose texts reach a reader; others speak to writers alone, who read English. */
    private static final List<String> ROOMS =
            List.of("catalog", "reckon", "explain", "drawing", "document", "compose", "render/web");

    /** Scripts of the pages. */
    private static final List<Path> SCRIPTS = List.of(Path.of("themes/harbor/assets"), Path.of("themes/harbor/staff"));

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    /** Two words with a blank between them. */
    private static final Pattern WORDS = Pattern.compile("\\p{L}{2,}[,.:;]? +\\p{L}{2,}");

    @Test
    void noSentenceReachesAReaderFromCode() throws Exception {
        List<String> found = new ArrayList<>();
        for (String room : ROOMS) {
            try (Stream<Path> files = Files.walk(CODE.resolve(room))) {
                for (Path file : files.filter(it -> it.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    if (file.endsWith("DocumentSchema.java")) {
                        continue; // the title of a schema, for programs
                    }
                    // What is thrown is for whoever mends the program or the theme.
                    String code = withoutComments(Files.readString(file))
                            .replaceAll("(?s)throw new .*?;", "")
                            .replaceAll("(?s)orElseThrow\\(\\(\\) ->.*?;", "")
                            .replaceAll("(?s)requireNonNull\\(.*?;", "");
                    literals(code).filter(it -> WORDS.matcher(it).find()).forEach(it -> found.add(file + ": " + it));
                }
            }
        }

        assertThat(found).isEmpty();
    }

    @Test
    void noSentenceStandsInAScript() throws Exception {
        List<String> found = new ArrayList<>();
        for (Path folder : SCRIPTS) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file :
                        files.filter(it -> it.toString().endsWith(".js")).toList()) {
                    literals(withoutComments(Files.readString(file))
                                    .replace("\"use strict\"", "")
                                    .replaceAll("throw new .*?;", ""))
                            .filter(it -> WORDS.matcher(it).find())
                            .filter(it -> !it.equals("filled over"))
                            .filter(it -> !it.equals("field tick"))
                            .forEach(it -> found.add(file + ": " + it));
                }
            }
        }

        assertThat(found).isEmpty();
    }

    private static String withoutComments(String code) {
        return code.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)//.*$", "");
    }

    private static Stream<String> literals(String code) {
        Matcher literal = LITERAL.matcher(code);
        return literal.results().map(it -> it.group(1));
    }
}
