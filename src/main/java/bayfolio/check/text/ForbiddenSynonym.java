package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Word;
import bayfolio.prose.WordIndex;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a word that the glossary says to avoid, in a text that American renters read. */
public final class ForbiddenSynonym implements TextRule {
    /** Finds nothing. */
    private static final Pattern NONE = Pattern.compile("(?!)");

    private final Pattern avoided;
    private final Map<String, String> instead;

    /** The first word of each. */
    private final Set<String> first;

    private ForbiddenSynonym(Pattern avoided, Map<String, String> instead) {
        this.avoided = avoided;
        this.instead = instead;
        this.first = instead.keySet().stream()
                .flatMap(words -> WordIndex.of(words).all().stream().limit(1))
                .map(WordIndex.Word::small)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Knows no glossary yet. */
    public ForbiddenSynonym() {
        this(NONE, Map.of());
    }

    @Override
    public TextRule of(Fleet fleet) {
        Map<String, String> instead = new HashMap<>();
        for (Word word : fleet.words()) {
            word.facts()
                    .all(Word.AVOID)
                    .forEach(avoided -> instead.putIfAbsent(avoided.toLowerCase(Locale.ROOT), word.word()));
        }
        return instead.isEmpty() ? this : new ForbiddenSynonym(pattern(instead.keySet()), instead);
    }

    private static Pattern pattern(Set<String> avoided) {
        return Pattern.compile(
                "(?=[" + firstLetters(avoided) + "])(?<![\\w-])(?:"
                        + avoided.stream().sorted().map(Pattern::quote).collect(Collectors.joining("|"))
                        + ")(?![\\w-])",
                Pattern.CASE_INSENSITIVE);
    }

    @Override
    public Stream<Finding> check(Text text) {
        return text.forRenters()
                        && text.american()
                        && !text.plate()
                        && text.words().holdOneOf(first)
                ? avoided.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    /** Most places of a text begin with none of them, which is told sooner so than by the words. */
    private static String firstLetters(Set<String> words) {
        return words.stream()
                .map(word -> Pattern.quote(word.substring(0, 1)))
                .distinct()
                .sorted()
                .collect(Collectors.joining());
    }

    /** Equal ones find the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ForbiddenSynonym rule && rule.instead.equals(instead);
    }

    @Override
    public int hashCode() {
        return instead.hashCode();
    }

    private Finding finding(Text text, MatchResult part) {
        String word = Objects.requireNonNull(instead.get(part.group().toLowerCase(Locale.ROOT)));
        return Finding.warning(
                        "forbidden-synonym",
                        text.at(part),
                        "`" + text.typed(part) + "` is another word for `" + word + "`")
                .mend("Write `" + word + "`, as the glossary does.");
    }
}
