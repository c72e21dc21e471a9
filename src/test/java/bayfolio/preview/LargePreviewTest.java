package bayfolio.preview;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.SmallFleet;
import bayfolio.read.Folder;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a fleet with more coaches than are looked at at once. */
final class LargePreviewTest {
    private static final int COACHES = 130;

    @TempDir
    private Path folder;

    @Test
    void whoIsAskedForIsLookedAtFirstAndTheOthersAfterwards() throws Exception {
        Path root = SmallFleet.write(folder.resolve("fleet"), SmallFleet.ids(COACHES));
        // Late in the order of the fleet.
        Path wrong = root.resolve("units/coach-54/unit.yaml");
        Files.writeString(wrong, Files.readString(wrong).replaceFirst("(?m)^name: .*$", "name: [broken"));
        try (Preview preview = Preview.start(root, 0, Visitor.reading(new Folder(root)), line -> {})) {
            Visitor visitor = new Visitor(preview);
            // Of the names in their order this is the last.
            HttpResponse<String> last = visitor.get("web/coach-99/switch/pump.html");
            assertThat(last.statusCode()).isEqualTo(200);
            assertThat(last.body()).contains("Coach-99");
            assertThat(listed(visitor)).contains("coach-99").hasSizeLessThan(COACHES - 1);

            assertThat(visitor.get("web/coach-54/index.html").statusCode()).isEqualTo(404);
            JsonObject state = visitor.state(0, "/web/index.html");
            while (!listed(visitor).containsAll(List.of("coach-0", "coach-59", "coach-98"))) {
                state = next(visitor, state);
            }
            assertThat(listed(visitor)).hasSize(COACHES - 1);
            assertThat(state.get("findings").toString()).contains("units/coach-54/unit.yaml:");

            Path unit = root.resolve("units/coach-99/unit.yaml");
            Files.writeString(unit, Files.readString(unit).replaceFirst("(?m)^name: .*$", "name: Sanderling"));
            for (int more = 0; more < 20 && !pump(visitor).contains("Sanderling"); more++) {
                state = next(visitor, state);
            }
            assertThat(pump(visitor)).contains("Sanderling");
            assertThat(visitor.get("web/index.html").body())
                    .contains("Sanderling")
                    .contains("Coach-98");
        }
    }

    @Test
    void whatIsWrongWithTheFleetIsToldAndWhatIsGoneIsNot() throws Exception {
        Path root = SmallFleet.write(folder.resolve("fleet"), List.of("coach-0", "coach-54", "coach-99"));
        Path wrong = root.resolve("units/coach-54/unit.yaml");
        Files.writeString(wrong, Files.readString(wrong).replaceFirst("(?m)^name: .*$", "name: [broken"));
        try (Preview preview = Preview.start(root, 0, Visitor.reading(new Folder(root)), line -> {})) {
            Visitor visitor = new Visitor(preview);
            JsonObject state = visitor.state(0, "/web/index.html");
            assertThat(state.get("findings").toString()).contains("units/coach-54/unit.yaml:");

            Path facts = root.resolve("units/fleet.yaml");
            String sound = Files.readString(facts);
            Files.writeString(facts, "name: [broken");
            for (int more = 0; more < 20 && isSound(state); more++) {
                state = next(visitor, state);
            }
            assertThat(isSound(state)).isFalse();
            assertThat(pump(visitor)).contains("Coach-99");
            assertThat(visitor.get("web/index.html").statusCode()).isEqualTo(200);

            Files.writeString(facts, sound);
            try (Stream<Path> all = Files.walk(wrong.getParent())) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
            for (int more = 0; more < 20 && !(isSound(state) && isWithoutFindings(state)); more++) {
                state = next(visitor, state);
            }
            assertThat(isSound(state)).isTrue();
            assertThat(isWithoutFindings(state)).isTrue();
            assertThat(pump(visitor)).contains("Coach-99");
        }
    }

    private static boolean isSound(JsonObject state) {
        return state.get("failed").getAsString().isEmpty()
                && !state.get("findings").toString().contains("units/fleet.yaml:");
    }

    private static boolean isWithoutFindings(JsonObject state) {
        return !state.get("findings").toString().contains("coach-54");
    }

    /** The next draft, or the same one after a while: where it could not be read there is none. */
    private static JsonObject next(Visitor visitor, JsonObject state) throws Exception {
        Thread.sleep(100);
        return visitor.state(state.get("draft").getAsInt(), "/web/index.html");
    }

    private static String pump(Visitor visitor) throws Exception {
        return visitor.get("web/coach-99/switch/pump.html").body();
    }

    private static List<String> listed(Visitor visitor) throws IOException, InterruptedException {
        String index = visitor.get("web/index.html").body();
        return SmallFleet.ids(COACHES).stream()
                .filter(coach -> index.contains("\"" + coach + "/index.html\""))
                .toList();
    }
}
