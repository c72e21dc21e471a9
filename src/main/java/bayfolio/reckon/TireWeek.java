package bayfolio.reckon;

import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The week in which a tire was made, from what is copied off its wall: {@code 1423}, {@code week 14 of 2023}, {@code DOT
 * … 1423}. Nothing where that can mean two weeks, or none.
 */
public final class TireWeek {
    private static final Pattern IN_WORDS = Pattern.compile("(?<![0-9])([0-9]{1,2})[^0-9]{1,12}(20[0-9]{2})(?![0-9])");
    private static final Pattern CODE = Pattern.compile("(?<![0-9])([0-9]{2})([0-9]{2})(?![0-9])");
    private static final int LAST_WEEK = 53;

    private TireWeek() {}

    /** The Monday of that week. */
    public static Optional<LocalDate> of(String wall) {
        List<MatchResult> words = IN_WORDS.matcher(wall).results().toList();
        List<LocalDate> weeks = (words.isEmpty() ? CODE.matcher(wall).results() : words.stream())
                .flatMap(found -> monday(number(found, 1), number(found, 2) % 100).stream())
                .distinct()
                .toList();
        return weeks.size() == 1 ? Optional.of(weeks.get(0)) : Optional.empty();
    }

    private static int number(MatchResult found, int group) {
        return Integer.parseInt(found.group(group));
    }

    /** Codes of four digits began with the year 2000. */
    private static Optional<LocalDate> monday(int week, int year) {
        return week < 1 || week > LAST_WEEK
                ? Optional.empty()
                : Optional.of(Year.of(2000 + year)
                        .atDay(4)
                        .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, Math.min(week, 52))
                        .with(java.time.DayOfWeek.MONDAY));
    }
}
