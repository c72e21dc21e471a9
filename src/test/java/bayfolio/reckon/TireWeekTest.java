package bayfolio.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weeks of the calendar, by the table of ISO weeks of those years. */
class TireWeekTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1423 | 2023-04-03
            0924 | 2024-02-26
            DOT U2LL LMLR 3621 | 2021-09-06
            week 18 of 2024 | 2024-04-29
            week 40 of 2023 (last four figures 4023) | 2023-10-02
            week 6 of 2024 (last four figures 0624) | 2024-02-05
            14/2023 | 2023-04-03
            """)
    void aWeekIsReadHoweverItIsWritten(String wall, LocalDate monday) {
        assertThat(TireWeek.of(wall)).contains(monday);
    }

    /** No year, no such week, two weeks, no figures at all. */
    @ParameterizedTest
    @ValueSource(strings = {"week 18", "18", "5823", "0023", "1423 front, 0924 rear", "new in spring", "142", "14231"})
    void nothingIsMadeUpOfTheRest(String wall) {
        assertThat(TireWeek.of(wall)).isEmpty();
    }
}
