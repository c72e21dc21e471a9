package bayfolio.render.web;

import bayfolio.document.Handbook;
import bayfolio.render.Output;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a phone must know to put a handbook on its first screen, and what the list of coaches says of it.
 *
 * @see <a href="https://www.w3.org/TR/appmanifest/">Web Application Manifest</a>
 */
final class Manifest {
    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    private static final Map<String, String> ICONS = Map.of(
            "icon.svg", "any", "icon-192.png", "192x192", "icon-512.png", "512x512", "icon-maskable.png", "512x512");

    /** @param purpose whether a phone may cut it round */
    private record Icon(String src, String sizes, String type, String purpose) {}

    private Manifest() {}

    /** @param path of an asset */
    static boolean isIcon(String path) {
        return path.endsWith(".png") && ICONS.containsKey(path.substring(path.lastIndexOf('/') + 1));
    }

    /** @param look colors and display, as the theme has them */
    static byte[] of(JsonObject look, Handbook handbook, Assets assets) {
        JsonObject manifest = look.deepCopy();
        manifest.addProperty("id", "./");
        manifest.addProperty("start_url", "index.html");
        manifest.addProperty("scope", "./");
        manifest.addProperty("lang", handbook.language());
        Handbook.Cover cover = handbook.cover();
        manifest.addProperty("name", cover.name());
        manifest.addProperty("short_name", cover.number().isEmpty() ? cover.name() : cover.number());
        manifest.addProperty("description", cover.kind());
        // Nothing that a phone knows: the list of coaches shows it when this coach is not made anew.
        cover.photo().ifPresent(photo -> {
            manifest.addProperty("picture", WebSite.photo(photo.id()));
            manifest.addProperty("shows", photo.alt());
        });
        List<Icon> icons = new ArrayList<>();
        ICONS.entrySet().stream()
                .filter(icon -> assets.has(icon.getKey()))
                .sorted(Map.Entry.comparingByKey())
                .forEach(icon -> icons.add(new Icon(
                        "../" + assets.folder() + icon.getKey(),
                        icon.getValue(),
                        icon.getKey().endsWith(".svg") ? "image/svg+xml" : "image/png",
                        icon.getKey().contains("maskable") ? "maskable" : "any")));
        manifest.add("icons", GSON.toJsonTree(icons));
        return GSON.toJson(manifest).getBytes(StandardCharsets.UTF_8);
    }

    /** What was written of a coach when it was published last. */
    static Output.Entry read(String unit, byte[] manifest) {
        JsonObject read = GSON.fromJson(new String(manifest, StandardCharsets.UTF_8), JsonObject.class);
        String name = text(read, "name");
        String number = text(read, "short_name");
        String picture = text(read, "picture");
        return new Output.Entry(
                unit,
                name,
                number.equals(name) ? "" : number,
                text(read, "description"),
                picture.isEmpty() ? "" : unit + "/" + picture,
                text(read, "shows"));
    }

    private static String text(JsonObject object, String key) {
        return object.has(key) ? object.get(key).getAsString() : "";
    }
}
