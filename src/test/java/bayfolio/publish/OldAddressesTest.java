package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Addresses that were given out once lead on: each page is there, and each place on it. */
final class OldAddressesTest {
    /** A list for each day on which addresses changed, of all that there were before: a page, and the places on it. */
    private static final Path LISTS = Path.of("src/test/resources/bayfolio/addresses");

    @Test
    void everyAddressThatWasGivenOutLeadsOn() throws IOException {
        List<String> lost = new ArrayList<>();
        int checked = 0;
        try (Stream<Path> lists = Files.list(LISTS)) {
            for (Path list : lists.sorted().toList()) {
                for (String line : Files.readAllLines(list)) {
                    String[] words = line.split(" ");
                    Path file = DemoFleet.web().resolve(words[0]);
                    Document page = Files.exists(file) ? Jsoup.parse(Files.readString(file)) : new Document("");
                    for (String place : words) {
                        boolean there = place.startsWith("#")
                                ? page.getElementById(place.substring(1)) != null
                                : Files.exists(file);
                        checked++;
                        if (!there) {
                            lost.add(words[0] + (place.startsWith("#") ? place : ""));
                        }
                    }
                }
            }
        }

        assertThat(lost).isEmpty();
        assertThat(checked).isGreaterThan(4000);
    }
}
