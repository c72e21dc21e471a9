package bayfolio.render.web;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What a host is to say with each file, as many hosts of static sites read it from a file: how long it may be kept, and what
 * the policy within a page cannot say.
 */
final class Headers {
    static final String FILE = "_headers";

    private static final String ALWAYS = "  X-Content-Type-Options: nosniff\n  Referrer-Policy: no-referrer\n"
            + "  Content-Security-Policy: frame-ancestors 'none'\n";

    private Headers() {}

    /** @param coaches the folders of coaches */
    static byte[] of(List<String> coaches) {
        // One rule for each file: hosts join what several say.
        StringBuilder file =
                new StringBuilder("/assets/*\n  Cache-Control: public, max-age=31536000, immutable\n" + ALWAYS);
        rule(file, "/");
        rule(file, "/index.html");
        coaches.forEach(coach -> rule(file, "/" + coach + "/*"));
        return file.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void rule(StringBuilder file, String path) {
        file.append('\n').append(path).append("\n  Cache-Control: no-cache\n").append(ALWAYS);
    }
}
