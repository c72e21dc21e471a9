package bayfolio.catalog;

import bayfolio.source.Located;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * What a theme has to say, in all its languages: a file for each, {@code words-en.properties}, and one of differences for a
 * region, {@code words-en-GB.properties}. What a language lacks is said in English.
 */
public final class Catalogs {
    /** The language that everything is there in. */
    public static final String ENGLISH = "en";

    private static final String DEFAULT = "en-US";

    private static final int MOST_COUNTED = 3000;

    private final Map<String, List<Words>> files;
    private final Map<String, Catalog> made = new ConcurrentHashMap<>();

    /**
     * The messages of one file by their keys.
     *
     * @param builtIn whether the program carries it
     */
    public record Words(Map<String, Located<String>> messages, boolean builtIn) {
        public Words {
            messages = Map.copyOf(messages);
        }
    }

    /**
     * @param files by language; of several, a later one changes what an earlier one says
     */
    public Catalogs(Map<String, List<Words>> files) {
        this.files = new TreeMap<>(files);
    }

    /** All that there are words for: {@code en}, or {@code en-GB} for one region alone. */
    public List<String> languages() {
        return List.copyOf(files.keySet());
    }

    public List<Words> files(String language) {
        return files.getOrDefault(language, List.of());
    }

    /** Whether there are words for a language, or for the language of which it is a regional one. */
    public boolean has(String language) {
        return files.containsKey(language) || files.containsKey(main(language));
    }

    /** Without its region: {@code en}. */
    public static String main(String language) {
        int region = language.indexOf('-');
        return region < 0 ? language : language.substring(0, region);
    }

    /** The first of these languages that there are words for; English where there is none, which the check tells. */
    public Catalog of(List<String> languages) {
        return of(languages.stream().filter(this::has).findFirst().orElse(DEFAULT));
    }

    public Catalog of(String language) {
        return made.computeIfAbsent(language, it -> {
            Map<String, Located<String>> messages = new LinkedHashMap<>();
            List<String> layers = new ArrayList<>(List.of(ENGLISH, main(it), it));
            layers.stream()
                    .distinct()
                    .flatMap(layer -> files(layer).stream())
                    .forEach(words -> words.messages().forEach((key, pattern) -> {
                        // What cannot be said is told by the check; until it is mended the English message stays.
                        if (words.builtIn() || sayable(pattern.value(), messages.get(key))) {
                            messages.put(key, pattern);
                        }
                    }));
            return new Catalog(it, messages);
        });
    }

    private static boolean sayable(String pattern, @Nullable Located<String> english) {
        try {
            Message message = Message.of(pattern);
            return english == null || Message.of(english.value()).arguments().containsAll(message.arguments());
        } catch (IllegalArgumentException broken) {
            return false;
        }
    }

    /** The forms that a plural of a language has, for numbers as they stand in a handbook: up to some thousands, with tenths. */
    public static Set<String> pluralForms(String language) {
        PluralRules rules = PluralRules.forLocale(ULocale.forLanguageTag(language));
        Set<String> forms = new TreeSet<>();
        for (int i = 0; i <= MOST_COUNTED; i++) {
            forms.add(rules.select(i));
            forms.add(rules.select(i / 10.0));
        }
        return forms;
    }

    /** Where a message of a language is written; what it lacks is in English. */
    public Optional<Located<String>> english(String key) {
        return Optional.ofNullable(of(ENGLISH).patterns().get(key));
    }
}
