package bayfolio.check.text;

import bayfolio.check.FleetRule;
import bayfolio.check.Text;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Word;
import bayfolio.procedure.Library;
import bayfolio.procedure.SourceBlock;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a short form in capitals, in a text for renters, that the glossary does not know. What
 * stands in code marks, or on a plate of the fleet, is copied from there.
 */
public final class ShortFormUnexplained implements FleetRule {
    private static final int LONGEST = 6;

    private static final Pattern SHORT = Pattern.compile("(?<![\\w\\u00B7-])[A-Z]{2," + LONGEST + "}(?![\\w-]| \\d)");

    private static final Pattern CAPITALS = Pattern.compile("[A-Z]{2,}");

    /** What every renter knows: words of switches, countries. */
    private static final Set<String> WORDS = Set.of(
            "ON", "OFF", "IN", "OUT", "UP", "DOWN", "START", "STOP", "TEST", "RESET", "AUTO", "MODE", "OK", "TV", "US",
            "UK", "EU");

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Set<String> explained = new HashSet<>(WORDS);
        fleet.words().forEach(word -> explained.addAll(explained(word)));
        List<Short> unexplained = Text.each(
                fleet,
                library,
                explained,
                (text, known) -> text.forRenters() && !text.plate()
                        ? SHORT.matcher(own(text))
                                .results()
                                .filter(part -> !known.contains(part.group()))
                                .map(part -> new Short(text, part))
                        : Stream.empty());
        if (unexplained.isEmpty()) {
            return Stream.of();
        }
        // Capitals are no short form of what is a word in small letters elsewhere. Procedures have most of them, the
        // first coaches nearly all others.
        Set<String> asked = unexplained.stream().map(it -> it.part.group()).collect(Collectors.toUnmodifiableSet());
        Set<String> unknown = new HashSet<>(asked);
        unknown.removeAll(Set.copyOf(Text.ofScripts(fleet, library, asked, ShortFormUnexplained::words)));
        Iterator<Text> facts = Text.ofFacts(fleet).iterator();
        while (!unknown.isEmpty() && facts.hasNext()) {
            words(facts.next(), Set.copyOf(unknown)).toList().forEach(unknown::remove);
        }
        return unexplained.stream()
                .filter(it -> unknown.contains(it.part.group()))
                .map(it -> finding(it.text, it.part));
    }

    private static Stream<String> words(Text text, Set<String> asked) {
        return Stream.concat(
                inSmallLetters(text, asked),
                text.plate() ? capitals(text.own()).filter(asked::contains) : Stream.empty());
    }

    private record Short(Text text, MatchResult part) {}

    private static Set<String> explained(Word word) {
        Set<String> explained = new HashSet<>();
        FactVisitor.of(word.facts(), (type, value) -> {
            if (Type.ofWords(type)) {
                capitals(value.value().toString()).forEach(explained::add);
            }
        });
        return explained;
    }

    private static Stream<String> capitals(String text) {
        return CAPITALS.matcher(text).results().map(MatchResult::group);
    }

    /** Those of a text that are asked for and stand there in small letters. */
    private static Stream<String> inSmallLetters(Text text, Set<String> asked) {
        return text.words().all().stream()
                .filter(word -> word.text().length() > 1
                        && Character.isLowerCase(word.text().charAt(1)))
                .map(word -> word.small().toUpperCase(Locale.ROOT))
                .filter(asked::contains)
                .distinct();
    }

    private static String own(Text text) {
        return text.passage().map(SourceBlock::ownWithoutPlates).orElse(text.own());
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.warning(
                        "short-form-unexplained",
                        text.at(part),
                        "`" + text.typed(part) + "` is a short form that the glossary does not explain")
                .mend("Write it out, add it to the glossary, or "
                        + (text.passage().isPresent()
                                ? "put it in code marks if a plate says so."
                                : "copy the plate that says so under `plate`."));
    }
}
