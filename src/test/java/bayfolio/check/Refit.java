package bayfolio.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<String> lines = new ArrayList<>(description.lines().toList());
        for (RulePage.Block edit : example().blocks()) {
            Stretch stretch =
                    edit.option("in").map(name -> Stretch.of(name, lines)).orElse(new Stretch(0, lines.size()));
            switch (edit.language()) {
                case "replace" -> replace(edit, stretch, lines);
                case "remove" -> stretch.removedFrom(lines);
                case "add" -> lines.addAll(stretch.end(), edit.text().lines().toList());
                default -> throw new IllegalArgumentException(page.path() + ": no edit is called " + edit.language());
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private RulePage.Example example() {
        return page.examples().get(0);
    }

    /** Lines marked {@code -} give way to those marked {@code +}, which stand as far in as the first of them did. */
    private void replace(RulePage.Block edit, Stretch stretch, List<String> lines) {
        List<String> old = marked("- ", edit);
        int at = stretch.find(old, lines)
                .orElseThrow(() -> new IllegalArgumentException(page.path() + ": the description lacks " + old));
        String indent = lines.get(at).replaceFirst("\\S.*", "");
        lines.subList(at, at + old.size()).clear();
        lines.addAll(at, marked("+ ", edit).stream().map(line -> indent + line).toList());
    }

    private static List<String> marked(String mark, RulePage.Block edit) {
        return edit.text()
                .lines()
                .filter(line -> line.startsWith(mark))
                .map(line -> line.substring(mark.length()))
                .toList();
    }

    /**
     * The lines of one thing or of one block of a description.
     *
     * @param first of them, from 0
     * @param end one past the last
     */
    private record Stretch(int first, int end) {
        /**
         * @param name the id of a thing, or the key of a block with its colon
         */
        static Stretch of(String name, List<String> lines) {
            int first = lines.indexOf(name.endsWith(":") ? name : "  - id: " + name);
            if (first < 0) {
                throw new IllegalArgumentException("the description has nothing called " + name);
            }
            int indent = indent(lines.get(first));
            int end = first + 1;
            while (end < lines.size() && (lines.get(end).isBlank() || indent(lines.get(end)) > indent)) {
                end++;
            }
            while (lines.get(end - 1).isBlank() || lines.get(end - 1).strip().startsWith("#")) {
                end--;
            }
            return new Stretch(first, end);
        }

        private static int indent(String line) {
            return line.length() - line.stripLeading().length();
        }

        void removedFrom(List<String> lines) {
            lines.subList(first, end).clear();
        }

        Optional<Integer> find(List<String> wanted, List<String> lines) {
            for (int at = first; at + wanted.size() <= end; at++) {
                List<String> here = lines.subList(at, at + wanted.size()).stream()
                        .map(String::strip)
                        .toList();
                if (here.equals(wanted.stream().map(String::strip).toList())) {
                    return Optional.of(at);
                }
            }
            return Optional.empty();
        }
    }
}
