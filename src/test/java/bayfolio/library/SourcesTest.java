package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.model.PublishedSource;
import bayfolio.read.FleetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What backs the shared library is named as published sources are. */
final class SourcesTest {
    private static final Pattern WEB_SITE = Pattern.compile(
            "\\b(?:https?://|www\\.)|\\b[a-z0-9-]+\\.(?:com|org|net|info|gov|eu|de|at|ch|fr|it|nl|ca|au|nz|uk|no|se)\\b");

    @Test
    void noSourceNamesAWebSite() throws Exception {
        try (Stream<Path> paths = Files.walk(Path.of("units/shared"))) {
            List<Path> texts =
                    paths.filter(path -> path.toString().matches(".*\\.yaml")).toList();
            assertThat(texts).hasSizeGreaterThan(4);
            for (Path text : texts) {
                assertThat(WEB_SITE.matcher(Files.readString(text)).results().map(it -> it.group()))
                        .as(text.toString())
                        .isEmpty();
            }
        }
    }

    /** Common practice is none. */
    @Test
    void eachSourceSaysHowFarItCarries() {
        List<PublishedSource> sources =
                FleetReader.read(Folders.at(Path.of(""))).fleet().sources();

        assertThat(sources)
                .filteredOn(source -> source.status().isEmpty())
                .extracting(PublishedSource::id)
                .containsExactly("common-practice");
        assertThat(sources)
                .filteredOn(source -> source.title().matches(".*(?i:common practice).*"))
                .hasSize(1);
    }
}
