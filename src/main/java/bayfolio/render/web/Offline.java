package bayfolio.render.web;

import bayfolio.source.Digest;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a phone needs to keep the handbook of a coach: the theme's script with the edition and the list of pictures, and all
 * texts in one file. What hundreds of pages have in common is packed once, and asked for once.
 */
final class Offline {
    /** What the script has in their place. */
    private static final String FILES = "\"@files@\"";

    private static final String EDITION = "@edition@";
    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    private record Bundle(String edition, Map<String, String> files) {}

    private final String edition;
    private final SortedMap<String, byte[]> texts = new TreeMap<>();
    private final SortedMap<String, byte[]> pictures = new TreeMap<>();

    /**
     * @param kept files of the coach, by their paths in its folder
     * @param assets that all coaches share, by their paths below the root
     */
    Offline(Map<String, byte[]> kept, Map<String, byte[]> assets) {
        kept.forEach(this::add);
        assets.forEach((path, bytes) -> {
            // Those are for the phone, which has them when it puts the handbook on its screen.
            if (!Manifest.isIcon(path)) {
                add("../" + path, bytes);
            }
        });
        // Another edition as soon as a byte of a file is.
        List<byte[]> all = new ArrayList<>();
        for (Map<String, byte[]> files : List.of(texts, pictures)) {
            all.add(String.join("\n", files.keySet()).getBytes(StandardCharsets.UTF_8));
            all.addAll(files.values());
        }
        edition = Digest.of(all);
    }

    private void add(String path, byte[] bytes) {
        (path.matches(".*\\.(html|css|js|json|svg|txt)") ? texts : pictures).put(path, bytes);
    }

    byte[] worker(String script) {
        String list = pictures.keySet().stream().map(file -> '"' + file + '"').collect(Collectors.joining(",\n"));
        return script.replace(FILES, list).replace(EDITION, edition).getBytes(StandardCharsets.UTF_8);
    }

    /** All texts by their paths, and of which edition they are. */
    byte[] bundle() {
        Map<String, String> files = new LinkedHashMap<>();
        texts.forEach((path, bytes) -> files.put(path, new String(bytes, StandardCharsets.UTF_8)));
        return GSON.toJson(new Bundle(edition, files)).getBytes(StandardCharsets.UTF_8);
    }
}
