package bayfolio.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A refit of a coach as a hurried writer enters it: what changed on the coach, and the one place of the description
 * that was changed with it.
 *
 * @param page with one example: the edits and the findings
 */
public record Refit(RulePage page) {
    private static final Pattern COACH = Pattern.compile("(?m)^\\*\\*Coach\\*\\* ([a-z-]+)");
    private static final Pattern CODE = Pattern.compile("\\[([a-z-]+)]$", Pattern.MULTILINE);

    public static Refit read(Path path) throws IOException {
        return new Refit(RulePage.read(path));
    }

    public String name() {
        return page.path().getFileName().toString().replace(".md", "");
    }

    public String coach() {
        Matcher coach = COACH.matcher(page.text());
        if (!coach.find()) {
            throw new IllegalArgumentException(page.path() + " has no line `**Coach** …`");
        }
        return coach.group(1);
    }

    /** The block of findings; empty where nothing is told. */
    String told() {
        return example().expected().map(RulePage.Block::text).orElse("");
    }

    List<String> codesTold() {
        return CODE.matcher(told())
                .results()
                .map(code -> code.group(1))
                .distinct()
                .toList();
    }

    /** What is untrue afterward without a finding: one bullet each, with the reason behind a colon. */
    List<String> notSeen() {
        return page.lines().stream()
                .dropWhile(line -> !line.startsWith("**Not seen**"))
                .filter(line -> line.startsWith("- "))
                .toList();
    }

    String with(String findings) {
        return page.with(List.of(findings));
    }

    /** The description after the careless edit. */
    public String done(String description) {
        return new Edits(page.path(), example().blocks()).done(description);
    }

    private RulePage.Example example() {
        return page.examples().get(0);
    }
}
