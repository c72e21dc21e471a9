package bayfolio.procedure;

import bayfolio.finding.Finding;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What steps are called by links, editions and translations: by the name that the writer gives, {@code {#turn-off-pump}},
 * and until there is one, by the first words of the script.
 */
final class StepNames {
    /** What a list item begins with. */
    private static final Pattern NUMBER = Pattern.compile("^[ \\t]*[0-9]+[.)][ \\t]+");

    private static final Pattern WORD = Pattern.compile("[a-z0-9]+");

    private static final Pattern TAG = Pattern.compile("\\{\\{[^{}]*+}}");
    private static final Pattern LINK = Pattern.compile("\\[([^\\[\\]]*+)]\\((?:[a-z-]+:)?([^()\\s]*+)[^()]*+\\)");

    private static final int MOST_WORDS = 6;

    private StepNames() {}

    /** Each step under a name of its own: one that a text repeats for each of several things has that of its thing, too. */
    static List<Procedure.Part> told(List<Procedure.Part> parts, Consumer<Finding> findings) {
        Map<String, List<Step>> alike = parts.stream()
                .flatMap(part -> part.steps().stream())
                .collect(Collectors.groupingBy(Step::id, LinkedHashMap::new, Collectors.toList()));
        Map<Step, String> names = new IdentityHashMap<>();
        Set<String> taken = new HashSet<>(alike.keySet());
        alike.forEach((name, steps) -> {
            List<String> own = own(name, steps, taken, findings);
            for (int i = 0; i < own.size(); i++) {
                names.put(steps.get(i), own.get(i));
            }
        });
        return parts.stream()
                .map(part -> new Procedure.Part(
                        part.title(),
                        part.anchor(),
                        part.anchor().orElseGet(() -> "from-" + first(part, parts, names)),
                        part.steps().stream()
                                .map(step -> new Step(
                                        Objects.requireNonNull(names.get(step)),
                                        step.named(),
                                        step.hazards(),
                                        step.text(),
                                        step.at()))
                                .toList(),
                        part.rest()))
                .toList();
    }

    /** That of its first step; with its thing only where another part begins so, too. */
    private static String first(Procedure.Part part, List<Procedure.Part> parts, Map<Step, String> names) {
        Step first = part.steps().get(0);
        boolean alone = parts.stream()
                        .filter(other -> other.steps().get(0).id().equals(first.id()))
                        .count()
                == 1;
        return alone ? first.id() : Objects.requireNonNull(names.get(first));
    }

    private static List<String> own(String name, List<Step> steps, Set<String> taken, Consumer<Finding> findings) {
        if (steps.size() == 1) {
            return List.of(name);
        }
        List<String> ofThings = steps.stream()
                .map(step -> name + thing(step).map(id -> "-" + id).orElse(""))
                .toList();
        if (Set.copyOf(ofThings).size() == ofThings.size() && ofThings.stream().allMatch(taken::add)) {
            return ofThings;
        }
        List<String> counted = new ArrayList<>();
        Set<Integer> lines = new HashSet<>();
        for (Step step : steps) {
            String free = name;
            for (int i = 2; !counted.isEmpty() && !taken.add(free); i++) {
                free = name + "-" + i;
            }
            counted.add(free);
            if (step.named() && lines.add(step.at().line()) && lines.size() > 1) {
                findings.accept(Finding.error("anchor-twice", step.at(), "the anchor `" + name + "` is given twice")
                        .mend("Give each step of a procedure an anchor of its own."));
            }
        }
        return counted;
    }

    /** The first that it is about. */
    private static Optional<String> thing(Step step) {
        return step.text().stream()
                .flatMap(Block::links)
                .map(Inline.Link::target)
                .filter(Target.OfThing.class::isInstance)
                .map(target -> ((Target.OfThing) target).id())
                .findFirst();
    }

    /** What a step would be called after its words, for each line of the script's file: many coaches ask for the same. */
    static String[] ofLines(Script script) {
        String[] names = new String[script.file().lineCount()];
        for (int i = 0; i < names.length; i++) {
            String line = script.file().line(i + 1);
            String untagged = line.contains("{{") ? TAG.matcher(line).replaceAll(" ") : line;
            String unnumbered = NUMBER.matcher(untagged).replaceFirst("");
            names[i] = firstWords(
                    unnumbered.contains("](") ? LINK.matcher(unnumbered).replaceAll("$1 $2") : unnumbered);
        }
        return names;
    }

    /** In small letters with hyphens between them. */
    private static String firstWords(String text) {
        String words = WORD.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .limit(MOST_WORDS)
                .map(MatchResult::group)
                .collect(Collectors.joining("-"));
        return words.isEmpty() ? "step" : words;
    }
}
