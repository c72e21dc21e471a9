package bayfolio.check;

import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page of a rule, with the examples under its headings. */
record RulePage(Path path, List<String> lines, List<Example> examples) {
    private static final Pattern FENCE = Pattern.compile("(```+)(\\w*)((?: \\S+)*)");

    /**
     * What stands below one heading.
     *
     * @param blocks snippets laid over the tiny coach together, at least one
     * @param expected the block of findings; empty where the snippets are clean
     */
    record Example(String heading, List<Block> blocks, Optional<Block> expected) {
        boolean mended() {
            return heading.equals(USE_INSTEAD);
        }
    }

    /**
     * A fenced block.
     *
     * @param first the line of the fence that opens it, from 0
     * @param last the line of the fence that closes it, from 0
     */
    record Block(String language, Map<String, String> options, int first, int last, String text) {
        Optional<String> option(String name) {
            return Optional.ofNullable(options.get(name));
        }

        SourceFile file(String path) {
            return new SourceFile(path, text);
        }
    }

    static final String USE_INSTEAD = "Use instead";

    static RulePage read(Path path) throws IOException {
        List<String> lines = Files.readAllLines(path);
        List<Example> examples = new ArrayList<>();
        String heading = "";
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith("## ")) {
                add(heading, blocks, examples);
                heading = lines.get(i).substring(3).strip();
                blocks = new ArrayList<>();
            }
            Optional<Block> block = block(lines, i);
            if (block.isPresent()) {
                blocks.add(block.get());
                i = block.get().last();
            }
        }
        add(heading, blocks, examples);
        return new RulePage(path, lines, examples);
    }

    private static void add(String heading, List<Block> blocks, List<Example> examples) {
        List<Block> snippets =
                blocks.stream().filter(it -> !it.language().equals("findings")).toList();
        if (!snippets.isEmpty()) {
            examples.add(new Example(
                    heading,
                    snippets,
                    blocks.stream()
                            .filter(it -> it.language().equals("findings"))
                            .findFirst()));
        }
    }

    private static Optional<Block> block(List<String> lines, int first) {
        Matcher fence = FENCE.matcher(lines.get(first));
        if (!fence.matches()) {
            return Optional.empty();
        }
        int last = first + 1;
        while (!lines.get(last).equals(fence.group(1))) {
            last++;
        }
        Map<String, String> options = new HashMap<>();
        for (String option : fence.group(3).strip().split(" ")) {
            options.put(option.replaceFirst("=.*", ""), option.replaceFirst("^[^=]*=?", ""));
        }
        StringBuilder text = new StringBuilder();
        lines.subList(first + 1, last).forEach(line -> text.append(line).append('\n'));
        return Optional.of(new Block(fence.group(2), options, first, last, text.toString()));
    }

    String code() {
        return path.getFileName().toString().replace(".md", "");
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }

    /**
     * The text of the page with other findings.
     *
     * @param told what the program says of each example, in their order
     */
    String with(List<String> told) {
        List<String> changed = new ArrayList<>(lines);
        for (int i = examples.size() - 1; i >= 0; i--) {
            Example example = examples.get(i);
            int end = example.blocks().get(example.blocks().size() - 1).last() + 1;
            example.expected()
                    .ifPresent(it -> changed.subList(it.first(), it.last() + 1).clear());
            if (!told.get(i).isEmpty()) {
                int at = example.expected().map(Block::first).orElse(end);
                changed.addAll(
                        at, ("```findings\n" + told.get(i) + "```").lines().toList());
            }
        }
        return String.join("\n", changed) + "\n";
    }
}
