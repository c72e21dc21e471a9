package bayfolio.prose;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The words of pages that are not about one coach: titles, labels, headings, in one language. They
 * come with a theme.
 */
public record ScreenWords(String language, Map<String, String> words) {
    public ScreenWords {
        words = new TreeMap<>(words);
    }

    /**
     * @throws IllegalArgumentException when the theme has no such word
     */
    public String of(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("the theme has no word `" + key + "`"));
    }

    public Optional<String> find(String key) {
        return Optional.ofNullable(words.get(key));
    }
}
