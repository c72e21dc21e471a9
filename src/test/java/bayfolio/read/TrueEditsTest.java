package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.check.Refit;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Appliance;
import bayfolio.model.Awning;
import bayfolio.model.Bank;
import bayfolio.model.Bed;
import bayfolio.model.Charger;
import bayfolio.model.Compartment;
import bayfolio.model.Counted;
import bayfolio.model.Door;
import bayfolio.model.Engine;
import bayfolio.model.Gauge;
import bayfolio.model.Generator;
import bayfolio.model.Hire;
import bayfolio.model.Inverter;
import bayfolio.model.Item;
import bayfolio.model.Load;
import bayfolio.model.Note;
import bayfolio.model.People;
import bayfolio.model.Service;
import bayfolio.model.Size;
import bayfolio.model.Slide;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.source.Located;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * True edits are let pass: what a yard changes on a coach in a year, drawn with all its consequences, by a factor, an inch,
 * a day or a sentence. A finding is a false alarm; at most two in a hundred are.
 */
class TrueEditsTest {
    private static final int EDITS = 300;

    /** Of one kind, so that no kind is most of them. */
    private static final int MOST = 14;

    private static final long SEED = 20_261_128;

    /** The last number of a length in inches, or in meters with two places. */
    private static final Pattern LAST_INCHES = Pattern.compile("([0-9]+) in$");

    private static final Pattern METERS = Pattern.compile("([0-9]+\\.[0-9]{2}) m$");

    private static final DemoCoaches COACHES = DemoCoaches.read();
    private static final LocalDate TODAY = COACHES.fleet().asOf().orElseThrow();

    private static final Path DRAWN = Path.of("src/test/resources/bayfolio/mistakes/drawn");

    /** One of several ways to draw the same: {@code {100 Ah|110 Ah}}, the first of all of them together, and so on. */
    private static final Pattern WAYS = Pattern.compile("\\{([^{}]*\\|[^{}]*)}");

    private final Map<String, List<TrueEdits>> byKind = new TreeMap<>();

    @TempDir
    private Path temp;

    private record Edit(String name, SourceFile after) {}

    @Test
    void hardlyAnyTrueEditIsTold() throws Exception {
        COACHES.units().forEach(this::draw);
        List<Edit> edits = new ArrayList<>(refits());
        int refits = edits.size();
        Random random = new Random(SEED);
        byKind.values().forEach(all -> {
            Collections.shuffle(all, random);
            all.stream()
                    .filter(TrueEdits::changes)
                    .limit(MOST)
                    .forEach(it -> edits.add(new Edit(
                            it.name(),
                            new SourceFile(
                                    it.after().path(), countedAnew(it.after().text())))));
        });
        Collections.shuffle(edits.subList(refits, edits.size()), random);
        assertThat(edits).hasSizeGreaterThanOrEqualTo(EDITS);

        List<String> alarms = edits.subList(0, EDITS).parallelStream()
                .map(edit -> alarm(edit.name, COACHES.told(edit.after)))
                .filter(alarm -> !alarm.isEmpty())
                .toList();

        System.out.println("TrueEditsTest: " + EDITS + " true edits, " + refits + " of them refits drawn whole, "
                + alarms.size() + " told\n" + String.join("", alarms));
        assertThat(100.0 * alarms.size() / EDITS)
                .as("false alarms of a hundred")
                .isLessThanOrEqualTo(2);
    }

    /** Each page as many times as there are ways to draw it. */
    private List<Edit> refits() throws IOException {
        List<Edit> edits = new ArrayList<>();
        try (Stream<Path> pages = Files.list(DRAWN)) {
            for (Path page : pages.sorted().toList()) {
                String text = Files.readString(page).replace("AS-OF", TODAY.toString());
                int ways = WAYS.matcher(text)
                        .results()
                        .mapToInt(it -> it.group(1).split("\\|").length)
                        .max()
                        .orElse(1);
                for (int i = 0; i < ways; i++) {
                    int way = i;
                    Path drawn = Files.writeString(
                            Files.createDirectories(temp.resolve("way-" + (i + 1)))
                                    .resolve(page.getFileName()),
                            WAYS.matcher(text).replaceAll(it -> it.group(1).split("\\|")[way]));
                    Refit refit = Refit.read(drawn);
                    SourceFile before = COACHES.units().stream()
                            .filter(unit -> unit.id().equals(refit.coach()))
                            .findFirst()
                            .orElseThrow()
                            .facts()
                            .at()
                            .file();
                    edits.add(new Edit(
                            refit.name() + ", way " + (i + 1),
                            new SourceFile(before.path(), countedAnew(refit.done(before.text())))));
                }
            }
        }
        return edits;
    }

    /** Whoever puts something in or takes it out counts what is there then. */
    private static String countedAnew(String text) {
        String counted = text;
        for (Key<?> key : Counted.SHAPE.keys()) {
            Matcher list = Pattern.compile("(?m)^" + key.name() + ":\n((?:[ #].*\n|\n)*)")
                    .matcher(text);
            if (list.find()) {
                long described = list.group(1)
                        .lines()
                        .filter(it -> it.startsWith("  - "))
                        .count();
                counted = counted.replaceFirst("(?m)^(  " + key.name() + ": )[0-9]+$", "$1" + described);
            }
        }
        return counted;
    }

    private static String alarm(String name, List<Finding> findings) {
        return findings.isEmpty()
                ? ""
                : name + "\n"
                        + findings.stream()
                                .map(it -> "    " + it.at().line() + ": " + it.message() + " [" + it.code() + "]\n")
                                .collect(Collectors.joining());
    }

    private void draw(Unit unit) {
        tanks(unit);
        power(unit);
        road(unit);
        measuredAgain(unit);
        days(unit);
        words(unit);
        boarded(unit);
        hire(unit);
    }

    private void tanks(Unit unit) {
        for (Tank tank : unit.tanks()) {
            for (double factor : new double[] {0.93, 1.06}) {
                if (!tank.facts().has(Tank.EACH)) {
                    edit(unit, "tank of another size, " + tank.id() + " x " + factor)
                            .times(factor, tank, Tank.CAPACITY, Tank.CAPACITY_PLATE)
                            .put(tank, Tank.MEASURED_ON, TODAY.toString());
                }
            }
        }
    }

    private void power(Unit unit) {
        for (double factor : new double[] {0.9, 1.1}) {
            for (Bank bank : unit.banks()) {
                edit(unit, "batteries of another size, " + bank.id() + " x " + factor)
                        .times(factor, bank, Bank.AMP_HOURS, Bank.CHARGE_LIMIT);
            }
            unit.facts()
                    .find(Unit.INVERTER)
                    .ifPresent(inverter ->
                            edit(unit, "inverter, idle draw x " + factor).times(factor, inverter, Inverter.IDLE_DRAW));
            unit.facts()
                    .find(Unit.CHARGER)
                    .ifPresent(charger -> edit(unit, "charger x " + factor)
                            .times(factor > 1 ? 1.02 : 0.97, charger, Charger.EFFICIENCY));
            unit.generator()
                    .ifPresent(generator -> edit(unit, "generator burns x " + factor)
                            .times(factor, generator, Generator.BURN_HALF, Generator.BURN_FULL));
            for (Load load : unit.loads()) {
                edit(unit, "load measured anew, " + load.id() + " x " + factor)
                        .times(factor, load, Load.WATTS, Load.AMPS, Load.START_AMPS);
            }
        }
    }

    private void road(Unit unit) {
        Weights weights = unit.facts().get(Unit.WEIGHTS);
        Tires tires = unit.facts().get(Unit.TIRES);
        for (double factor : new double[] {0.99, 1.01}) {
            Weighing weighing = weights.facts().get(Weights.AS_WEIGHED);
            edit(unit, "weighed again x " + factor)
                    .times(factor, weighing, Weighing.TOTAL, Weighing.FRONT, Weighing.REAR)
                    .anew(weighing, Weighing.ON, TODAY.toString());
            Engine engine = unit.facts().get(Unit.ENGINE);
            edit(unit, "consumption x " + factor).times(factor > 1 ? 1.12 : 0.9, engine, Engine.CONSUMPTION);
            edit(unit, "newer tires x " + factor).put(tires, Tires.AGE_CODE, factor > 1 ? "\"0226\"" : "\"3525\"");
        }
        edit(unit, "wheel nuts later").times(2, tires, Tires.RETORQUE);
        Size size = unit.size();
        edit(unit, "a flatter antenna on the roof, and all measured again")
                .put(size, Size.HEIGHT, inchMore(size, Size.HEIGHT))
                .put(size, Size.MEASURED_ON, TODAY.toString());
        edit(unit, "mirrors of another make")
                .put(size, Size.WIDTH_MIRRORS, inchMore(size, Size.WIDTH_MIRRORS))
                .put(size, Size.MEASURED_ON, TODAY.toString());
    }

    private void measuredAgain(Unit unit) {
        for (Compartment bay : unit.compartments()) {
            inchMore(unit, "door measured again", bay, "width");
            inchMore(unit, "height of a door measured again", bay, "height");
        }
        for (Door door : unit.doors()) {
            inchMore(unit, "width of an exit measured again", door, "width");
        }
        for (Slide slide : unit.slides()) {
            inchMore(unit, "depth of a slide-out measured again", slide, "depth");
        }
        for (Awning awning : unit.awnings()) {
            inchMore(unit, "reach of an awning measured again", awning, "reach");
            edit(unit, "awning for less wind").times(0.9, awning, Awning.WIND_LIMIT);
        }
        unit.facts().get(Unit.PEOPLE).facts().all(People.BEDS).forEach(bed -> {
            inchMore(unit, "bed measured again", bed, "length");
            edit(unit, "a stronger bed").times(1.1, bed, Bed.LOAD_LIMIT);
        });
        for (Thing thing : all(unit, Appliance.SHAPE.name())) {
            edit(unit, "heats a little slower, " + thing.id()).times(1.2, thing, Appliance.HEAT_UP);
        }
        for (Thing thing : all(unit, "connection")) {
            inchMore(unit, "connection measured again", thing, "height");
        }
    }

    private void inchMore(Unit unit, String what, Described record, String key) {
        record.facts()
                .shape()
                .key(key)
                .filter(record.facts()::has)
                .ifPresent(
                        it -> edit(unit, what + ", line " + record.facts().at().line())
                                .put(record, it, inchMore(record, it)));
    }

    private void days(Unit unit) {
        int line = 0;
        for (Located<Service> service : unit.facts().find(Unit.SERVICES).orElse(List.of())) {
            edit(unit, "service done, " + line++).anew(service.value(), Service.LAST, TODAY.toString());
        }
        for (Thing alarm : all(unit, Gauge.SHAPE.name())) {
            if (alarm.facts().has(Gauge.REPLACE_BY)) {
                edit(unit, "alarm renewed, " + alarm.id())
                        .put(alarm, Gauge.REPLACE_BY, TODAY.plusYears(6).toString());
            }
        }
        for (Compartment bay : unit.compartments()) {
            edit(unit, "looked at, " + bay.id()).anew(bay, bay.identity().checkedOn(), TODAY.toString());
        }
    }

    private void words(Unit unit) {
        unit.things().forEach(thing -> {
            word(unit, "a sentence more", thing, "note", "It is cleaned at each turn-round.");
            word(unit, "a sentence more", thing, "work", "It moves easily.");
            word(unit, "a sentence more", thing, "opens", "It takes a firm hand.");
            word(unit, "a sentence more", thing, "comes-on", "That is how it should be.");
            word(unit, "a sentence more", thing, "truth", "It was looked at in the yard.");
            word(unit, "a look told further", thing, "on-look", "It is easy to see from where you stand.");
            word(unit, "a look told further", thing, "off-look", "It is easy to see from where you stand.");
            word(unit, "a look told further", thing, "shut-look", "Push it once more.");
            word(unit, "a place told further", thing, "where", "You find it with your hand.");
            if (thing instanceof Switch && thing.facts().has(Switch.PLATE)) {
                String plate = DemoCoaches.text(thing.facts().at(Switch.PLATE)).replace("\"", "");
                edit(unit, "a plate made new, " + thing.id()).put(thing, Switch.PLATE, plate + " · PUSH GENTLY");
            }
            if (thing instanceof Item && thing.roles().isEmpty()) {
                edit(unit, "one more of it, " + thing.id())
                        .put(
                                thing,
                                Item.COUNT,
                                "" + (thing.facts().find(Item.COUNT).orElse(1) + 1));
            }
        });
    }

    @SuppressWarnings("unchecked") // its values are texts
    private void word(Unit unit, String what, Thing thing, String key, String sentence) {
        thing.facts()
                .shape()
                .key(key)
                .filter(it -> thing.facts().has(it) && oneLine(thing.facts(), it))
                .ifPresent(it ->
                        edit(unit, what + ", " + thing.id() + " " + key).besides(thing, (Key<String>) it, sentence));
    }

    private void boarded(Unit unit) {
        for (Compartment bay : unit.compartments()) {
            if (bay.roles().contains("storage-bay")) {
                for (String[] thing : new String[][] {
                    {"folding-table", "Folding table", "Its legs unfold one by one."},
                    {"door-mat", "Door mat", "Shake it out before you drive."},
                    {"camp-stools", "Camp stools", "They are for grown-ups, too."}
                }) {
                    edit(unit, "something more on board, " + thing[0] + " in " + bay.id())
                            .more(
                                    Unit.ITEMS,
                                    "id: " + thing[0],
                                    "name: " + thing[1],
                                    "count: 2",
                                    "in: " + bay.id(),
                                    "for: renter",
                                    "note: " + thing[2]);
                }
            }
        }
        for (String note : List.of(
                "The curtain rail of the galley sits loose; pull it sideways only.",
                "A spare key hangs in the office.",
                "The lid of the trash bin closes by itself.")) {
            edit(unit, "a note: " + note).more(Unit.NOTES, "text: " + note);
        }
        unit.facts().find(Unit.NOTES).stream()
                .flatMap(List::stream)
                .map(Located::value)
                .filter(note -> note.facts().has(Note.STAFF_ONLY))
                .forEach(note -> edit(unit, "a note less").less(note));
    }

    private void hire(Unit unit) {
        Hire hire = unit.facts().get(Unit.HIRE);
        edit(unit, "hired out after hours or not")
                .anew(
                        hire,
                        Hire.AFTER_HOURS_PICKUP,
                        hire.facts().find(Hire.AFTER_HOURS_PICKUP).orElse(false) ? "no" : "yes");
        edit(unit, "days before the engine battery is switched off").anew(hire, Hire.DAYS_BEFORE_CHASSIS_OFF, "9 days");
        Engine engine = unit.facts().get(Unit.ENGINE);
        edit(unit, "driven in less wind").times(0.9, engine, Engine.WIND_LIMIT);
    }

    private static List<Thing> all(Unit unit, String kind) {
        return unit.things().filter(thing -> thing.kind().equals(kind)).toList();
    }

    private static boolean oneLine(Facts facts, Key<?> key) {
        return facts.at(key).line() == facts.at(key).endLine();
    }

    private static String inchMore(Described record, Key<?> key) {
        String written = DemoCoaches.text(record.facts().at(key));
        Matcher inches = LAST_INCHES.matcher(written);
        if (inches.find()) {
            int more = Integer.parseInt(inches.group(1)) + 1;
            return inches.replaceFirst(more < 12 ? more + " in" : more - 2 + " in");
        }
        Matcher meters = METERS.matcher(written);
        return meters.find()
                ? String.format(Locale.ROOT, "%.2f m", Double.parseDouble(meters.group(1)) + 0.02)
                : written;
    }

    /** Drawn only if it changes something; its kind is its name up to the first comma. */
    private TrueEdits edit(Unit unit, String what) {
        TrueEdits edit = new TrueEdits(unit, what);
        byKind.computeIfAbsent(what.replaceFirst("[,:] .*| x .*", ""), it -> new ArrayList<>())
                .add(edit);
        return edit;
    }
}
