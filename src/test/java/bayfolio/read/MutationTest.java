package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.check.Rules;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Scale;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Country;
import bayfolio.model.Equipment;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Load;
import bayfolio.model.Role;
import bayfolio.model.Roles;
import bayfolio.model.Sources;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.model.Whose;
import bayfolio.model.Words;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.render.theme.Theme;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How much the check sees: the demo fleet is spoilt by one fault at a time, at every place where a fault of that class
 * can be made (where there are very many, at a sample of them), and each must be told at its file, line and column, with a code that says what is wrong. The figures are
 * printed as a table.
 *
 * <p>The faults are edits of the text. Where they can be made is taken from the declarations, and where they must be
 * told from the edit. Ids renamed at their definition are in {@link RenameTest}.
 */
final class MutationTest {
    /** Of one class of faults, to be done within minutes. */
    private static final int MOST = 120;

    private static final Path ROOT = Path.of(".");
    private static final Pattern REFERENCE = Pattern.compile("\\]\\(([a-z-]+):(\\{\\{[a-z.-]+\\}\\}|[a-z0-9-]+)\\)");
    private static final Pattern TAG = Pattern.compile("\\{\\{([#^/]?)([a-z0-9][a-z0-9.-]*)\\}\\}");
    private static final Map<String, Tally> TALLIES = new ConcurrentSkipListMap<>();

    private static FleetReader.Reading reading;
    private static Catalogs screen;
    private static Lists lists;

    @BeforeAll
    static void readDemoFleet() throws Exception {
        reading = DemoCoaches.whole(FleetReader.read(Folders.at(ROOT)));
        lists = new Lists(
                Optional.of(reading.fleet().roles().stream().collect(Collectors.toMap(Role::id, role -> role))),
                Optional.of(reading.fleet().equipment()));
        screen = Theme.load(ROOT, Theme.BUILT_IN).catalogs();
    }

    @AfterAll
    static void printFigures() {
        System.out.println(Tally.table(TALLIES));
    }

    @Test
    void untouchedFleetHasNoFinding() {
        assertThat(reading.findings()).isEmpty();
        assertThat(check(reading.fleet().units(), reading.library().scripts())).isEmpty();
    }

    @Test
    void misspeltReferencesOfCoachesAreTold() {
        assertAllTold("reference of a coach misspelt", inCoaches(value -> {
            if (!(value.type instanceof Type.Reference)) {
                return Stream.empty();
            }
            return Stream.of(value.becomes(misspelt(value.written()), "unknown-reference"));
        }));
    }

    @Test
    void misspeltRolesOfCoachesAreTold() {
        assertAllTold("role misspelt", inCoaches(value -> {
            if (!(value.type instanceof Type.Role)) {
                return Stream.empty();
            }
            return Stream.of(value.becomes(misspelt(value.written()), "unknown-role"));
        }));
    }

    @Test
    void misspeltReferencesOfProceduresAreTold() {
        assertAllTold("reference of a procedure misspelt", inProcedures(REFERENCE, (script, found) -> {
            String kind = found.match.group(1);
            String name = found.match.group(2);
            boolean filled = name.startsWith("{{");
            String wrong = filled ? misspelt(kind) + ":" + name : kind + ":" + misspelt(name);
            Place at = found.place(found.match.start(1), found.match.end(2));
            return Stream.of(edit(at, wrong).toldAt(at, Set.of(filled ? "unknown-kind" : "unknown-reference")));
        }));
    }

    @Test
    void misspeltNamesOfProceduresAreTold() {
        assertAllTold("name in a procedure misspelt", inProcedures(TAG, (script, found) -> {
            if (found.match.group(1).equals("/")) {
                return Stream.empty();
            }
            String wrong = misspeltName(found.match.group(2));
            Place at = found.place(found.match.start(), found.match.end());
            Edited edited = edit(at, "{{" + found.match.group(1) + wrong + "}}");
            if (!found.match.group(1).isEmpty()) {
                edited = edited.and(found.end(), "{{/" + wrong + "}}");
            }
            return Stream.of(edited.toldAt(at, Set.of("unknown-name")));
        }));
    }

    @Test
    void misspeltEndsOfSectionsAreTold() {
        assertAllTold("end of a section misspelt", inProcedures(TAG, (script, found) -> {
            if (!found.match.group(1).equals("/")) {
                return Stream.empty();
            }
            Place at = found.place(found.match.start(), found.match.end());
            Place line = Place.of(at.file(), at.line(), 1, 0);
            return Stream.of(
                    edit(at, "{{/" + misspelt(found.match.group(2)) + "}}").toldAt(line, Set.of("malformed-template")));
        }));
    }

    @Test
    void quantitiesInUnitsOfAnotherScaleAreTold() {
        assertAllTold("quantity in a unit of another scale", inAllFiles(value -> quantity(value, true)));
    }

    @Test
    void quantitiesWithoutUnitAreTold() {
        assertAllTold("quantity without unit", inAllFiles(value -> quantity(value, false)));
    }

    @Test
    void misspeltWordsOfListsAreTold() {
        assertAllTold("word of a list misspelt", inAllFiles(value -> {
            if (!(value.type instanceof Type.Choice<?> choice)) {
                return Stream.empty();
            }
            String wrong = misspelt(value.written());
            assertThat(choice.words().keySet()).doesNotContain(wrong);
            return Stream.of(value.becomes(wrong, "wrong-value"));
        }));
    }

    @Test
    void anythingButYesAndNoIsTold() {
        assertAllTold(
                "yes or no become maybe",
                inAllFiles(value -> value.type instanceof Type.YesNo
                        ? Stream.of(value.becomes("maybe", "wrong-value"))
                        : Stream.empty()));
    }

    @Test
    void droppedRequiredKeysAreTold() {
        List<Mutant> mutants = new ArrayList<>();
        for (File file : files()) {
            required(file.facts, (record, key) -> mutants.add(without(record, key)));
        }

        assertAllTold("required key dropped", mutants);
    }

    @Test
    void tanksOutOfRangeAreTold() {
        List<Mutant> empty = new ArrayList<>();
        List<Mutant> disagreeing = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            for (Tank tank : unit.tanks()) {
                Located<?> capacity = tank.facts().located(Tank.CAPACITY).orElseThrow();
                empty.add(scaled(capacity, 0).toldAt(capacity.at(), Set.of("impossible-figure")));
                if (tank.facts().has(Tank.CAPACITY_PLATE)) {
                    disagreeing.add(scaled(capacity, 1.1).toldAt(capacity.at(), Set.of("capacity-disagrees")));
                    Place plate = tank.facts().at(Tank.CAPACITY_PLATE);
                    disagreeing.add(
                            scaled(tank.facts().located(Tank.CAPACITY_PLATE).orElseThrow(), 0.9)
                                    .toldAt(List.of(capacity.at(), plate), Set.of("capacity-disagrees")));
                }
            }
        }

        assertAllTold("tank that holds nothing", empty);
        assertAllTold("tank that holds other than its plate says", disagreeing);
    }

    @Test
    void breakersOutOfRangeAreTold() {
        List<Mutant> tiny = new ArrayList<>();
        List<Mutant> huge = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            for (Circuit circuit : unit.circuits()) {
                Place at = circuit.facts().at(Circuit.BREAKER);
                List<Place> places = new ArrayList<>(List.of(at));
                List<Load> loads = unit.loads().stream()
                        .filter(load -> load.facts().get(Load.CIRCUIT).equals(circuit.id()))
                        .toList();
                // It shows at the breaker, or at the figure of a load that is too much for it.
                loads.forEach(load -> {
                    places.add(load.facts().at(Load.AMPS));
                    places.add(load.facts().at(Load.WATTS));
                });
                if (!loads.isEmpty()) {
                    tiny.add(edit(at, "0.01 A").toldAt(places, Set.of("circuit-over-breaker")));
                }
                if (!behindABatteryWithoutFuse(unit, circuit)) {
                    huge.add(edit(at, "5000 A").toldAt(at, Set.of("breaker-over-supply")));
                }
            }
        }

        assertAllTold("breaker smaller than a load", tiny);
        assertAllTold("breaker or fuse larger than any supply", huge);
    }

    /** There is nothing to hold its breaker against: a starter battery has no main fuse. */
    private static boolean behindABatteryWithoutFuse(Unit unit, Circuit circuit) {
        return unit.banks().stream()
                .anyMatch(bank -> circuit.facts().find(Circuit.BANK).equals(Optional.of(bank.id()))
                        && !bank.facts().has(Bank.FUSE));
    }

    @Test
    void weightsOutOfRangeAreTold() {
        List<Mutant> axles = new ArrayList<>();
        List<Mutant> axlesOverGross = new ArrayList<>();
        List<Mutant> low = new ArrayList<>();
        List<Mutant> high = new ArrayList<>();
        List<Mutant> scale = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            Facts weights = unit.facts().get(Unit.WEIGHTS).facts();
            Facts weighing = weights.get(Weights.AS_WEIGHED).facts();
            axle(Weights.FRONT_AXLE, Weighing.FRONT, weights, weighing, axles);
            axle(Weights.REAR_AXLE, Weighing.REAR, weights, weighing, axles);
            weights.located(Weights.FRONT_AXLE)
                    .ifPresent(
                            it -> axlesOverGross.add(scaled(it, 10).toldAt(it.at(), Set.of("axle-limit-above-gross"))));
            weights.located(Weights.REAR_AXLE)
                    .ifPresent(
                            it -> axlesOverGross.add(scaled(it, 10).toldAt(it.at(), Set.of("axle-limit-above-gross"))));
            Located<?> gross = weights.located(Weights.GROSS).orElseThrow();
            Place total = weighing.at(Weighing.TOTAL);
            low.add(scaled(gross, 0.5).toldAt(List.of(gross.at(), total), Set.of("gross-exceeded")));
            high.add(scaled(gross, 2).toldAt(gross.at(), Set.of("axles-below-gross")));
            for (double factor : new double[] {0.9, 1.1}) {
                scale.add(scaled(weighing.located(Weighing.TOTAL).orElseThrow(), factor)
                        .toldAt(total, Set.of("weighing-does-not-add-up")));
                for (Key<?> axle : List.of(Weighing.FRONT, Weighing.REAR)) {
                    weighing.located(axle)
                            .ifPresent(it ->
                                    scale.add(scaled(it, factor).toldAt(total, Set.of("weighing-does-not-add-up"))));
                }
            }
        }

        assertAllTold("axle limit below what was weighed", axles);
        assertAllTold("axle limit above that of the coach", axlesOverGross);
        assertAllTold("gross limit below what was weighed", low);
        assertAllTold("gross limit above what the axles carry", high);
        assertAllTold("weighing that does not add up", scale);
    }

    private static void axle(Key<?> limit, Key<?> weighed, Facts weights, Facts weighing, List<Mutant> mutants) {
        weights.located(limit)
                .filter(it -> weighing.has(weighed))
                .ifPresent(it -> mutants.add(
                        scaled(it, 0.5).toldAt(List.of(it.at(), weighing.at(weighed)), Set.of("axle-over-loaded"))));
    }

    // ---- faults ----

    /** A file with one fault. */
    private record Edited(SourceFile before, SourceFile after) {
        Edited and(Place other, String text) {
            return new Edited(before, edit(Place.of(after, other.line(), other.column(), length(other)), text).after);
        }

        Mutant toldAt(Place at, Set<String> codes) {
            return toldAt(List.of(at), codes);
        }

        Mutant toldAt(List<Place> places, Set<String> codes) {
            return new Mutant(
                    before, after, places.stream().map(Place::toString).collect(Collectors.toSet()), codes);
        }
    }

    /**
     * @param places of which one must be told
     * @param codes of which one must be given
     */
    private record Mutant(SourceFile before, SourceFile after, Set<String> places, Set<String> codes) {
        boolean isAt(Finding finding) {
            return places.contains(finding.at().toString());
        }

        boolean isTold(Finding finding) {
            return isAt(finding) && codes.contains(finding.code());
        }
    }

    /** A single value of a description. */
    private record Value(Type<?> type, Place at) {
        String written() {
            return text(at);
        }

        Mutant becomes(String wrong, String code) {
            return edit(at, wrong).toldAt(at, Set.of(code));
        }
    }

    private record File(Shape<?> shape, Facts facts) {}

    /** A match in the body of a procedure. */
    private record Found(SourceFile file, int line, Matcher match) {
        Place place(int start, int end) {
            String text = file.line(line);
            return Place.of(file, line, 1 + text.codePointCount(0, start), text.codePointCount(start, end));
        }

        /** Where the section that begins here ends. */
        Place end() {
            int depth = 1;
            int from = match.end();
            for (int at = line; at <= file.lineCount(); at++) {
                Matcher tag =
                        TAG.matcher(file.line(at)).region(from, file.line(at).length());
                from = 0;
                while (tag.find()) {
                    boolean same = tag.group(2).equals(match.group(2));
                    depth += !same || tag.group(1).isEmpty() ? 0 : tag.group(1).equals("/") ? -1 : 1;
                    if (depth == 0) {
                        return new Found(file, at, tag).place(tag.start(), tag.end());
                    }
                }
            }
            throw new AssertionError("no end of " + match.group() + " at " + file + ":" + line);
        }
    }

    private static List<Mutant> inCoaches(Function<Value, Stream<Mutant>> faults) {
        return reading.fleet().units().stream()
                .flatMap(unit -> values(unit.facts()))
                .flatMap(faults)
                .toList();
    }

    private static List<Mutant> inAllFiles(Function<Value, Stream<Mutant>> faults) {
        return files().stream()
                .flatMap(file -> values(file.facts))
                .flatMap(faults)
                .toList();
    }

    private static Stream<Value> values(Facts facts) {
        List<Value> values = new ArrayList<>();
        FactVisitor.of(facts, (type, value) -> {
            // Cues lie in a file of another form; their faults are on the pages of the rules.
            if (value.at().file() == facts.at().file()) {
                values.add(new Value(type, value.at()));
            }
        });
        return values.stream();
    }

    private static List<File> files() {
        List<File> files = new ArrayList<>();
        reading.fleet().units().forEach(unit -> files.add(new File(Unit.SHAPE, unit.facts())));
        files.add(new File(FleetFacts.SHAPE, reading.fleet().facts().facts()));
        files.add(file("units/shared/roles.yaml", Roles.SHAPE));
        files.add(file("units/shared/words.yaml", Words.SHAPE));
        files.add(file("units/shared/sources.yaml", Sources.SHAPE));
        reading.fleet().countries().forEach(country -> files.add(new File(Country.SHAPE, country.facts())));
        reading.fleet().equipment().files().forEach(kind -> files.add(new File(Equipment.SHAPE, kind.facts())));
        reading.library()
                .scripts()
                .forEach(script -> files.add(new File(Head.SHAPE, script.head().facts())));
        return files;
    }

    private static <T extends Described> File file(String path, Shape<T> shape) {
        try {
            SourceFile source = new SourceFile(path, Files.readString(ROOT.resolve(path)));
            return new File(
                    shape,
                    FleetReader.yaml(source, shape, finding -> {
                                throw new AssertionError(finding);
                            })
                            .orElseThrow()
                            .facts());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<Mutant> inProcedures(
            Pattern pattern, java.util.function.BiFunction<Script, Found, Stream<Mutant>> faults) {
        List<Mutant> mutants = new ArrayList<>();
        for (Script script : reading.library().scripts()) {
            for (int line = script.firstLine(); line <= script.file().lineCount(); line++) {
                Matcher match = pattern.matcher(script.file().line(line));
                while (match.find()) {
                    faults.apply(script, new Found(script.file(), line, match)).forEach(mutants::add);
                }
            }
        }
        return mutants;
    }

    private static Stream<Mutant> quantity(Value value, boolean otherUnit) {
        if (!(value.type instanceof Type.Measured<?> measured)) {
            return Stream.empty();
        }
        String number = value.written().replaceFirst("(-?[0-9][0-9.,]*).*", "$1");
        String wrong = otherUnit ? number + " " + unitNotOf(measured.scale()) : number;
        return Stream.of(value.becomes(wrong, "wrong-measure"));
    }

    /** The first unit of the next scale that this one does not take. */
    private static String unitNotOf(Scale<?> scale) {
        List<Scale<?>> all = Scale.all();
        int next = all.indexOf(scale);
        while (true) {
            next = (next + 1) % all.size();
            String unit = all.get(next).units().get(0);
            if (!takes(scale, "5 " + unit)) {
                return unit;
            }
        }
    }

    private static boolean takes(Scale<?> scale, String text) {
        try {
            scale.parse(text);
            return true;
        } catch (NotAQuantityException refused) {
            return false;
        }
    }

    /** The figure by a factor, its unit kept; feet and inches become feet. */
    private static Edited scaled(Located<?> quantity, double factor) {
        Matcher parts = Pattern.compile("([0-9][0-9.,]*) ?(.*)").matcher(text(quantity.at()));
        assertThat(parts.matches()).as(text(quantity.at())).isTrue();
        double figure = Double.parseDouble(parts.group(1).replace(",", "")) * factor;
        String written = String.format(Locale.ROOT, "%.1f", figure).replaceFirst("\\.0$", "");
        return edit(quantity.at(), written + " " + parts.group(2));
    }

    private static void required(Facts record, BiConsumer<Facts, Key<?>> visitor) {
        for (Key<?> key : record.shape().keys()) {
            Optional<? extends Located<?>> value = record.located(key);
            if (value.isPresent() && key.required()) {
                visitor.accept(record, key);
            }
            value.ifPresent(it -> within(it, visitor));
        }
    }

    private static void within(Located<?> value, BiConsumer<Facts, Key<?>> visitor) {
        if (value.value() instanceof Described record) {
            required(record.facts(), visitor);
        } else if (value.value() instanceof List<?> list) {
            list.stream()
                    .map(each -> (Located<?>) each)
                    .filter(each -> each.at().file() == value.at().file())
                    .forEach(each -> within(each, visitor));
        }
    }

    /**
     * The lines of a key blanked, so that all others keep their numbers. A record that began with the key begins with
     * the next.
     */
    private static Mutant without(Facts record, Key<?> key) {
        Place at = record.at();
        SourceFile file = at.file();
        List<String> lines = lines(file);
        int line = record.at(key).line() - 1;
        String begin = " ".repeat(at.column() - 1) + key.name() + ":";
        // A key stands in the column of its record, behind a hyphen where it comes first in a list.
        while (!lines.get(line).replaceFirst("^( *)-(?= )", "$1 ").startsWith(begin)) {
            line--;
        }
        boolean first = line == at.line() - 1;
        String hyphen = lines.get(line).substring(0, at.column() - 1);
        lines.set(line, hyphen.stripTrailing());
        int next = line + 1;
        while (next < lines.size() && !ends(lines.get(next), at.column())) {
            lines.set(next++, "");
        }
        if (first) {
            while (next < lines.size()
                    && (lines.get(next).isBlank() || lines.get(next).strip().startsWith("#"))) {
                next++;
            }
        }
        Edited edited = new Edited(file, new SourceFile(file.path(), String.join("\n", lines) + "\n"));
        if (first && next == lines.size()) {
            return edited.toldAt(Place.whole(file), Set.of("unreadable-file")); // it was all there was
        }
        if (first && ends(lines.get(next), at.column() - 1)) {
            // It was all that the record had: behind the hyphen nothing stands any more.
            return edited.toldAt(Place.of(file, at.line(), at.column() - 1, 0), Set.of("wrong-type"));
        }
        return edited.toldAt(Place.of(file, first ? next + 1 : at.line(), at.column(), 1), Set.of("missing-key"));
    }

    /** Whether a line no longer belongs to a key in that column. */
    private static boolean ends(String line, int column) {
        return !line.isBlank() && line.length() - line.stripLeading().length() < column;
    }

    /** One letter in the middle becomes another. */
    private static String misspelt(String word) {
        int at = word.length() / 2;
        while (!Character.isLetterOrDigit(word.charAt(at))) {
            at--;
        }
        char other = word.charAt(at) == 'q' ? 'x' : 'q';
        return word.substring(0, at) + other + word.substring(at + 1);
    }

    /** The last word of a dotted name, which says most. */
    private static String misspeltName(String name) {
        int dot = name.lastIndexOf('.');
        return name.substring(0, dot + 1) + misspelt(name.substring(dot + 1));
    }

    private static Edited edit(Place at, String text) {
        List<String> lines = lines(at.file());
        String line = lines.get(at.line() - 1);
        int start = line.offsetByCodePoints(0, at.column() - 1);
        int end = line.offsetByCodePoints(0, at.endColumn() - 1);
        lines.set(at.line() - 1, line.substring(0, start) + text + line.substring(end));
        return new Edited(at.file(), new SourceFile(at.file().path(), String.join("\n", lines) + "\n"));
    }

    private static List<String> lines(SourceFile file) {
        return new ArrayList<>(file.text().lines().toList());
    }

    private static int length(Place at) {
        return at.endColumn() - at.column();
    }

    private static String text(Place at) {
        String line = at.file().line(at.line());
        return line.substring(
                line.offsetByCodePoints(0, at.column() - 1), line.offsetByCodePoints(0, at.endColumn() - 1));
    }

    // ---- judging ----

    private static void assertAllTold(String fault, List<Mutant> all) {
        List<Mutant> mutants = sample(all);
        assertThat(coaches(mutants))
                .as("coaches that are spoilt by `%s`", fault)
                .isEqualTo(coaches(all));
        boolean judged =
                mutants.stream().allMatch(mutant -> mutant.codes.stream().anyMatch(MutationTest::hasRule));
        assertThat(judged).as("every code of `%s` comes from a rule", fault).isTrue();
        Tally tally = tally(fault, mutants, all.size());

        assertThat(tally.rightCode).as("%s; missed: %s", fault, tally.missed).isEqualTo(mutants.size());
    }

    private static Tally tally(String fault, List<Mutant> mutants, int possible) {
        assertThat(mutants).as(fault).isNotEmpty();
        Tally tally = new Tally();
        tally.possible = possible;
        mutants.parallelStream().forEach(mutant -> tally.add(mutant, findings(mutant)));
        TALLIES.put(fault, tally);
        return tally;
    }

    /** The same ones each time, since the seed is fixed; all of them with {@code -Dmutants=all}. */
    private static List<Mutant> sample(List<Mutant> all) {
        if (all.size() <= MOST || "all".equals(System.getProperty("mutants"))) {
            return all;
        }
        List<Mutant> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, new Random(20_260_418));
        return shuffled.subList(0, MOST);
    }

    private static Set<String> coaches(List<Mutant> mutants) {
        return mutants.stream()
                .map(mutant -> mutant.before.path())
                .filter(path -> path.endsWith("/unit.yaml"))
                .collect(Collectors.toSet());
    }

    /** Whether a code comes from reading, filling in, or a rule that is on the list. */
    private static boolean hasRule(String code) {
        boolean byReading = Set.of(
                        "wrong-value",
                        "wrong-measure",
                        "wrong-type",
                        "missing-key",
                        "unknown-role",
                        "unreadable-file",
                        "unknown-name",
                        "unknown-kind",
                        "malformed-template")
                .contains(code);
        return byReading
                || Rules.all()
                        .map(rule -> rule.getClass().getSimpleName())
                        .map(name -> name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT))
                        .anyMatch(code::equals);
    }

    private static List<Finding> findings(Mutant mutant) {
        List<Finding> findings = new ArrayList<>();
        String path = mutant.after.path();
        if (path.contains("/" + Form.EQUIPMENT.folder() + "/")) {
            FleetReader.acts(mutant.after, findings::add);
        } else if (path.endsWith(".md")) {
            Optional<Script> spoilt = FleetReader.script(
                    mutant.after, Whose.ALL, reading.fleet().equipment().words(), findings::add);
            if (findings.isEmpty()) {
                List<Script> scripts = new ArrayList<>(reading.library().scripts());
                scripts.replaceAll(it -> it.file() == mutant.before ? spoilt.orElseThrow() : it);
                findings.addAll(inScripts(mutant, scripts));
            }
        } else if (path.endsWith("/unit.yaml")) {
            Optional<Unit> spoilt = Resolved.of(Folders.at(ROOT), mutant.after, lists, findings::add)
                    .flatMap(Resolved::unit);
            if (findings.isEmpty()) {
                findings.addAll(
                        check(List.of(spoilt.orElseThrow()), reading.library().scripts()));
            }
        } else {
            Shape<?> shape = path.contains("/countries/")
                    ? Country.SHAPE
                    : path.endsWith("fleet.yaml")
                            ? FleetFacts.SHAPE
                            : path.endsWith("roles.yaml")
                                    ? Roles.SHAPE
                                    : path.endsWith("sources.yaml") ? Sources.SHAPE : Words.SHAPE;
            FleetReader.yaml(mutant.after, shape, findings::add);
        }
        return findings;
    }

    /** Most is told of a script as it is written; else of it on one coach after the other, until it is told. */
    private static List<Finding> inScripts(Mutant mutant, List<Script> scripts) {
        List<Finding> findings = check(reading.fleet().units(), scripts, List.of());
        for (Unit unit : reading.fleet().units()) {
            if (findings.stream().anyMatch(mutant::isTold)) {
                break;
            }
            findings = check(reading.fleet().units(), scripts, List.of(unit));
        }
        return findings;
    }

    private static List<Finding> check(List<Unit> units, List<Script> scripts) {
        return check(units, scripts, units);
    }

    /** @param looked those of which everything is wanted */
    private static List<Finding> check(List<Unit> units, List<Script> scripts, List<Unit> looked) {
        Fleet fleet = new Fleet(reading.fleet().facts(), units, reading.fleet().shared());
        return Check.of(fleet, reading.library().with(scripts), screen, List.of(), looked, filled -> {})
                .findings()
                .all();
    }

    /** What became of the faults of one class. */
    private static final class Tally {
        private final Set<String> missed = new TreeSet<>();
        private int possible;
        private int made;
        private int reported;
        private int rightPlace;
        private int rightCode;

        synchronized void add(Mutant mutant, List<Finding> findings) {
            made++;
            reported += findings.isEmpty() ? 0 : 1;
            rightPlace += findings.stream().anyMatch(mutant::isAt) ? 1 : 0;
            if (findings.stream().anyMatch(mutant::isTold)) {
                rightCode++;
            } else {
                missed.add(new TreeSet<>(mutant.places) + " " + mutant.codes
                        + (findings.isEmpty()
                                ? " not told"
                                : " told as " + findings.get(0).at() + " "
                                        + findings.get(0).code()));
            }
        }

        static String table(Map<String, Tally> tallies) {
            Map<String, Tally> rows = new TreeMap<>(tallies);
            Tally all = new Tally();
            rows.values().forEach(all::add);
            StringBuilder table = new StringBuilder("MutationTest\n");
            table.append(row("class of fault", "possible", "made", "reported", "right place", "right code"));
            rows.forEach((fault, tally) -> table.append(tally.row(fault)));
            return table + all.row("in all");
        }

        private void add(Tally other) {
            possible += other.possible;
            made += other.made;
            reported += other.reported;
            rightPlace += other.rightPlace;
            rightCode += other.rightCode;
        }

        private String row(String fault) {
            return row(fault, "" + possible, "" + made, "" + reported, "" + rightPlace, "" + rightCode);
        }

        private static String row(String... cells) {
            return String.format("%-46s %8s %6s %9s %12s %11s%n", (Object[]) Arrays.copyOf(cells, cells.length));
        }
    }
}
