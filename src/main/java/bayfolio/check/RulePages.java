package bayfolio.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The pages of the rules, one for each code: what is checked, why, from what source, with examples. */
public final class RulePages {
    private static final String PAGES = "/bayfolio/rules/";
    private static final String ENDING = ".md";

    private RulePages() {}

    /** All codes, by the alphabet. */
    public static List<String> codes() {
        return text("index.txt")
                .orElse("")
                .lines()
                .filter(name -> name.endsWith(ENDING))
                .map(name -> name.substring(0, name.length() - ENDING.length()))
                .toList();
    }

    /** The page of a code, in Markdown. */
    public static Optional<String> of(String code) {
        return codes().contains(code) ? text(code + ENDING) : Optional.empty();
    }

    private static Optional<String> text(String name) {
        try (InputStream in = RulePages.class.getResourceAsStream(PAGES + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
