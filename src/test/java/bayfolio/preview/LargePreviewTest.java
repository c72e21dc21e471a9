package bayfolio.preview;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.SmallFleet;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a fleet with more coaches than are looked at at once. */
final class LargePreviewTest {
    private static final int COACHES = 130;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void whoIsAskedForIsLookedAtFirstAndTheOthersAfterwards(@TempDir Path folder) throws Exception {
        Path root = SmallFleet.write(
                folder.resolve("fleet"),
                IntStream.range(0, COACHES).mapToObj(i -> "coach-" + i).toList());
        // Late in the order of the fleet.
        Path wrong = root.resolve("units/coach-54/unit.yaml");
        Files.writeString(wrong, Files.readString(wrong).replaceFirst("(?m)^name: .*$", "name: [broken"));
        Folder read = new Folder(root);
        try (Preview preview = Preview.start(
                root,
                0,
                new Preview.Reading() {
                    @Override
                    public Theme theme() throws IOException, UnknownThemeException {
                        return Theme.load(root, Theme.BUILT_IN);
                    }

                    @Override
                    public FleetReader.Reading fleet() {
                        return FleetReader.read(read);
                    }
                },
                line -> {})) {
            // Of the names in their order this is the last.
            HttpResponse<String> last = get(preview, "web/coach-99/switch/pump.html");
            assertThat(last.statusCode()).isEqualTo(200);
            assertThat(last.body()).contains("Coach-99");
            assertThat(listed(preview)).contains("coach-99").hasSizeLessThan(COACHES - 1);

            assertThat(get(preview, "web/coach-54/index.html").statusCode()).isEqualTo(404);
            JsonObject state = state(preview, 0);
            while (!listed(preview).containsAll(List.of("coach-0", "coach-59", "coach-98"))) {
                state = state(preview, state.get("draft").getAsInt());
            }
            assertThat(listed(preview)).hasSize(COACHES - 1);
            assertThat(state.get("findings").toString()).contains("units/coach-54/unit.yaml:");

            Path unit = root.resolve("units/coach-99/unit.yaml");
            Files.writeString(unit, Files.readString(unit).replaceFirst("(?m)^name: .*$", "name: Sanderling"));
            String page = "";
            for (int more = 0; more < 20 && !page.contains("Sanderling"); more++) {
                state = state(preview, state.get("draft").getAsInt());
                page = get(preview, "web/coach-99/switch/pump.html").body();
            }
            assertThat(page).contains("Sanderling");
            assertThat(get(preview, "web/index.html").body())
                    .contains("Sanderling")
                    .contains("Coach-8");
        }
    }

    private List<String> listed(Preview preview) throws Exception {
        String index = get(preview, "web/index.html").body();
        return IntStream.range(0, COACHES)
                .mapToObj(i -> "coach-" + i)
                .filter(coach -> index.contains("\"" + coach + "/index.html\""))
                .toList();
    }

    private JsonObject state(Preview preview, int known) throws Exception {
        return JsonParser.parseString(get(preview, ".preview/state?known=" + known + "&page=/web/index.html")
                        .body())
                .getAsJsonObject();
    }

    private HttpResponse<String> get(Preview preview, String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(preview.origin() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
