package bayfolio.render.web;

import bayfolio.source.Digest;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files that all pages share, in a folder named by what is in it. A browser may keep them for good: another style is
 * another address, and one refers to the other as it did in the theme.
 */
record Assets(String folder, Map<String, byte[]> files) {
    private static final Pattern FOLDER = Pattern.compile("assets/[0-9a-f]{12}/");

    Assets {
        files = new TreeMap<>(files);
    }

    /** @param files by their paths in the theme's folder of them */
    static Assets of(Map<String, byte[]> files) {
        return new Assets("assets/" + Digest.of(new TreeMap<>(files).values()) + "/", files);
    }

    boolean has(String file) {
        return files.containsKey(file);
    }

    /** By their paths below the root of the site. */
    Map<String, byte[]> placed() {
        Map<String, byte[]> placed = new TreeMap<>();
        files.forEach((path, bytes) -> placed.put(folder + path, bytes));
        return placed;
    }

    /** The folder that a page refers to, below the root; empty where it refers to none. */
    static String folder(byte[] page) {
        Matcher folder = FOLDER.matcher(new String(page, StandardCharsets.UTF_8));
        return folder.find() ? folder.group() : "";
    }
}
