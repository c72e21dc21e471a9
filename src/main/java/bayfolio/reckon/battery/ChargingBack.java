package bayfolio.reckon.battery;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Bank;
import bayfolio.model.Charger;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.model.Load;
import bayfolio.model.Supply;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import bayfolio.reckon.power.Draw;
import bayfolio.reckon.power.LoadSharing;
import bayfolio.reckon.power.Shore;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How long generator or hook-up must charge to bring back what a usual night took.
 *
 * @param always what the charger feeds besides the batteries
 */
public record ChargingBack(
        Coach coach,
        Night night,
        Charger charger,
        Optional<Generator> generator,
        AmpHours taken,
        Amps always,
        Recharge recharge) {
    /** Of what a charger draws, what reaches the batteries. */
    private static final Published<Share> USUAL_EFFICIENCY =
            BatteryKind.TABLE.quantity("charger.efficiency", Share.SCALE);

    /** While it charges, in place of the 12 V on the label. */
    private static final double CHARGING_VOLTS =
            BatteryKind.TABLE.quantity("charger.volts", Volts.SCALE).value().value();

    private static final double HOUR = 3600;

    private static ChargingBack made(Coach coach, Night night, Charger charger) {
        Amps always = always(night);
        return new ChargingBack(
                coach,
                night,
                charger,
                generator(coach, night.bank()),
                taken(night),
                always,
                recharge(night.bank(), new Amps(rating(charger).value() - always.value())));
    }

    public static Optional<ChargingBack> of(Coach coach) {
        return Night.of(coach)
                .filter(night -> lacking(coach).isEmpty())
                .flatMap(night -> coach.unit().facts().find(Unit.CHARGER).map(charger -> made(coach, night, charger)));
    }

    public static List<Missing> lacking(Coach coach) {
        Optional<Night> night = Night.of(coach);
        if (night.isEmpty()) {
            return Night.lacking(coach);
        }
        Unit unit = coach.unit();
        Optional<Charger> charger =
                unit.facts().find(Unit.CHARGER).filter(it -> it.facts().whole());
        if (charger.isEmpty()) {
            return List.of(new Missing("charger-amps"));
        }
        if (rating(charger.get()).value() <= always(night.get()).value()) {
            return List.of(new Missing("charger-stronger"));
        }
        return generator(coach, night.get().bank()).isPresent()
                        || !Shore.of(unit).isEmpty()
                ? List.of()
                : List.of(new Missing("charger-feed"));
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
        double most =
                night.bank().capacity().value() * night.bank().usable().value().value();
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
        return new Recharge(
                bank.capacity(),
                current,
                bank.accepts().value(),
                kind.givesBack().value(),
                kind.knee(),
                kind.charged());
    }

    public Seconds time() {
        return recharge.time(taken);
    }

    public Optional<ChargingFuel> fuel() {
        return generator.flatMap(it -> it.facts()
                .find(Generator.BURN_HALF)
                .flatMap(half -> it.facts()
                        .find(Generator.BURN_FULL)
                        .map(full -> new ChargingFuel(it.facts().get(Generator.POWER), half, full))));
    }

    public Optional<Liters> burned() {
        return fuel().map(it -> new Liters(it.at(watts()).value() * time().value() / HOUR));
    }

    /** What the charger gives at first, to the batteries and to what is always on. */
    private Amps given() {
        return recharge.strongest().plus(always);
    }

    /** As measured at full current, in proportion; or else reckoned from volts, amps and efficiency. */
    public Watts watts() {
        return measured()
                .map(watts -> new Watts(watts.value().value()
                        * given().value()
                        / rating(charger).value()))
                .orElseGet(() -> new Watts(
                        given().value() * volts() / efficiency().value().value()));
    }

    /** What it draws at full current, where that was measured. */
    public Optional<Given<Watts>> measured() {
        return coach.holders(Load.SHAPE.name(), "charger").stream()
                .findFirst()
                .filter(load -> load.facts()
                        .find(Load.WATTS)
                        .filter(watts -> watts.value() > 0)
                        .isPresent())
                .map(load -> Given.stated(load.facts(), Load.WATTS));
    }

    private double volts() {
        return CHARGING_VOLTS * Math.max(1, Math.rint(night.bank().volts().value() / 12));
    }

    public Given<Share> efficiency() {
        Given<Share> given = Given.of(charger.facts(), Charger.EFFICIENCY, USUAL_EFFICIENCY);
        return given.value().value() > 0 ? given : Given.usual(USUAL_EFFICIENCY);
    }

    /** Whether the night takes more than may be used, so that it is cut short. */
    public boolean cutShort() {
        return night.at(HouseBank.MILD).used() > night.bank().usable().value().value();
    }
}
