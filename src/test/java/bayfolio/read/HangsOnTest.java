package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.explain.Explained;
import bayfolio.explain.Explanations;
import bayfolio.explain.HangsOn;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import bayfolio.source.SourceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Facts of the demo fleet changed or taken out, one at a time: an answer that changes hangs on that one, and says so. */
final class HangsOnTest {
    private static final int TRIED = 200;

    private static final Pattern FACT = Pattern.compile("^( +)(?!- )([a-z-]+): (.+)$");
    private static final Pattern FIGURE = Pattern.compile("^([0-9]+(?:\\.[0-9]+)?)( [A-Za-z%/]+)?$");

    private static final Folder FOLDER = Folders.at(Path.of(""));
    private static final Lists LISTS = Lists.of(FOLDER);

    /** What things are called, and where they lead to. */
    private static final Set<String> NAMES = Set.of("id", "name", "formerly");

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void whatChangesAnAnswerIsAmongItsFacts(String id) throws Exception {
        Coach coach = TestCoach.demo(id);
        Map<Question, String> before = figures(coach);
        Map<Question, Set<Integer>> facts = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            facts.put(
                    question,
                    HangsOn.of(question, coach, TestCoach.WORDS).stream()
                            .map(fact -> fact.at().line())
                            .collect(Collectors.toSet()));
        }
        Path path = Path.of("units", id, "unit.yaml");
        List<String> lines = Files.readAllLines(path);
        List<Integer> candidates = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            Matcher fact = FACT.matcher(lines.get(line));
            if (fact.matches() && !NAMES.contains(fact.group(2))) {
                candidates.add(line);
            }
        }
        Random random = new Random(id.hashCode());
        int changed = 0;
        for (int each = 0; each < TRIED; each++) {
            int line = candidates.get(random.nextInt(candidates.size()));
            Optional<Coach> other = otherwise(coach, path, lines, line, random.nextBoolean());
            if (other.isEmpty()) {
                continue;
            }
            Map<Question, String> after = figures(other.get());
            for (Question question : Question.values()) {
                if (!String.valueOf(before.get(question)).equals(after.get(question))) {
                    changed++;
                    assertThat(facts.get(question))
                            .as(question.id() + " changes with line " + (line + 1) + " of " + id + ": "
                                    + lines.get(line))
                            .contains(line + 1);
                }
            }
        }

        assertThat(changed).isPositive();
    }

    /** One fact twice as large and a bit, or gone; nothing where that cannot be read. */
    private static Optional<Coach> otherwise(Coach coach, Path path, List<String> lines, int at, boolean gone) {
        List<String> changed = new ArrayList<>(lines);
        Matcher fact = FACT.matcher(lines.get(at));
        assertThat(fact.matches()).isTrue();
        Matcher figure = FIGURE.matcher(fact.group(3));
        if (gone || !figure.matches()) {
            changed.set(at, "");
        } else {
            String unit = Optional.ofNullable(figure.group(2)).orElse("");
            String value = unit.isEmpty()
                    ? String.valueOf(1 + Integer.parseInt(figure.group(1)))
                    : String.format(Locale.ROOT, "%.2f", 1.3 * Double.parseDouble(figure.group(1)));
            changed.set(at, fact.group(1) + fact.group(2) + ": " + value + unit);
        }
        List<Finding> findings = new ArrayList<>();
        return Resolved.of(
                        FOLDER,
                        new SourceFile(path.toString(), String.join("\n", changed) + "\n"),
                        LISTS,
                        findings::add)
                .flatMap(Resolved::unit)
                .filter(unit -> findings.isEmpty())
                .map(unit -> new Coach(coach.fleet(), unit));
    }

    /** All figures that a reader sees, without the words around them. */
    private static Map<Question, String> figures(Coach coach) {
        Map<Question, String> figures = new EnumMap<>(Question.class);
        for (Explained each : Explanations.of(coach, TestCoach.WORDS)) {
            figures.put(each.question(), TestCoach.said(each).replaceAll("[^0-9.,]+", " "));
        }
        return figures;
    }

    /** By hand: what has nothing to do with a question is not read for it. */
    @Test
    void whatHasNothingToDoWithItIsNotAmongThem() {
        Coach coach = TestCoach.demo("whimbrel");

        assertThat(keys(Question.GAS_DAYS, coach))
                .contains("tank.capacity", "tank.contents", "appliance.gas-input", "appliance.gas-hours")
                .noneMatch(key -> Stream.of("bank.", "circuit.", "load.", "weights.", "compartment.", "size.")
                        .anyMatch(key::startsWith));
        assertThat(keys(Question.CLEARANCE, coach))
                .contains("size.height", "size.width", "size.length", "unit.region")
                .noneMatch(key -> Stream.of("tank.", "bank.", "load.", "weights.", "compartment.")
                        .anyMatch(key::startsWith));
        assertThat(keys(Question.RANGE, coach))
                .contains("engine.consumption", "tank.capacity", "generator.pick-up")
                .noneMatch(key -> Stream.of("bank.", "load.", "weights.", "compartment.", "switch.")
                        .anyMatch(key::startsWith));
        assertThat(keys(Question.LOADING, coach))
                .contains("weights.gross", "weighing.total", "people.belted-seats", "size.wheelbase")
                .noneMatch(key -> Stream.of("bank.", "load.", "circuit.").anyMatch(key::startsWith));
    }

    private static Set<String> keys(Question question, Coach coach) {
        return HangsOn.of(question, coach, TestCoach.WORDS).stream()
                .map(fact -> fact.record() + "." + fact.key())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
