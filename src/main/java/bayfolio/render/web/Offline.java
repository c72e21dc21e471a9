package bayfolio.render.web;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.source.Digest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The script that keeps the handbook of a coach on the phone: the theme's, with the list of all files and their edition. */
final class Offline {
    /** What the script has in their place. */
    private static final String FILES = "\"@files@\"";

    private static final String EDITION = "@edition@";

    private Offline() {}

    /**
     * @param pages of the coach, by their paths in its folder
     * @param assets that all coaches share, by their paths below the root
     */
    static byte[] worker(String script, Handbook handbook, Map<String, byte[]> pages, Map<String, byte[]> assets) {
        SortedSet<String> files = new TreeSet<>(pages.keySet());
        assets.keySet().forEach(path -> files.add("../" + path));
        handbook.pages().stream()
                .flatMap(Page::walk)
                .filter(Content.Picture.class::isInstance)
                .forEach(picture -> files.add(Pictures.path(((Content.Picture) picture).photo())));
        String list = files.stream().map(file -> '"' + file + '"').collect(Collectors.joining(",\n"));
        return script.replace(FILES, list)
                .replace(EDITION, edition(list, pages, assets))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Another one as soon as a byte of a page is. */
    private static String edition(String list, Map<String, byte[]> pages, Map<String, byte[]> assets) {
        List<byte[]> all = new ArrayList<>(List.of(list.getBytes(StandardCharsets.UTF_8)));
        all.addAll(pages.values());
        all.addAll(assets.values());
        return Digest.of(all);
    }
}
