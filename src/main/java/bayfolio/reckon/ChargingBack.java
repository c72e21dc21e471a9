package bayfolio.reckon;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;
import bayfolio.model.Bank;
import bayfolio.model.Charger;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.reckon.Reckoned.Lacking;
import bayfolio.reckon.Reckoned.Reckoning;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How long generator or hook-up must charge to bring back what a usual night took. */
public final class ChargingBack {
    private static final String ASKED = "How long does it take to charge after a night?";

    /** Of what a charger draws, what reaches the batteries; 55 A chargers give 79 to 85 %. */
    private static final Share USUAL_EFFICIENCY = new Share(0.80);

    /** While it charges, in place of the 12 V on the label. */
    private static final double CHARGING_VOLTS = 14.4;

    private static final double HOUR = 3600;

    private final Coach coach;
    private final Night night;
    private final Charger charger;
    private final Optional<Generator> generator;
    private final AmpHours taken;
    private final Amps always;
    private final Recharge recharge;
    private final MeasureSystem first;

    private ChargingBack(Coach coach, Night night, Charger charger) {
        this.coach = coach;
        this.night = night;
        this.charger = charger;
        this.generator = generator(coach, night.bank());
        this.taken = taken(night);
        this.always = always(night);
        this.recharge = recharge(night.bank(), new Amps(rating(charger).value() - always.value()));
        this.first = coach.unit().region().first();
    }

    public static Reckoned of(Coach coach) {
        List<String> lacking = lacking(coach);
        return Night.of(coach)
                .filter(night -> lacking.isEmpty())
                .flatMap(night -> coach.unit().facts().find(Unit.CHARGER).map(charger ->
                        (Reckoned) new ChargingBack(coach, night, charger).reckon()))
                .orElseGet(() -> new Lacking(Question.CHARGING_BACK, ASKED, lacking));
    }

    static List<String> lacking(Coach coach) {
        Optional<Night> night = Night.of(coach);
        if (night.isEmpty()) {
            return Night.lacking(coach);
        }
        Unit unit = coach.unit();
        Optional<Charger> charger =
                unit.facts().find(Unit.CHARGER).filter(it -> it.facts().whole());
        if (charger.isEmpty()) {
            return List.of("amps that the charger gives");
        }
        if (rating(charger.get()).value() <= always(night.get()).value()) {
            return List.of("a charger that gives more than what is always on");
        }
        return generator(coach, night.get().bank()).isPresent()
                        || !Shore.of(unit).isEmpty()
                ? List.of()
                : List.of("what feeds the charger: generator or hook-up");
    }

    private static Amps rating(Charger charger) {
        return charger.facts().get(Charger.RATING);
    }

    /** The generator, unless the batteries are said to be charged by other things, and the charger does not hang on it. */
    private static Optional<Generator> generator(Coach coach, HouseBank bank) {
        Unit unit = coach.unit();
        List<String> by = bank.bank().facts().all(Bank.CHARGED_BY);
        boolean charges = by.isEmpty()
                || unit.supplies().stream()
                        .filter(supply -> supply.source() == Supply.Source.GENERATOR)
                        .anyMatch(supply -> by.contains(supply.id()));
        return unit.generator()
                .filter(it -> charges || feedsCharger(coach))
                .filter(it ->
                        it.facts().whole() && it.facts().get(Generator.POWER).value() > 0);
    }

    /** Whether a switch of the generator feeds the circuit of the charger, at once or through other switches. */
    private static boolean feedsCharger(Coach coach) {
        Set<String> fed = new HashSet<>();
        Deque<String> left = new ArrayDeque<>();
        Stream.of("generator-control", "generator-breaker")
                .flatMap(role ->
                        coach.unit().switches().stream().filter(it -> it.roles().contains(role)))
                .forEach(it -> left.addAll(it.facts().all(Switch.FEEDS)));
        while (!left.isEmpty()) {
            String id = left.pop();
            if (fed.add(id)) {
                coach.unit().switches().stream()
                        .filter(it -> it.id().equals(id))
                        .forEach(it -> left.addAll(it.facts().all(Switch.FEEDS)));
            }
        }
        return Draw.all(coach.unit())
                .filter(draw -> draw.load().roles().contains(LoadSharing.CHARGER))
                .anyMatch(draw -> fed.contains(draw.load().id())
                        || coach.unit().circuits().stream()
                                .anyMatch(circuit -> fed.contains(circuit.id()) && draw.passes(circuit)));
    }

    /** No more than may be used, for then the night is cut short. */
    private static AmpHours taken(Night night) {
        double most = night.bank().capacity().value() * night.bank().usable().value();
        return new AmpHours(Math.min(most, night.at(HouseBank.MILD).drawn().value()));
    }

    /** What the charger feeds besides the batteries. */
    private static Amps always(Night night) {
        return new Amps(night.loads().stream()
                .filter(load -> load.alwaysOn() && !load.inverted())
                .mapToDouble(load -> load.current().value())
                .sum());
    }

    private static Recharge recharge(HouseBank bank, Amps current) {
        BatteryKind kind = bank.kind();
        return new Recharge(bank.capacity(), current, bank.accepts(), kind.givesBack(), kind.knee(), kind.charged());
    }

    private Seconds time() {
        return recharge.time(taken);
    }

    private Reckoning reckon() {
        return new Reckoning(
                Question.CHARGING_BACK,
                ASKED,
                answer(),
                List.of(new Grid("", List.of("", "After a usual night"), rows())),
                inputs(),
                "Hours = Ah to put in / charging current"
                        + (night.bank().kind().leadAcid()
                                ? "; above 80 % the current falls in line with what is missing."
                                : "."),
                steps(),
                assumed(),
                "Charge is neither made nor lost, but for the share that does not come back. "
                        + "Current that batteries take, and where it falls: common practice, no source.",
                "The time may be off by a third. Cold batteries take longer, and a small outlet gives less.");
    }

    private String answer() {
        if (time().value() <= 0) {
            return "A usual night takes so little that no charging is needed for it.";
        }
        String hours = Rounding.UP.hours(time());
        if (generator.isEmpty()) {
            return "On %s it takes %s to bring back a usual night.".formatted(site(), hours);
        }
        return "The generator must run %s to bring back a usual night.".formatted(hours)
                + burned().map(liters -> " It burns %s.".formatted(Rounding.UP.print(liters, first)))
                        .orElse("");
    }

    private String site() {
        return coach.unit().region() == Region.EUROPE ? "hook-up" : "shore power";
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Taken in the night", Rounding.UP.print(taken)));
        rows.add(List.of("Charging current at first", Rounding.DOWN.print(recharge.strongest())));
        rows.add(
                List.of(generator.isPresent() ? "Generator runs for" : "Time on " + site(), Rounding.UP.hours(time())));
        burned().ifPresent(liters -> rows.add(List.of("Fuel for that", Rounding.UP.print(liters, first))));
        return rows;
    }

    private Optional<ChargingFuel> fuel() {
        return generator.flatMap(it -> it.facts()
                .find(Generator.BURN_HALF)
                .flatMap(half -> it.facts()
                        .find(Generator.BURN_FULL)
                        .map(full -> new ChargingFuel(it.facts().get(Generator.POWER), half, full))));
    }

    private Optional<Liters> burned() {
        return fuel().map(it -> new Liters(it.at(watts()).value() * time().value() / HOUR));
    }

    /** What the charger gives at first, to the batteries and to what is always on. */
    private Amps given() {
        return recharge.strongest().plus(always);
    }

    /** As measured at full current, in proportion; or else reckoned from volts, amps and efficiency. */
    private Watts watts() {
        return measured()
                .map(watts -> new Watts(
                        watts.value() * given().value() / rating(charger).value()))
                .orElseGet(
                        () -> new Watts(given().value() * volts() / efficiency().value()));
    }

    private Optional<Watts> measured() {
        return coach.holders(Load.SHAPE.name(), "charger").stream()
                .findFirst()
                .flatMap(load -> load.facts().find(Load.WATTS))
                .filter(watts -> watts.value() > 0);
    }

    private double volts() {
        return CHARGING_VOLTS * Math.max(1, Math.rint(night.bank().volts().value() / 12));
    }

    private Share efficiency() {
        return charger.facts()
                .find(Charger.EFFICIENCY)
                .filter(share -> share.value() > 0)
                .orElse(USUAL_EFFICIENCY);
    }

    private List<Input> inputs() {
        BatteryKind kind = night.bank().kind();
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.described(
                "capacity of " + night.bank().named(), night.bank().capacity().in(first)));
        inputs.add(
                Input.described("amps that the charger gives", rating(charger).in(first)));
        inputs.add(Input.usual(
                "of what is put in, what comes out again", kind.givesBack().in(first), kind.givesBackSource()));
        inputs.add(night.bank().acceptsInput(first));
        generator.ifPresent(it -> {
            inputs.add(Input.described(
                    "output of the generator", it.facts().get(Generator.POWER).in(first)));
            inputs.add(measured()
                    .map(watts -> Input.described("what the charger draws at full current", watts.in(first)))
                    .orElseGet(this::chargerDraw));
        });
        fuel().ifPresent(it -> {
            inputs.add(Input.described("fuel at half load", it.half().in(first)));
            inputs.add(Input.described("fuel at full load", it.full().in(first)));
        });
        return inputs;
    }

    private Input chargerDraw() {
        return charger.facts().has(Charger.EFFICIENCY)
                ? Input.described("what comes out of the charger", efficiency().in(first))
                : Input.unverified(
                        "what comes out of the charger",
                        efficiency().in(first),
                        "from memory: 55 A at 13.6 V out of 880 to 950 W, 79 to 85 %");
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add("Taken in the night: %s of %s."
                .formatted(Rounding.UP.print(taken), night.bank().capacity().in(first)));
        steps.add("For the batteries: %s − %s for what is always on, at most %s: %s."
                .formatted(
                        rating(charger).in(first),
                        Night.current(Rounding.UP, always),
                        recharge.accepts().in(first),
                        Rounding.DOWN.print(recharge.strongest())));
        steps.add("That takes %s until %s."
                .formatted(Rounding.UP.hours(time()), Rounding.NEAREST.print(recharge.charged()) + " full"));
        fuel().ifPresent(it -> steps.add("The charger draws %s, %s of the generator's output: %s."
                .formatted(
                        Rounding.UP.print(watts()),
                        Rounding.NEAREST.print(new Share(it.load(watts()))),
                        it.at(watts()).in(first))));
        return steps;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("Only the charger and what is always on run meanwhile.");
        assumed.add("The charger is not set lower than it can go.");
        if (night.bank().kind().leadAcid()) {
            assumed.add("95 % counts as charged; the rest takes half a day on " + site() + ".");
        } else {
            assumed.add(night.bank()
                    .bank()
                    .facts()
                    .find(Bank.FROST_LIMIT)
                    .map(limit -> "The batteries are warmer than " + ANight.temperature(limit, first)
                            + "; colder ones take no charge.")
                    .orElse("The batteries are warm enough to take a charge."));
        }
        if (night.at(HouseBank.MILD).used() > night.bank().usable().value()) {
            assumed.add("The night ends at the limit; no more is brought back.");
        }
        if (fuel().filter(it -> it.drawnOn(watts())).isPresent()) {
            assumed.add("Below half load no fuel figure is known. The line through both figures is drawn on.");
        }
        return assumed;
    }
}
