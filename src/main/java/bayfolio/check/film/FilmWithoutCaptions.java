package bayfolio.check.film;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Film;
import java.util.stream.Stream;

/**
 * Flags a film in which something may be said that nobody can read: beside a running generator, or for those who do not hear.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#captions-prerecorded">WCAG 2.2, 1.2.2</a>
 */
public final class FilmWithoutCaptions implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().films().stream()
                .filter(film -> !film.facts().has(Film.CAPTIONS)
                        && !film.facts().find(Film.SILENT).orElse(false))
                .map(film -> Finding.warning(
                                "film-without-captions",
                                film.at(),
                                "film `" + film.id()
                                        + "` has no captions, so that it tells nothing to whoever cannot hear it")
                        .mend("Name a WebVTT file under `captions`, or write `silent: yes` where nothing is said."));
    }
}
