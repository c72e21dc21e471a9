package bayfolio.preview;

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

/** Who looks at pages of a preview. */
public record Visitor(Preview preview, HttpClient client) {
    public Visitor(Preview preview) {
        this(preview, HttpClient.newHttpClient());
    }

    /** A fleet folder in the look that the program brings along, as the program itself reads it. */
    public static Preview.Reading reading(Folder folder) {
        return new Preview.Reading() {
            @Override
            public Theme theme() throws IOException, UnknownThemeException {
                return Theme.load(folder.root(), Theme.BUILT_IN);
            }

            @Override
            public FleetReader.Reading fleet() {
                return FleetReader.read(folder);
            }
        };
    }

    /** @param path without a slash at its beginning */
    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(preview.origin() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** What a page is told as soon as there is another draft than the one that it knows. */
    JsonObject state(int known, String page) throws IOException, InterruptedException {
        return JsonParser.parseString(
                        get(".preview/state?known=" + known + "&page=" + page).body())
                .getAsJsonObject();
    }
}
