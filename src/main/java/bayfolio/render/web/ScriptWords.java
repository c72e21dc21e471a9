package bayfolio.render.web;

import bayfolio.catalog.Catalogs;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What scripts say, in a file for each language: once for all pages, and not in each. */
final class ScriptWords {
    /** The first parts of the keys of such messages. */
    private static final List<String> SAID = List.of("copying", "offline", "pace", "search");

    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    private ScriptWords() {}

    /** The file of a language, or of that of which it is a regional one. */
    static String file(Catalogs catalogs, String language) {
        String there = catalogs.languages().contains(language) ? language : Catalogs.main(language);
        return "words-" + (catalogs.languages().contains(there) ? there : Catalogs.ENGLISH) + ".js";
    }

    static Map<String, byte[]> files(Catalogs catalogs) {
        Map<String, byte[]> files = new TreeMap<>();
        for (String language : catalogs.languages()) {
            Map<String, Map<String, String>> said = new TreeMap<>();
            catalogs.of(language).plain().forEach((key, words) -> {
                int dot = key.indexOf('.');
                if (dot > 0 && SAID.contains(key.substring(0, dot))) {
                    said.computeIfAbsent(key.substring(0, dot), it -> new TreeMap<>())
                            .put(key.substring(dot + 1), words);
                }
            });
            String script = "window.bayfolio=Object.assign(window.bayfolio||{},{words:" + GSON.toJson(said) + "});\n";
            files.put(file(catalogs, language), script.getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }
}
