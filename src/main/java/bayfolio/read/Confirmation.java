package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.model.Difference;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A writer's word that what a coach says otherwise than its model is still so: beside each of it the digest of what the model says now.
 */
public final class Confirmation {
    private final List<Difference.Override> still;
    private final SourceFile file;
    private final String text;
    private final Model model;

    private Confirmation(List<Difference.Override> still, SourceFile file, String text, Model model) {
        this.still = List.copyOf(still);
        this.file = file;
        this.text = text;
        this.model = model;
    }

    /** What is said to be so that was not before. */
    public List<Difference.Override> still() {
        return still;
    }

    /** The file of the coach with the digests in it. */
    String text() {
        return text;
    }

    /**
     * @param things what it is said of: ids of things or keys; all where there are none
     * @throws RewriteException where the file is written in a way that no program can edit
     */
    public static Confirmation of(Folder folder, String coach, Shown shown, List<String> things)
            throws IOException, RewriteException {
        String path = "units/" + coach + "/unit.yaml";
        SourceFile file = new SourceFile(path, Files.readString(folder.root().resolve(path)));
        return of(file, shown, things);
    }

    static Confirmation of(SourceFile file, Shown shown, List<String> things) throws RewriteException {
        Difference difference = shown.difference().orElseThrow();
        List<Edit> edits = new ArrayList<>();
        List<Difference.Override> still = new ArrayList<>();
        for (Difference.Override override : difference.overrides()) {
            boolean known = override.said()
                    .filter(it -> it.value().equals(override.digest()))
                    .isPresent();
            if (asked(override.way(), things) && !override.same() && !known) {
                still.add(override);
                edits.add(new Edit.Put(
                        override.record()
                                .key(Aside.MODEL_SAID.name())
                                .key(override.way().last().toString()),
                        Value.text(override.digest())));
            }
        }
        for (Difference.Said idle : difference.idle()) {
            if (asked(idle.way(), things)) {
                edits.add(new Edit.Remove(idle.way()
                        .around()
                        .key(Aside.MODEL_SAID.name())
                        .key(idle.way().last().toString())));
            }
        }
        return new Confirmation(
                still, file, Rewrite.of(file, edits), shown.model().orElseThrow());
    }

    private static boolean asked(Steps way, List<String> things) {
        return things.isEmpty() || way.all().stream().anyMatch(step -> things.contains(step.toString()));
    }

    /** Writes it, and beside the model the schema that offers its ids. */
    public void write(Folder folder) throws IOException {
        Path description = folder.root().resolve(file.path());
        if (!text.equals(file.text())) {
            new Swap(description, file.text().getBytes(StandardCharsets.UTF_8), text.getBytes(StandardCharsets.UTF_8))
                    .make();
        }
        model.writeSchema(folder);
    }
}
