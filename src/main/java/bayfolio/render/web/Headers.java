package bayfolio.render.web;

import bayfolio.document.Content;
import bayfolio.source.Resource;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What a host is to say with each file, as many hosts of static sites read it from a file: how long it may be kept, and what
 * the policy within a page cannot say.
 */
final class Headers {
    static final String FILE = "_headers";

    private static final String RULES = "headers.txt";
    private static final String BASE = "@base@";
    private static final String PATH = "@path@";

    private Headers() {}

    /**
     * @param base the path at the host that the site is published in, with a slash at both ends
     * @param pages paths of those that belong to no coach
     * @param coaches the folders of coaches
     */
    static byte[] of(String base, List<String> pages, List<String> coaches) {
        List<String> paths = new ArrayList<>(List.of(base));
        pages.forEach(page -> paths.add(base + page));
        paths.add(base + Content.Label.SHORT + "/*");
        coaches.forEach(coach -> paths.add(base + coach + "/*"));
        StringBuilder file = new StringBuilder();
        for (String rule : rules().split("\n\n", -1)) {
            // No header is said by two rules for one file: hosts join what they say.
            for (String path : rule.startsWith(PATH) ? paths : List.of("")) {
                file.append(file.isEmpty() ? "" : "\n")
                        .append(rule.replace(BASE, base).replace(PATH, path).strip())
                        .append('\n');
            }
        }
        return file.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String rules() {
        return new String(Resource.bytes(RULES), StandardCharsets.UTF_8);
    }
}
