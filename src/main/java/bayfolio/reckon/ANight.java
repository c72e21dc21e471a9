package bayfolio.reckon;

import bayfolio.fact.Facts;
import bayfolio.measure.Celsius;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Watts;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Inverter;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.reckon.Reckoned.Lacking;
import bayfolio.reckon.Reckoned.Reckoning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether the house batteries last a usual night without hook-up. */
public final class ANight {
    private static final String ASKED = "Will the batteries last the night?";

    private static final Celsius FREEZING = new Celsius(0);
    private static final Celsius HARD_FROST = new Celsius(-10);

    static final List<Celsius> TEMPERATURES = List.of(HouseBank.MILD, FREEZING, HARD_FROST);

    private final Coach coach;
    private final Night night;
    private final Discharge mild;
    private final MeasureSystem first;

    private ANight(Coach coach, Night night) {
        this.coach = coach;
        this.night = night;
        this.mild = night.at(HouseBank.MILD);
        this.first = coach.unit().region().first();
    }

    public static Reckoned of(Coach coach) {
        return Night.of(coach)
                .map(night -> (Reckoned) new ANight(coach, night).reckon())
                .orElseGet(() -> new Lacking(Question.A_NIGHT, ASKED, Night.lacking(coach)));
    }

    private Reckoning reckon() {
        return new Reckoning(
                Question.A_NIGHT,
                ASKED,
                answer(),
                List.of(byLoad(), alone(), cold()),
                inputs(),
                "Share used = time / (H · (C / (I · H))^k), added up for each current I; never more than C in all.",
                steps(),
                assumed(),
                "Peukert's rule for the rated capacity, as an engineering site gives it; tried on two published examples. "
                        + "In the cold: " + night.bank().kind().coldSource() + ".",
                "The rule is off by about 10 %, to either side. Old batteries hold less than their label says. "
                        + "Less runs at the same time than is taken here, so a little more is left.");
    }

    private String answer() {
        return night.heaters().isEmpty() ? oneNight() : bothNights();
    }

    /** A heater runs longer in frost, so mild weather alone is no answer. */
    private String bothNights() {
        return "From a full charge, in mild weather: " + lasts(HouseBank.MILD) + " In frost, with "
                + night.heaters().stream()
                        .map(load -> load.named() + " on for " + load.frosty().in(first))
                        .collect(Collectors.joining(" and "))
                + ": " + lasts(FREEZING) + hardFrost() + " The limit is " + limit() + ".";
    }

    private String lasts(Celsius temperature) {
        Discharge discharge = night.at(temperature);
        return until(discharge).isEmpty()
                ? "yes, it takes %s and leaves %s."
                        .formatted(Rounding.UP.print(discharge.drawn()), Rounding.DOWN.print(discharge.left()))
                : "no, it takes %s and leaves %s. "
                                .formatted(Rounding.UP.print(discharge.drawn()), Rounding.DOWN.print(discharge.left()))
                        + without(temperature);
    }

    /** What to leave out; never the heater. */
    private String without(Celsius temperature) {
        return largest()
                .filter(load -> until(night.without(load).at(temperature)).isEmpty())
                .map(load -> "Without " + load.named() + " the charge lasts.")
                .orElse("Plug in, or run less.");
    }

    private String hardFrost() {
        return until(night.at(FREEZING)).isEmpty()
                        && until(night.at(HARD_FROST)).isPresent()
                ? " In hard frost it does not last."
                : "";
    }

    private String oneNight() {
        if (until(mild).isEmpty()) {
            return "Yes, from a full charge%s. A usual night takes %s and leaves %s; the limit is %s."
                    .formatted(frost(), Rounding.UP.print(mild.drawn()), Rounding.DOWN.print(mild.left()), limit());
        }
        String late = "Not with all of it: it takes the charge down to %s, and the limit is %s. "
                .formatted(Rounding.DOWN.print(mild.left()), limit());
        return late + without(HouseBank.MILD);
    }

    private String frost() {
        if (until(night.at(FREEZING)).isPresent()) {
            return ", but not in frost";
        }
        return until(night.at(HARD_FROST)).isPresent() ? ", but not in hard frost" : "";
    }

    /** Of what can be left out, what takes most. */
    private Optional<HouseLoad> largest() {
        return sorted().filter(load -> !load.alwaysOn() && !load.heats()).findFirst();
    }

    private Optional<Seconds> until(Discharge discharge) {
        return discharge.until(night.bank().usable());
    }

    private String limit() {
        return Rounding.UP.print(night.bank().limit());
    }

    private Stream<HouseLoad> sorted() {
        return night.loads().stream()
                .sorted(Comparator.comparingDouble(
                                (HouseLoad load) -> load.run().drawn().value())
                        .reversed());
    }

    private Grid byLoad() {
        List<List<String>> rows = new ArrayList<>();
        sorted().forEach(load -> rows.add(row(load.name(), load.run())));
        if (night.idling().drawn().value() > 0) {
            rows.add(row("The inverter itself", night.idling()));
        }
        rows.add(List.of("In all", "", "", Rounding.UP.print(mild.drawn())));
        return new Grid("A usual night", List.of("", "Draws from the batteries", "Runs for", "Takes"), rows);
    }

    private static List<String> row(String name, Discharge.Run run) {
        return List.of(
                name,
                Night.current(Rounding.UP, run.current()),
                Night.time(Rounding.UP, run.time()),
                Rounding.UP.print(run.drawn()));
    }

    private Grid alone() {
        List<List<String>> rows = new ArrayList<>();
        sorted().filter(load -> !load.alwaysOn())
                .forEach(load -> rows.add(List.of(load.name(), Night.time(Rounding.DOWN, night.alone(load)))));
        airConditioners()
                .forEach(draw -> rows.add(List.of(airConditioner(draw), Night.time(Rounding.DOWN, alone(draw)))));
        return new Grid("With one thing alone", List.of("", "Limit after"), rows);
    }

    private static String airConditioner(Draw draw) {
        String name = draw.load().name();
        return draw.circuit()
                .facts()
                .find(Circuit.BY_INVERTER)
                .map(fed -> name + (fed ? " on the inverter" : ", if the inverter fed it (it does not)"))
                .orElse(name + ", if the inverter feeds it");
    }

    /** Air conditioners that the inverter has the power for, whether it is wired to them or not. */
    private Stream<Draw> airConditioners() {
        Optional<Watts> rating = coach.unit()
                .facts()
                .find(Unit.INVERTER)
                .flatMap(inverter -> inverter.facts().find(Inverter.RATING));
        return Draw.all(coach.unit())
                .filter(draw -> draw.load().roles().contains(Draw.AIR_CONDITIONER))
                .filter(draw -> draw.watts().value() > 0)
                .filter(draw ->
                        night.loads().stream().noneMatch(load -> load.load().equals(draw.load())))
                .filter(draw ->
                        rating.filter(limit -> !Draw.over(draw.watts(), limit)).isPresent());
    }

    private Seconds alone(Draw airConditioner) {
        Inverting inverter = night.inverter();
        return night.alone(inverter.draws(airConditioner.watts()).plus(inverter.idles()));
    }

    private Grid cold() {
        List<List<String>> rows = new ArrayList<>();
        for (Celsius temperature : TEMPERATURES) {
            Discharge discharge = night.at(temperature);
            List<String> row = new ArrayList<>(List.of(temperature(temperature, first)));
            night.heaters()
                    .forEach(load ->
                            row.add(Night.time(Rounding.UP, Night.frost(temperature) ? load.frosty() : load.hours())));
            row.add(Rounding.DOWN.print(discharge.battery().rated()));
            row.add(Rounding.DOWN.print(discharge.left()));
            row.add(until(discharge)
                    .map(time -> Night.time(Rounding.DOWN, time))
                    .orElse("not in the night"));
            rows.add(row);
        }
        List<String> head = new ArrayList<>(List.of("Batteries at"));
        night.heaters().forEach(load -> head.add(load.name() + " on for"));
        head.addAll(List.of("Hold", "Left of that", "Limit after, all on at once"));
        return new Grid(night.heaters().isEmpty() ? "The same night in the cold" : "A night in the cold", head, rows);
    }

    static String temperature(Celsius temperature, MeasureSystem first) {
        return temperature.in(first) + " (" + temperature.in(first.other()) + ")";
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(night.bank().inputs(first));
        inputs.addAll(night.bank().ratingInputs(first));
        for (HouseLoad load : night.loads()) {
            inputs.add(Input.described("draw of " + load.named(), drawn(load)));
            String hours = load.hours().in(first);
            inputs.add(
                    load.stated().isPresent()
                            ? Input.described("hours of " + load.named(), hours)
                            : Input.usual("hours of " + load.named(), hours, "always on, the whole night"));
            if (load.heats()) {
                inputs.add(Input.described(
                        "hours of " + load.named() + " in frost", load.frosty().in(first)));
            }
        }
        if (night.loads().stream().anyMatch(HouseLoad::inverted)) {
            inputs.addAll(inverter());
        }
        return inputs;
    }

    private String drawn(HouseLoad load) {
        Facts facts = load.load().facts();
        Optional<String> stated = load.inverted() ? facts.written(Load.WATTS) : facts.written(Load.AMPS);
        return stated.orElseGet(() -> Rounding.NEAREST.print(load.current()) + " from the batteries");
    }

    private List<Input> inverter() {
        Optional<Inverter> described = coach.unit().facts().find(Unit.INVERTER);
        String efficiency = night.inverter().efficiency().in(first);
        String idle = night.inverter().idle().in(first);
        return List.of(
                described.filter(it -> it.facts().has(Inverter.EFFICIENCY)).isPresent()
                        ? Input.described("what comes out of the inverter", efficiency)
                        : Input.usual("what comes out of the inverter", efficiency, "product manuals, 85 to 95 %"),
                described.filter(it -> it.facts().has(Inverter.IDLE_DRAW)).isPresent()
                        ? Input.described("what the inverter takes for itself", idle)
                        : Input.unverified(
                                "what the inverter takes for itself",
                                idle,
                                "common practice, 15 to 40 W for one of 2 to 3 kW; three that were measured took 1.5 to 2.5 % of their rating"));
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        night.loads().stream()
                .filter(HouseLoad::inverted)
                .forEach(load -> steps.add("%s: %s / (%s × %s) = %s from the batteries."
                        .formatted(
                                load.name(),
                                drawn(load),
                                night.bank().volts().in(first),
                                night.inverter().efficiency().in(first),
                                Rounding.UP.print(load.current()))));
        double begun = 0;
        for (Discharge.Run run : mild.runs()) {
            double end = begun + run.time().value();
            steps.add("From %s to %s: %s, which would empty a full charge in %s. Used: %s."
                    .formatted(
                            Night.time(Rounding.NEAREST, new Seconds(begun)),
                            Night.time(Rounding.NEAREST, new Seconds(end)),
                            Night.current(Rounding.NEAREST, run.current()),
                            Night.time(Rounding.NEAREST, mild.battery().lasts(run.current())),
                            percent(new Discharge(mild.battery(), List.of(run)).used())));
            begun = end;
        }
        steps.add("Added up: %s used, %s may be used."
                .formatted(percent(mild.used()), night.bank().usable().in(first)));
        if (!night.heaters().isEmpty()) {
            steps.add("With the hours of frost, at %s: %s used, %s may be used."
                    .formatted(
                            temperature(FREEZING, first),
                            percent(night.at(FREEZING).used()),
                            night.bank().usable().in(first)));
        }
        airConditioners()
                .filter(draw -> alone(draw).value() < Night.LENGTH.value())
                .findFirst()
                .ifPresent(draw -> steps.add(
                        "%s on the inverter: %s from the batteries, %s until the limit. That does for a lunch stop, not for a night."
                                .formatted(
                                        draw.load().name(),
                                        Rounding.UP.print(night.inverter()
                                                .draws(draw.watts())
                                                .plus(night.inverter().idles())),
                                        Night.time(Rounding.DOWN, alone(draw)))));
        return steps;
    }

    private static String percent(double share) {
        return Rounding.NEAREST.print(100 * share, 1) + " %";
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>(List.of(
                "The night has 12 hours and begins with a full charge.",
                "Nothing charges the batteries meanwhile.",
                "All that runs begins at once; no other order takes more."));
        if (!night.bank().bank().facts().has(Bank.RATED_OVER)) {
            assumed.add("The label rates the capacity over 20 hours.");
        }
        if (!night.heaters().isEmpty()) {
            assumed.add("In frost the batteries are as cold as the air.");
        }
        if (night.idling().drawn().value() > 0) {
            assumed.add("The inverter is on while something hangs on it, and off otherwise.");
        }
        return assumed;
    }
}
