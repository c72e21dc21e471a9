package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.explain.Explanations;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Question;
import bayfolio.reckon.Reckonings;
import bayfolio.reckon.TestCoach;
import bayfolio.source.SourceFile;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Descriptions of the demo fleet with one fact left out, or one figure a thousand times too large or too small: whatever is
 * worked out of them holds numbers only, or says what it lacks.
 */
final class SpoiltCoachReckonedTest {
    private static final int SPOILT = 200;

    private static final Pattern FACT = Pattern.compile("^( +)(?!- )([a-z-]+): (.+)$");
    private static final Pattern FIGURE = Pattern.compile("^([0-9][0-9,]*(?:\\.[0-9]+)?)( [A-Za-z%/]+)$");

    private static final Folder FOLDER = Folders.at(Path.of(""));
    private static final Lists LISTS = Lists.of(FOLDER);
    private static final Fleet FLEET = FleetReader.read(FOLDER).fleet();

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void onlyNumbersAreShown(String coach) throws Exception {
        Random random = new Random(coach.hashCode());
        Path path = Path.of("units", coach, "unit.yaml");
        List<String> lines = Files.readAllLines(path);
        List<Integer> facts = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            Matcher fact = FACT.matcher(lines.get(line));
            if (fact.matches()
                    && (FIGURE.matcher(fact.group(3)).matches() || fact.group(3).matches("[a-z-]+"))) {
                facts.add(line);
            }
        }
        int read = 0;
        for (int each = 0; each < SPOILT; each++) {
            int line = facts.get(random.nextInt(facts.size()));
            List<String> spoilt = new ArrayList<>(lines);
            spoil(spoilt, line, random);
            List<Finding> findings = new ArrayList<>();
            Optional<Unit> unit = Resolved.of(
                            FOLDER,
                            new SourceFile(path.toString(), String.join("\n", spoilt) + "\n"),
                            LISTS,
                            findings::add)
                    .flatMap(Resolved::unit);
            if (unit.isPresent() && findings.isEmpty()) {
                read++;
                lackingIsToldAlike(new Coach(FLEET, unit.get()));
                assertThat(everything(new Coach(FLEET, unit.get())))
                        .as(path + ":" + (line + 1) + " " + lines.get(line) + " as " + spoilt.get(line))
                        .doesNotContain("NaN", "Infinity", "∞", "Optional");
            }
        }

        assertThat(read).isGreaterThan(SPOILT / 3);
    }

    /** The check asks for what is missing alone, which must be what the pages say. */
    private static void lackingIsToldAlike(Coach coach) {
        Map<Question, List<Missing>> lacking = Reckonings.lacking(coach);
        for (Explained reckoned : Explanations.of(coach, TestCoach.WORDS)) {
            assertThat(Explanations.lacking(lacking.getOrDefault(reckoned.question(), List.of()), TestCoach.WORDS))
                    .as(reckoned.question().id())
                    .isEqualTo(reckoned instanceof Explained.Lacking it ? it.facts() : List.of());
        }
    }

    private static void spoil(List<String> lines, int at, Random random) {
        Matcher fact = FACT.matcher(lines.get(at));
        assertThat(fact.matches()).isTrue();
        Matcher figure = FIGURE.matcher(fact.group(3));
        int way = random.nextInt(3);
        if (way == 0 || !figure.matches()) {
            lines.set(at, "");
            return;
        }
        BigDecimal factor = new BigDecimal(way == 1 ? "1000" : "0.001");
        BigDecimal value = new BigDecimal(figure.group(1).replace(",", "")).multiply(factor);
        lines.set(
                at,
                fact.group(1) + fact.group(2) + ": "
                        + value.stripTrailingZeros().toPlainString() + figure.group(2));
    }

    private static String everything(Coach coach) {
        StringBuilder all = new StringBuilder(Explanations.of(coach, TestCoach.WORDS).stream()
                .map(TestCoach::said)
                .collect(java.util.stream.Collectors.joining("\n")));
        for (Calculator calculator : Explanations.calculators(coach, TestCoach.WORDS)) {
            Map<String, Object> choice = new LinkedHashMap<>();
            calculator.fields().forEach(field -> choice.put(field.name(), first(field.kind())));
            all.append(calculator.fields())
                    .append(calculator.figures())
                    .append(calculator.result(new Calculator.Chosen(choice)));
        }
        return all.toString();
    }

    private static Object first(Calculator.Kind kind) {
        if (kind instanceof Calculator.Kind.Tick tick) {
            return tick.ticked();
        }
        return kind instanceof Calculator.Kind.Choice choice
                ? (Object) choice.chosen()
                : (Object) ((Calculator.Kind.Number) kind).value();
    }
}
