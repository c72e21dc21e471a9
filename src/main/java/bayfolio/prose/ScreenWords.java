package bayfolio.prose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The words of pages that are not about one coach: titles, labels, headings, in one language. They
 * come with a theme.
 *
 * @param language what pages are written in
 * @param languages all that the theme has words for: {@code en}, or {@code en-GB} for one region alone
 */
public record ScreenWords(String language, Map<String, String> words, List<String> languages) {
    public ScreenWords {
        words = new TreeMap<>(words);
        languages = List.copyOf(languages);
    }

    /** Words of a theme that has no other language. */
    public ScreenWords(String language, Map<String, String> words) {
        this(language, words, List.of(language));
    }

    /** Whether the theme has words for a language, or for the language of which it is a regional one. */
    public boolean has(String other) {
        return languages.contains(other) || languages.contains(other.replaceFirst("-.*", ""));
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
