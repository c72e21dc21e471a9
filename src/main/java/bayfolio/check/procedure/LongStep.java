package bayfolio.check.procedure;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import bayfolio.procedure.Passage;
import bayfolio.prose.Readability;
import java.util.stream.Stream;

/** Flags a step of more than twenty words, not counting the names and values that are filled in. */
public final class LongStep implements FleetRule {
    private static final int MOST = 20;

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return library.scripts().stream()
                .flatMap(script -> script.passages().stream())
                .filter(passage -> passage.part() == Passage.Part.STEP)
                .filter(passage -> words(passage) > MOST)
                .map(passage -> Finding.warning(
                                "long-step",
                                passage.at(),
                                "this step has " + words(passage) + " words; the most is " + MOST)
                        .mend("Split it into two steps, or leave words out."));
    }

    private static int words(Passage passage) {
        return Readability.words(passage.own());
    }
}
