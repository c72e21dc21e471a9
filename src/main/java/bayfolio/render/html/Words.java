package bayfolio.render.html;

import bayfolio.catalog.Catalog;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What a catalog says without values, as names for templates. */
public final class Words {
    /** By language: they are the same on every page. */
    private final Map<String, View> known = new ConcurrentHashMap<>();

    public View of(Catalog screen) {
        return known.computeIfAbsent(screen.language(), it -> branch(screen.plain(), ""));
    }

    /** Words by their keys; dots in a key are steps of the name. */
    private static View branch(Map<String, String> words, String prefix) {
        View view = new View();
        Map<String, Boolean> names = new LinkedHashMap<>();
        for (String key : words.keySet()) {
            if (key.startsWith(prefix)) {
                String rest = key.substring(prefix.length());
                int dot = rest.indexOf('.');
                names.merge(dot < 0 ? rest : rest.substring(0, dot), dot >= 0, (a, b) -> a && b);
            }
        }
        names.forEach((name, inner) -> {
            if (inner) {
                view.with(name, branch(words, prefix + name + "."));
            } else {
                view.with(name, String.valueOf(words.get(prefix + name)));
            }
        });
        return view;
    }
}
