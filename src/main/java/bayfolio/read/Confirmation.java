package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.model.Difference;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;

/**
 * A writer's word that what a coach says otherwise than its model is still so: beside each of it the digest of what the model says now.
 *
 * @param still what is said to be true that was not before
 * @param text of the coach's file with that in it
 */
public record Confirmation(List<Difference.Override> still, String text) {
    /**
     * @param things what it is said of: ids of things or keys; all where there are none
     * @throws RewriteException where the file is written in a way that no program can edit
     */
    public static Confirmation of(SourceFile file, Difference difference, List<String> things) throws RewriteException {
        List<Edit> edits = new ArrayList<>();
        List<Difference.Override> still = new ArrayList<>();
        for (Difference.Override override : difference.overrides()) {
            boolean meant = asked(override.way(), things) && !override.same();
            if (meant
                    && override.said()
                            .filter(it -> it.value().equals(override.digest()))
                            .isEmpty()) {
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
        return new Confirmation(still, Rewrite.of(file, edits));
    }

    private static boolean asked(Steps way, List<String> things) {
        return things.isEmpty() || way.all().stream().anyMatch(step -> things.contains(step.toString()));
    }
}
