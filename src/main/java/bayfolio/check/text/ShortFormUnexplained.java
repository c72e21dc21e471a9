package bayfolio.check.text;

import bayfolio.check.FleetRule;
import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Word;
import bayfolio.procedure.Library;
import bayfolio.procedure.Passage;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a short form in capitals, in a text for renters, that the glossary does not know. What
 * stands in code marks, or on a plate of the fleet, is copied from there.
 */
public final class ShortFormUnexplained implements FleetRule {
    private static final int LONGEST = 6;

    private static final Pattern SHORT = Pattern.compile("(?<![\\w\\u00B7-])[A-Z]{2," + LONGEST + "}(?![\\w-]| \\d)");

    private static final Pattern CAPITALS = Pattern.compile("[A-Z]{2,}");

    private static final Pattern WORD = Pattern.compile("\\b[A-Z]?[a-z]+\\b");

    /** What every renter knows: words of switches, countries. */
    private static final Set<String> WORDS = Set.of(
            "ON", "OFF", "IN", "OUT", "UP", "DOWN", "START", "STOP", "TEST", "RESET", "AUTO", "MODE", "OK", "TV", "US",
            "UK", "EU");

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Set<String> known = new HashSet<>(WORDS);
        fleet.words().forEach(word -> known.addAll(explained(word)));
        // Capitals are no short form of what is a word in small letters elsewhere.
        Text.of(fleet, library).forEach(text -> {
            words(text.own()).forEach(known::add);
            if (text.plate()) {
                capitals(text.own()).forEach(known::add);
            }
        });
        return Text.of(fleet, library)
                .filter(text -> text.forRenters() && !text.plate())
                .flatMap(text -> SHORT.matcher(own(text))
                        .results()
                        .filter(part -> !known.contains(part.group()))
                        .map(part -> finding(text, part)));
    }

    private static Set<String> explained(Word word) {
        Set<String> explained = new HashSet<>();
        Walkthrough.of(word.facts(), (type, value) -> {
            if (type.equals(Type.TEXT)) {
                capitals(value.value().toString()).forEach(explained::add);
            }
        });
        return explained;
    }

    private static Stream<String> capitals(String text) {
        return CAPITALS.matcher(text).results().map(MatchResult::group);
    }

    private static Stream<String> words(String text) {
        return WORD.matcher(text)
                .results()
                .filter(it -> it.end() - it.start() <= LONGEST)
                .map(it -> it.group().toUpperCase(Locale.ROOT));
    }

    private static String own(Text text) {
        return text.passage().map(Passage::ownWithoutPlates).orElse(text.own());
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.warning(
                        "short-form-unexplained",
                        text.at(part),
                        "`" + text.typed(part) + "` is a short form that the glossary does not explain")
                .mend("Write it out, add it to the glossary, or put it in code marks if a plate says so.");
    }
}
