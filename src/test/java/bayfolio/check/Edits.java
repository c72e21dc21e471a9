package bayfolio.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Edits of a description, each a fenced block: {@code replace}, {@code remove}, {@code add}.
 *
 * @param path of the page that they stand on, for messages
 */
record Edits(Path path, List<RulePage.Block> blocks) {
    String done(String description) {
        List<String> lines = new ArrayList<>(description.lines().toList());
        for (RulePage.Block edit : blocks) {
            Stretch stretch =
                    edit.option("in").map(name -> Stretch.of(name, lines)).orElse(new Stretch(0, lines.size()));
            switch (edit.language()) {
                case "replace" -> replace(edit, stretch, lines);
                case "remove" -> stretch.removedFrom(lines);
                case "add" -> lines.addAll(stretch.end(), edit.text().lines().toList());
                default -> throw new IllegalArgumentException(path + ": no edit is called " + edit.language());
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** Lines marked {@code -} give way to those marked {@code +}, which stand as far in as the first of them did. */
    private void replace(RulePage.Block edit, Stretch stretch, List<String> lines) {
        List<String> old = marked("- ", edit);
        int at = stretch.find(old, lines)
                .orElseThrow(() -> new IllegalArgumentException(path + ": the description lacks " + old));
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
    record Stretch(int first, int end) {
        /**
         * @param name the id of a thing, or the key of a block with its colon
         */
        static Stretch of(String name, List<String> lines) {
            return named(name, lines)
                    .orElseThrow(() -> new IllegalArgumentException("the description has nothing called " + name));
        }

        static Optional<Stretch> named(String name, List<String> lines) {
            int first = lines.indexOf(name.endsWith(":") ? name : "  - id: " + name);
            if (first < 0) {
                return Optional.empty();
            }
            int indent = indent(lines.get(first));
            int end = first + 1;
            while (end < lines.size() && (lines.get(end).isBlank() || indent(lines.get(end)) > indent)) {
                end++;
            }
            while (lines.get(end - 1).isBlank() || lines.get(end - 1).strip().startsWith("#")) {
                end--;
            }
            return Optional.of(new Stretch(first, end));
        }

        /** What a coach says of itself, before its first block. */
        static Stretch head(List<String> lines) {
            return new Stretch(0, lines.indexOf("size:"));
        }

        boolean holds(int line) {
            return line >= first && line < end;
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
