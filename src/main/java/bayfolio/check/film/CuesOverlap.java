package bayfolio.check.film;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Seconds;
import bayfolio.model.Chapter;
import bayfolio.model.Film;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a chapter that begins before the one above it is over: nobody could tell what is seen then. */
public final class CuesOverlap implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().films().stream().flatMap(CuesOverlap::check);
    }

    private static Stream<Finding> check(Film film) {
        List<Finding> findings = new ArrayList<>();
        double over = 0;
        for (Chapter chapter : film.chapters()) {
            Optional<Located<Seconds>> from = chapter.facts().located(Chapter.FROM);
            if (from.isPresent() && from.get().value().value() < over) {
                findings.add(Finding.error(
                                "cues-overlap", from.get().at(), "this cue begins before the one above it is over")
                        .mend("Let each begin where the one above it ends, or later, in the order of the film."));
            }
            over = Math.max(over, chapter.facts().get(Chapter.TO).value());
        }
        return findings.stream();
    }
}
