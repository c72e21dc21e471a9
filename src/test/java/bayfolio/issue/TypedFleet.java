package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A fleet folder of which somebody types commands and edits files. */
public record TypedFleet(Path root) {
    /** What a command said, on both channels, and its exit code behind. */
    public String said(String... words) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said, true);
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--fleet", root.toString()));
        int exit = Folders.run(writer, writer, all.toArray(String[]::new));
        return said + "exit " + exit + "\n";
    }

    public void edit(String file, String before, String after) throws IOException {
        Path path = root.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(before);
        Files.writeString(path, text.replace(before, after));
    }
}
