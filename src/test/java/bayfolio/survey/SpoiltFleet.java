package bayfolio.survey;

import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A copy of the demo fleet in which facts of one coach are missing, unreadable or to be confirmed. */
public record SpoiltFleet(Path root) {
    public static final String COACH = "dunlin";

    /** What a run printed, and how it ended. */
    public record Said(int exit, String out, String err) {}

    public static SpoiltFleet in(Path folder) throws IOException {
        Path units = Path.of("units");
        try (Stream<Path> files = Files.walk(units)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy =
                        folder.resolve("units").resolve(units.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        return new SpoiltFleet(folder);
    }

    public Path description() {
        return root.resolve("units").resolve(COACH).resolve("unit.yaml");
    }

    public String text() throws IOException {
        return Files.readString(description());
    }

    /** Replaces the first match of a pattern from some words on. */
    public SpoiltFleet without(String from, String pattern, String instead) throws IOException {
        String text = text();
        int at = text.indexOf(from);
        Matcher found = Pattern.compile(pattern).matcher(text);
        if (at < 0 || !found.find(at)) {
            throw new IllegalArgumentException(from + ": " + pattern);
        }
        Files.writeString(description(), text.substring(0, found.start()) + instead + text.substring(found.end()));
        return this;
    }

    public Said run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Folders.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Said(exit, out.toString(), err.toString());
    }
}
