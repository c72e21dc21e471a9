package bayfolio.check.procedure;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.procedure.Passage;
import bayfolio.procedure.Script;
import bayfolio.prose.Readability;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a procedure whose own words, without the names and values that are filled in, ask for more
 * than six years of school.
 */
public final class HardToRead implements FleetRule {
    private static final double HIGHEST_GRADE = 6.0;

    /** The formula says nothing of shorter texts. */
    private static final int FEWEST_WORDS = 100;

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return library.scripts().stream().flatMap(script -> check(script).stream());
    }

    private static Optional<Finding> check(Script script) {
        Readability text = Readability.of(script.passages().stream()
                .filter(passage -> passage.part() != Passage.Part.HEADING)
                .map(Passage::own)
                .collect(Collectors.joining(". ")));
        return text.words() >= FEWEST_WORDS && text.grade() > HIGHEST_GRADE
                ? Optional.of(Finding.warning(
                                "hard-to-read",
                                script.head().facts().at(Head.ID),
                                String.format(
                                        Locale.ROOT,
                                        "procedure `%s` reads at grade %.1f; the highest is %.1f",
                                        script.id(),
                                        text.grade(),
                                        HIGHEST_GRADE))
                        .mend("Use shorter sentences and shorter words."))
                : Optional.empty();
    }
}
