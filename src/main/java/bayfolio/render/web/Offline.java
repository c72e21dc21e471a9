package bayfolio.render.web;

import bayfolio.source.Digest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The script that keeps the handbook of a coach on the phone: the theme's, with the list of all files and their edition. */
final class Offline {
    /** What the script has in their place. */
    private static final String FILES = "\"@files@\"";

    private static final String EDITION = "@edition@";

    private Offline() {}

    /**
     * @param kept files of the coach, by their paths in its folder
     * @param assets that all coaches share, by their paths below the root
     */
    static byte[] worker(String script, Map<String, byte[]> kept, Map<String, byte[]> assets) {
        SortedMap<String, byte[]> files = new TreeMap<>(kept);
        assets.forEach((path, bytes) -> files.put("../" + path, bytes));
        String list = files.keySet().stream().map(file -> '"' + file + '"').collect(Collectors.joining(",\n"));
        List<byte[]> all = new ArrayList<>(List.of(list.getBytes(StandardCharsets.UTF_8)));
        all.addAll(files.values());
        // Another edition as soon as a byte of a file is.
        return script.replace(FILES, list).replace(EDITION, Digest.of(all)).getBytes(StandardCharsets.UTF_8);
    }
}
