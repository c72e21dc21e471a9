package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.Celsius;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Symbol;
import bayfolio.model.Appliance;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.battery.ANight;
import bayfolio.reckon.battery.Discharge;
import bayfolio.reckon.battery.HouseBank;
import bayfolio.reckon.battery.HouseLoad;
import bayfolio.reckon.battery.Inverting;
import bayfolio.reckon.battery.Night;
import bayfolio.reckon.gas.GasFlame;
import bayfolio.reckon.power.Draw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether the house batteries last a usual night without hook-up. */
final class ANightExplanation {
    private static final double HOUR = 3600;

    private final ANight question;
    private final Night night;
    private final Discharge mild;
    private final Voice voice;

    private ANightExplanation(ANight question, Voice voice) {
        this.question = question;
        this.night = question.night();
        this.mild = night.at(HouseBank.MILD);
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.A_NIGHT, coach.unit().region());
        return ANight.of(coach)
                .map(night -> new ANightExplanation(night, voice).explanation())
                .orElseGet(() -> voice.lacking(ANight.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.A_NIGHT,
                voice.asked(),
                night.heaters().isEmpty() ? oneNight() : bothNights(),
                List.of(byLoad(), alone(), cold()),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.say("source", "cold", voice.source(night.bank().kind().cold())),
                voice.say("error"),
                Optional.of(new Course(
                        Night.LENGTH.value() / HOUR,
                        voice.say("course.unit"),
                        night.bank().limit().value(),
                        Stream.of(HouseBank.MILD, ANight.FREEZING, ANight.HARD_FROST)
                                .map(this::line)
                                .toList())));
    }

    /** What is left of a full charge from hour to hour, and in the morning. */
    private Course.Line line(Celsius temperature) {
        Discharge whole = night.at(temperature);
        List<Course.Point> points = new ArrayList<>(List.of(new Course.Point(0, 1)));
        double time = 0;
        for (int run = 0; run < whole.runs().size(); run++) {
            Discharge soFar = new Discharge(whole.battery(), whole.runs().subList(0, run + 1));
            double end = time + whole.runs().get(run).time().value();
            double before = points.get(points.size() - 1).share();
            if (soFar.used() > 1) {
                // It is empty on the way.
                end = time + (end - time) * before / (soFar.used() - (1 - before));
            }
            time = end;
            points.add(new Course.Point(time / HOUR, soFar.left().value()));
        }
        points.add(new Course.Point(Night.LENGTH.value() / HOUR, whole.left().value()));
        return new Course.Line(
                voice.say(
                        "course.line",
                        "temperature",
                        temperature.amount(voice.first()),
                        "left",
                        Rounding.DOWN.print(whole.left()),
                        "limit",
                        limit()),
                points);
    }

    /** A heater runs longer in frost, so mild weather alone is no answer. */
    private String bothNights() {
        return voice.say(
                "answer.both",
                "mild",
                lasts(HouseBank.MILD),
                "heaters",
                night.heaters().stream()
                        .map(load -> voice.say(
                                "answer.heater",
                                "name",
                                load.name(),
                                "inside",
                                Voice.inside(load.name()),
                                "hours",
                                load.frosty().amount(voice.first())))
                        .toList(),
                "frost",
                lasts(ANight.FREEZING),
                "hard",
                String.valueOf(question.lasts(ANight.FREEZING) && !question.lasts(ANight.HARD_FROST)),
                "limit",
                limit());
    }

    private String lasts(Celsius temperature) {
        Discharge discharge = night.at(temperature);
        Amount drawn = Rounding.UP.print(discharge.drawn());
        Amount left = Rounding.DOWN.print(discharge.left());
        return question.lasts(temperature)
                ? voice.say("answer.yes", "drawn", drawn, "left", left)
                : voice.say("answer.no", "drawn", drawn, "left", left, "mend", mend(temperature));
    }

    private String mend(Celsius temperature) {
        return question.leaveOut(temperature)
                .map(load -> voice.say("answer.without", "name", load.name(), "inside", Voice.inside(load.name())))
                .orElseGet(() -> voice.say("answer.plug-in"));
    }

    private String oneNight() {
        Amount left = Rounding.DOWN.print(mild.left());
        if (question.lasts(HouseBank.MILD)) {
            String frost =
                    !question.lasts(ANight.FREEZING) ? "frost" : !question.lasts(ANight.HARD_FROST) ? "hard" : "none";
            return voice.say(
                    "answer.one",
                    "frost",
                    frost,
                    "drawn",
                    Rounding.UP.print(mild.drawn()),
                    "left",
                    left,
                    "limit",
                    limit());
        }
        return voice.say("answer.too-much", "left", left, "limit", limit(), "mend", mend(HouseBank.MILD));
    }

    private Amount limit() {
        return Rounding.UP.print(night.bank().limit());
    }

    private Grid byLoad() {
        List<List<String>> rows = new ArrayList<>();
        question.sorted().forEach(load -> rows.add(row(load.name(), load.run())));
        if (night.idling().drawn().value() > 0) {
            rows.add(row(voice.say("inverter"), night.idling()));
        }
        rows.add(List.of(voice.say("in-all"), "", "", voice.amount(Rounding.UP.print(mild.drawn()))));
        return new Grid(voice.say("table.loads"), heads("draws", "runs-for", "takes"), rows);
    }

    /** The first column has no name. */
    private List<String> heads(String... keys) {
        List<String> heads = new ArrayList<>(List.of(""));
        heads.addAll(voice.heads(keys));
        return heads;
    }

    private List<String> row(String name, Discharge.Run run) {
        return List.of(
                name,
                voice.amount(Rounding.UP.small(run.current())),
                voice.amount(Rounding.UP.time(run.time())),
                voice.amount(Rounding.UP.print(run.drawn())));
    }

    private Grid alone() {
        List<List<String>> rows = new ArrayList<>();
        question.sorted().stream()
                .filter(load -> !load.alwaysOn())
                .forEach(load -> rows.add(List.of(load.name(), until(night.alone(load)))));
        question.airConditioners()
                .forEach(draw -> rows.add(List.of(airConditioner(draw), until(question.alone(draw)))));
        return new Grid(voice.say("table.alone"), heads("limit-after"), rows);
    }

    private String until(Seconds time) {
        return voice.amount(Rounding.DOWN.time(time));
    }

    private String airConditioner(Draw draw) {
        Optional<Boolean> fed = draw.circuit().facts().find(Circuit.BY_INVERTER);
        return voice.say(
                "air-conditioner",
                "name",
                draw.load().name(),
                "fed",
                fed.map(String::valueOf).orElse("unknown"));
    }

    private Grid cold() {
        List<List<String>> rows = new ArrayList<>();
        for (Celsius temperature : ANight.TEMPERATURES) {
            Discharge discharge = night.at(temperature);
            List<String> row = new ArrayList<>(List.of(temperature(temperature)));
            night.heaters()
                    .forEach(load -> row.add(
                            voice.amount(Rounding.UP.time(Night.frost(temperature) ? load.frosty() : load.hours()))));
            row.add(voice.amount(Rounding.DOWN.print(discharge.battery().rated())));
            row.add(voice.amount(Rounding.DOWN.print(discharge.left())));
            row.add(question.until(discharge).map(this::until).orElseGet(() -> voice.say("not-in-the-night")));
            rows.add(row);
        }
        List<String> head = new ArrayList<>(voice.heads("batteries-at"));
        night.heaters().forEach(load -> head.add(voice.say("head.on-for", "name", load.name())));
        head.addAll(voice.heads("hold", "left", "limit-after-all"));
        return new Grid(voice.say(night.heaters().isEmpty() ? "table.cold" : "table.cold-heaters"), head, rows);
    }

    private String temperature(Celsius temperature) {
        return voice.amount(temperature.both(voice.first()));
    }

    private List<Input> inputs() {
        BankInputs bank = new BankInputs(night.bank(), voice);
        List<Input> inputs = new ArrayList<>(bank.basics());
        inputs.addAll(bank.rating());
        for (HouseLoad load : night.loads()) {
            inputs.add(input("draw", drawn(load), new Origin.Stated(load.load().facts(), key(load)), load));
            String hours = voice.amount(load.hours().amount(voice.first()));
            inputs.add(
                    load.stated().isPresent()
                            ? input("hours", hours, hoursFrom(load, Appliance.GAS_HOURS, Load.A_NIGHT), load)
                            : input("hours-always-on", hours, alwaysOn(load), load));
            if (load.heats()) {
                inputs.add(input(
                        "hours-frost",
                        voice.amount(load.frosty().amount(voice.first())),
                        hoursFrom(load, Appliance.GAS_HOURS_FROST, Load.A_NIGHT_FROST),
                        load));
            }
        }
        if (night.loads().stream().anyMatch(HouseLoad::inverted)) {
            Inverting inverter = night.inverter();
            inputs.add(voice.input("inverter-gives", voice.shown(inverter.efficiency())));
            inputs.add(voice.input("inverter-takes", voice.shown(inverter.idle())));
        }
        return inputs;
    }

    /** The blower of a gas heater runs while its flame does. */
    private Origin hoursFrom(HouseLoad load, Key<Seconds> flame, Key<Seconds> own) {
        return GasFlame.heaterOf(load.load(), question.coach().unit())
                .filter(heater -> heater.facts().has(flame))
                .<Origin>map(heater -> new Origin.Stated(heater.facts(), flame))
                .orElseGet(() -> new Origin.Stated(load.load().facts(), own));
    }

    private static Origin alwaysOn(HouseLoad load) {
        return new Origin.Stated(load.load().facts(), Load.ALWAYS_ON);
    }

    private Input input(String key, String value, Origin origin, HouseLoad load) {
        return voice.input(key, value, origin, "name", load.name(), "inside", Voice.inside(load.name()));
    }

    private static Key<?> key(HouseLoad load) {
        return load.inverted() ? Load.WATTS : Draw.stated(load.load());
    }

    private String drawn(HouseLoad load) {
        Facts facts = load.load().facts();
        Optional<Amount> stated = load.inverted() ? facts.written(Load.WATTS) : facts.written(Load.AMPS);
        return stated.map(voice::amount)
                .orElseGet(() -> voice.say("from-the-batteries", "current", Rounding.NEAREST.print(load.current())));
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        night.loads().stream()
                .filter(HouseLoad::inverted)
                .forEach(load -> steps.add(voice.say(
                        "step.inverted",
                        "name",
                        load.name(),
                        "drawn",
                        drawn(load),
                        "volts",
                        night.bank().volts().amount(voice.first()),
                        "efficiency",
                        night.inverter().efficiency().value().amount(voice.first()),
                        "current",
                        Rounding.UP.print(load.current()))));
        double begun = 0;
        for (Discharge.Run run : mild.runs()) {
            double end = begun + run.time().value();
            steps.add(voice.say(
                    "step.run",
                    "from",
                    Rounding.NEAREST.time(new Seconds(begun)),
                    "to",
                    Rounding.NEAREST.time(new Seconds(end)),
                    "current",
                    Rounding.NEAREST.small(run.current()),
                    "empty",
                    Rounding.NEAREST.time(mild.battery().lasts(run.current())),
                    "used",
                    percent(new Discharge(mild.battery(), List.of(run)).used())));
            begun = end;
        }
        Amount usable = night.bank().usable().value().amount(voice.first());
        steps.add(voice.say("step.sum", "used", percent(mild.used()), "usable", usable));
        if (!night.heaters().isEmpty()) {
            steps.add(voice.say(
                    "step.frost",
                    "temperature",
                    temperature(ANight.FREEZING),
                    "used",
                    percent(night.at(ANight.FREEZING).used()),
                    "usable",
                    usable));
        }
        question.airConditioners().stream()
                .filter(draw -> question.alone(draw).value() < Night.LENGTH.value())
                .findFirst()
                .ifPresent(draw -> steps.add(voice.say(
                        "step.air-conditioner",
                        "name",
                        draw.load().name(),
                        "current",
                        Rounding.UP.print(night.inverter()
                                .draws(draw.watts())
                                .plus(night.inverter().idles())),
                        "time",
                        until(question.alone(draw)))));
        return steps;
    }

    private static Amount percent(double share) {
        return Rounding.NEAREST.print(100 * share, 1, Symbol.PERCENT);
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.length"));
        assumed.add(voice.say("assumed.nothing-charges"));
        assumed.add(voice.say("assumed.at-once"));
        if (!night.bank().ratedOver().isStated()) {
            assumed.add(voice.say("assumed.rated-over"));
        }
        if (!night.heaters().isEmpty()) {
            assumed.add(voice.say("assumed.frost"));
        }
        if (night.idling().drawn().value() > 0) {
            assumed.add(voice.say("assumed.inverter"));
        }
        return assumed;
    }
}
