package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How much the check sees of mistakes that look true: each demo coach is changed in one place as a careless writer might
 * change it, and silence is a miss where a page of the staff's copy, which has all that the renters' has, reads
 * differently. Prints made, told and told at the right place, by class, and what stays silent by key; all of them with
 * {@code -Dmistakes=all}, else a sample; some classes alone with {@code -Dmistakes.of="figure x 10;figure / 10"}; each that stays silent as its line
 * with {@code -Dmistakes.lines=true}.
 */
class PlausibleMistakesTest {
    /** Of one class, to be done within minutes; another number with {@code -Dmistakes.most}. */
    private static final int MOST = Integer.getInteger("mistakes.most", 40);

    /** Of a hundred; to be raised with each relation. */
    private static final int LEAST_TOLD = 95;

    private static final long SEED = Long.getLong("mistakes.seed", 20_261_128);

    /** A number and a unit of one system, and the unit of the other by which it is mistaken. */
    private static final Map<String, String> OTHER_SYSTEM = Map.ofEntries(
            Map.entry("ft", "m"),
            Map.entry("in", "cm"),
            Map.entry("m", "ft"),
            Map.entry("cm", "in"),
            Map.entry("lb", "kg"),
            Map.entry("kg", "lb"),
            Map.entry("gal", "L"),
            Map.entry("L", "gal"),
            Map.entry("qt", "L"),
            Map.entry("psi", "bar"),
            Map.entry("bar", "psi"),
            Map.entry("mph", "km/h"),
            Map.entry("km/h", "mph"),
            Map.entry("°F", "°C"),
            Map.entry("°C", "°F"),
            Map.entry("gal/h", "L/h"),
            Map.entry("L/h", "gal/h"),
            Map.entry("BTU/h", "W"),
            Map.entry("mpg", "L/100 km"),
            Map.entry("L/100 km", "mpg"),
            Map.entry("mi", "km"),
            Map.entry("km", "mi"));

    private static final Pattern FIGURE = Pattern.compile("(-?[0-9][0-9.,]*) ?(.*)");

    private static final DemoCoaches COACHES = DemoCoaches.read();

    /** A mistake of a class, at a key, and where it may be told. */
    private record Mistake(String fault, String key, SourceFile before, Supplier<SourceFile> after, int from, int to) {
        /** The first line that is another one. */
        String line() {
            SourceFile changed = after.get();
            int line = 1;
            while (line < before.lineCount() && before.line(line).equals(changed.line(line))) {
                line++;
            }
            return before.path() + ":" + line + ": " + before.line(line).strip() + "  ->  "
                    + changed.line(line).strip();
        }
    }

    /** The rows of the list of what stays silent: a mistake and a key, as patterns, and the reason. */
    private static final Path REASONS = Path.of("src/test/resources/bayfolio/mistakes/silent.md");

    private static final Pattern ROW = Pattern.compile("\\| `(.+?)` \\| `(.+?)` \\| (.{20,}) \\|");

    @Test
    void mistakesThatLookTrueAreTold() throws IOException {
        Map<String, List<Mistake>> byClass = new TreeMap<>();
        for (Unit unit : COACHES.units()) {
            record(unit, byClass);
        }
        String chosen = System.getProperty("mistakes.of", "");
        if (!chosen.isEmpty()) {
            byClass.keySet().retainAll(List.of(chosen.split(";")));
        }
        StringBuilder table = new StringBuilder();
        Map<String, Integer> silent = new TreeMap<>();
        int[] all = new int[3];
        int[] could = new int[1];
        byClass.forEach((fault, mistakes) -> {
            int[] tally = judge(sample(mistakes), silent);
            table.append(row(fault, mistakes.size(), tally));
            could[0] += mistakes.size();
            for (int i = 0; i < 3; i++) {
                all[i] += tally[i];
            }
        });
        System.out.println("PlausibleMistakesTest\n" + row("class", "of", "made", "told", "place") + table
                + row("in all", could[0], all));
        silent.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .forEach(it -> System.out.printf("  %4d silent: %s%n", it.getValue(), it.getKey()));
        List<Pattern> explained = explained();
        assertThat(silent.keySet())
                .as("silent without a reason in " + REASONS)
                .allSatisfy(each ->
                        assertThat(explained).anyMatch(it -> it.matcher(each).matches()));
        if (chosen.isEmpty()) {
            assertThat(100 * all[1] / all[0]).as("told of a hundred").isGreaterThanOrEqualTo(LEAST_TOLD);
        }
    }

    private static List<Pattern> explained() throws IOException {
        return Files.readAllLines(REASONS).stream()
                .map(ROW::matcher)
                .filter(Matcher::matches)
                .map(row -> Pattern.compile(row.group(1) + ": " + row.group(2).replace("\\|", "|")))
                .toList();
    }

    private static void record(Described record, Map<String, List<Mistake>> byClass) {
        Facts facts = record.facts();
        facts.each((key, value) -> {
            if (value.value() instanceof Described inner) {
                record(inner, byClass);
                return;
            }
            if (value.value() instanceof List<?> list) {
                if (key.type() instanceof Type.ListOf<?> type && type.cues()) {
                    return; // in a file of its own
                }
                for (Object each : list) {
                    Located<?> element = (Located<?>) each;
                    if (element.value() instanceof Described inner) {
                        record(inner, byClass);
                    } else if (key.type() instanceof Type.ListOf<?> type) {
                        value(record, key, type.element(), element, byClass);
                    }
                }
                return;
            }
            value(record, key, key.type(), value, byClass);
        });
        dropped(record, byClass);
    }

    private static void value(
            Described record, Key<?> key, Type<?> type, Located<?> value, Map<String, List<Mistake>> byClass) {
        if (value.at().line() != value.at().endLine()) {
            return;
        }
        String written = DemoCoaches.text(value.at());
        if (type instanceof Type.Measured<?>) {
            Matcher figure = FIGURE.matcher(written);
            if (figure.matches()) {
                add("figure x 10", record, key, value.at(), scaled(figure, 10), byClass);
                add("figure / 10", record, key, value.at(), scaled(figure, 0.1), byClass);
                String unit = figure.group(2).replaceFirst("^(ft|lb) .*", "$1");
                if (OTHER_SYSTEM.containsKey(unit)) {
                    add(
                            "unit of the other system",
                            record,
                            key,
                            value.at(),
                            figure.group(1) + " " + OTHER_SYSTEM.get(unit),
                            byClass);
                }
            }
        } else if (type instanceof Type.Whole) {
            add("figure x 10", record, key, value.at(), written + "0", byClass);
        } else if (type instanceof Type.Day) {
            LocalDate day = (LocalDate) value.value();
            add("day ten years on", record, key, value.at(), day.plusYears(10).toString(), byClass);
            add(
                    "day ten years back",
                    record,
                    key,
                    value.at(),
                    day.minusYears(10).toString(),
                    byClass);
        } else if (type instanceof Type.YesNo) {
            add("yes and no turned", record, key, value.at(), written.equals("yes") ? "no" : "yes", byClass);
        } else if (type instanceof Type.Choice<?> choice) {
            List<String> words = new ArrayList<>(choice.words().keySet());
            String other = words.get((words.indexOf(written) + 1) % words.size());
            add("choice turned", record, key, value.at(), other, byClass);
        } else if (type instanceof Type.Reference reference) {
            sibling(record, reference, written)
                    .ifPresent(other -> add("reference to a sibling", record, key, value.at(), other, byClass));
        } else if (Type.ofWords(type) && STATES.contains(key.name())) {
            turned(record, key, written)
                    .ifPresent(other -> add("state turned", record, key, value.at(), other, byClass));
        } else if (Type.ofWords(type) && SWAPPED.contains(key.name())) {
            siblings(record, key)
                    .filter(other -> !other.equals(written))
                    .findFirst()
                    .ifPresent(
                            other -> add("look, plate or place of a sibling", record, key, value.at(), other, byClass));
        }
    }

    private static final List<String> STATES = List.of("at-pickup", "stored", "returned", "driving");

    /** Words that begin a state, each before the one that it is turned into. */
    private static final List<String> OPPOSITES = List.of("on", "off", "open", "shut", "in", "out", "up", "down");

    private static final List<String> SWAPPED = List.of("on-look", "off-look", "plate", "label", "where");

    /** The other of two states; where it has none of these words, that of a sibling that begins otherwise. */
    private static Optional<String> turned(Described record, Key<?> key, String written) {
        String first = first(written);
        int at = OPPOSITES.indexOf(first);
        return at >= 0
                ? Optional.of("\"" + OPPOSITES.get(at ^ 1) + "\"")
                : siblings(record, key)
                        .filter(other -> !first(other).equals(first))
                        .findFirst();
    }

    private static String first(String state) {
        return state.replaceAll("[^\\p{L}\\d]+", " ")
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceFirst(" .*", "");
    }

    private static void dropped(Described record, Map<String, List<Mistake>> byClass) {
        if (!(record instanceof Thing thing)) {
            return;
        }
        Place at = record.facts().at();
        Supplier<SourceFile> after = () -> {
            List<String> lines = lines(at);
            int first = at.line() - 1;
            int end = DemoCoaches.end(lines, first, at.column());
            for (int i = first; i < end; i++) {
                lines.set(i, "");
            }
            return file(at, lines);
        };
        byClass.computeIfAbsent("record dropped", it -> new ArrayList<>())
                .add(new Mistake(
                        "record dropped",
                        thing.kind() + " " + thing.roles().stream().findFirst().orElse("without a role"),
                        at.file(),
                        after,
                        1,
                        at.file().lineCount()));
    }

    /** The next of the kind of what is referred to; where there is no other, one of a kind that may be named there. */
    private static Optional<String> sibling(Described record, Type.Reference reference, String written) {
        List<Thing> all = unit(record)
                .things()
                .filter(thing ->
                        reference.kinds().contains(thing.kind()) && !thing.id().equals(id(record)))
                .toList();
        Optional<String> kind = all.stream()
                .filter(thing -> thing.id().equals(written))
                .map(Thing::kind)
                .findFirst();
        List<String> alike = all.stream()
                .filter(thing -> kind.equals(Optional.of(thing.kind())))
                .map(Thing::id)
                .toList();
        return alike.size() > 1
                ? Optional.of(alike.get((alike.indexOf(written) + 1) % alike.size()))
                : all.stream().map(Thing::id).filter(id -> !id.equals(written)).findFirst();
    }

    /** What others of its kind say under the key, those in the same place first. */
    private static Stream<String> siblings(Described record, Key<?> key) {
        return unit(record)
                .things()
                .filter(thing -> thing.facts().shape() == record.facts().shape() && thing != record)
                .sorted(Comparator.comparing(thing -> !near(thing, record)))
                .flatMap(thing -> thing.facts().located(key).stream())
                .filter(it -> it.at().line() == it.at().endLine())
                .map(it -> DemoCoaches.text(it.at()));
    }

    private static boolean near(Thing thing, Described record) {
        return record instanceof Thing other
                && thing.spot().flatMap(it -> it.in()).equals(other.spot().flatMap(it -> it.in()));
    }

    private static String id(Described record) {
        return record instanceof Thing thing ? thing.id() : "";
    }

    private static Unit unit(Described record) {
        return COACHES.unit(record.facts().at().file());
    }

    private static String scaled(Matcher figure, double factor) {
        double scaled = Double.parseDouble(figure.group(1).replace(",", "")) * factor;
        String digits = String.format(Locale.ROOT, "%.4f", scaled)
                .replaceFirst("0+$", "")
                .replaceFirst("\\.$", "");
        return digits + " " + figure.group(2);
    }

    private static void add(
            String fault, Described record, Key<?> key, Place at, String wrong, Map<String, List<Mistake>> byClass) {
        Place begin = record.facts().at();
        int end = DemoCoaches.end(lines(at), begin.line() - 1, begin.column());
        Supplier<SourceFile> after = () -> {
            List<String> lines = lines(at);
            String line = lines.get(at.line() - 1);
            lines.set(
                    at.line() - 1,
                    line.substring(0, line.offsetByCodePoints(0, at.column() - 1))
                            + wrong
                            + line.substring(line.offsetByCodePoints(0, at.endColumn() - 1)));
            return file(at, lines);
        };
        byClass.computeIfAbsent(fault, it -> new ArrayList<>())
                .add(new Mistake(
                        fault,
                        record.facts().shape().name() + " " + key.name(),
                        at.file(),
                        after,
                        record instanceof Unit ? at.line() : begin.line(),
                        record instanceof Unit ? at.line() : end));
    }

    private static List<Mistake> sample(List<Mistake> all) {
        if (all.size() <= MOST || "all".equals(System.getProperty("mistakes"))) {
            return all;
        }
        List<Mistake> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, new Random(SEED));
        return shuffled.subList(0, MOST);
    }

    /** How many change a page, how many of them were told, and told within the record or at the line. */
    private static int[] judge(List<Mistake> mistakes, Map<String, Integer> silent) {
        int[] tally = new int[3];
        mistakes.parallelStream().forEach(mistake -> {
            SourceFile after = mistake.after.get();
            List<Finding> findings = COACHES.told(after);
            boolean there = findings.stream()
                    .anyMatch(it -> it.at().file().path().equals(mistake.before.path())
                            && it.at().line() >= mistake.from
                            && it.at().line() <= mistake.to);
            boolean changes = !findings.isEmpty() || COACHES.readDifferently(after);
            synchronized (silent) {
                tally[0] += changes ? 1 : 0;
                tally[1] += findings.isEmpty() ? 0 : 1;
                tally[2] += there ? 1 : 0;
                if (changes && findings.isEmpty()) {
                    silent.merge(mistake.fault + ": " + mistake.key, 1, Integer::sum);
                    if (Boolean.getBoolean("mistakes.lines")) {
                        System.out.println(mistake.line());
                    }
                }
            }
        });
        return tally;
    }

    private static List<String> lines(Place at) {
        return new ArrayList<>(at.file().text().lines().toList());
    }

    private static SourceFile file(Place at, List<String> lines) {
        return new SourceFile(at.file().path(), String.join("\n", lines) + "\n");
    }

    private static String row(String fault, int of, int[] tally) {
        return row(fault, "" + of, "" + tally[0], "" + tally[1], "" + tally[2]);
    }

    private static String row(String... cells) {
        return String.format("%-36s %6s %6s %6s %6s%n", (Object[]) cells);
    }
}
