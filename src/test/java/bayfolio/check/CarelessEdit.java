package bayfolio.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A refit, or what a check must see, as a careless writer enters it on one coach: one of several on a page.
 *
 * @param name file and heading: {@code 06 dunlin: it is in the battery box now}
 * @param coach its heading begins with
 * @param edits done in their order, as in {@link Refit}
 * @param concerned ids of things, keys of blocks with their colon, or {@code unit}, where it may be told, too
 */
public record CarelessEdit(String name, String coach, Edits edits, List<String> concerned) {
    private static final String CONCERNS = "Concerns ";

    /** Those of a page, in their order. */
    public static List<CarelessEdit> read(Path path) throws IOException {
        RulePage page = RulePage.read(path);
        List<CarelessEdit> all = new ArrayList<>();
        for (RulePage.Example example : page.examples()) {
            List<String> concerned = new ArrayList<>(example.blocks().stream()
                    .flatMap(edit -> edit.option("in").stream())
                    .filter(name -> !name.equals("refits:"))
                    .toList());
            concerns(page, example).ifPresent(concerned::addAll);
            all.add(new CarelessEdit(
                    path.getFileName().toString().replace(".md", "") + " " + example.heading(),
                    example.heading().replaceFirst(":.*", ""),
                    new Edits(path, example.blocks()),
                    concerned));
        }
        return all;
    }

    private static Optional<List<String>> concerns(RulePage page, RulePage.Example example) {
        int heading = page.lines().indexOf("## " + example.heading());
        return page.lines().subList(heading, example.blocks().get(0).first()).stream()
                .filter(line -> line.startsWith(CONCERNS))
                .map(line -> List.of(line.substring(CONCERNS.length()).split(", ")))
                .findFirst();
    }

    public String done(String description) {
        return edits.done(description);
    }

    /** Whether a line of the changed description belongs to what was edited or is concerned. */
    public boolean concerns(int line, String changed) {
        List<String> lines = changed.lines().toList();
        return concerned.stream()
                .flatMap(name -> name.equals("unit")
                        ? Stream.of(Edits.Stretch.head(lines))
                        : Edits.Stretch.named(name, lines).stream())
                .anyMatch(stretch -> stretch.holds(line - 1));
    }
}
