package bayfolio.reckon;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.model.Bank;
import bayfolio.model.Coach;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The batteries of the living area, with all that is needed to reckon with them.
 *
 * @param usable as stated, or else as is usual for its kind
 */
record HouseBank(Bank bank, BatteryKind kind, Volts volts, AmpHours capacity, Share usable) {
    private static final String RATED_OVER = "time in which that capacity comes out";
    private static final String EXPONENT = "Peukert exponent";
    private static final String ACCEPTS = "the most that the batteries take";

    /** The temperature at which capacities are rated. */
    static final Celsius MILD = new Celsius(25);

    /** Empty where the coach has none, or where one of its figures cannot be. */
    static Optional<HouseBank> of(Coach coach) {
        return holder(coach).filter(bank -> lacking(bank).isEmpty()).map(HouseBank::of);
    }

    private static HouseBank of(Bank bank) {
        BatteryKind kind = BatteryKind.of(bank);
        return new HouseBank(
                bank,
                kind,
                bank.facts().get(Bank.VOLTS),
                bank.facts().get(Bank.AMP_HOURS),
                bank.facts().find(Bank.USABLE).orElse(kind.usable()));
    }

    /** What stands in the way, in words; nothing where no batteries or no loads are described at all. */
    static List<String> lacking(Coach coach) {
        if (coach.unit().banks().isEmpty() || coach.unit().loads().isEmpty()) {
            return List.of();
        }
        return holder(coach).map(HouseBank::lacking).orElse(List.of("which batteries are the house batteries"));
    }

    private static Optional<Bank> holder(Coach coach) {
        return coach.holders(Bank.SHAPE.name(), "house-bank").stream()
                .map(Bank.class::cast)
                .findFirst();
    }

    private static List<String> lacking(Bank bank) {
        List<String> facts = new ArrayList<>();
        if (bank.facts().get(Bank.AMP_HOURS).value() <= 0) {
            facts.add("amp-hours of " + named(bank));
        }
        if (bank.facts().get(Bank.VOLTS).value() <= 0) {
            facts.add("voltage of " + named(bank));
        }
        if (bank.facts().find(Bank.USABLE).filter(share -> share.value() <= 0).isPresent()) {
            facts.add("usable share of " + named(bank));
        }
        return facts;
    }

    /** {@code the house batteries}. */
    String named() {
        return named(bank);
    }

    private static String named(Bank bank) {
        return HouseLoad.named(bank.name());
    }

    Peukert at(Celsius temperature) {
        return new Peukert(capacity, ratedOver(), exponent()).holding(kind.holds(temperature));
    }

    Seconds ratedOver() {
        return bank.facts().find(Bank.RATED_OVER).orElse(Peukert.TWENTY_HOURS);
    }

    double exponent() {
        return bank.facts().find(Bank.PEUKERT_EXPONENT).map(Double::valueOf).orElse(kind.exponent());
    }

    /** The strongest current that it is charged with. */
    Amps accepts() {
        return bank.facts().find(Bank.CHARGE_LIMIT).orElse(new Amps(capacity.value() * kind.accepts()));
    }

    /** How full it is when it must be charged. */
    Share limit() {
        return new Share(1 - usable.value());
    }

    List<Input> inputs(MeasureSystem first) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.described(
                "capacity of " + named(), bank.facts().written(Bank.AMP_HOURS).orElseThrow()));
        inputs.add(Input.described(
                "voltage of " + named(), bank.facts().written(Bank.VOLTS).orElseThrow()));
        inputs.add(
                bank.facts().has(Bank.USABLE)
                        ? Input.described("share that may be used", usable.in(first))
                        : Input.usual("share that may be used", usable.in(first), kind.usableSource()));
        return inputs;
    }

    List<Input> ratingInputs(MeasureSystem first) {
        return List.of(
                bank.facts().has(Bank.RATED_OVER)
                        ? Input.described(RATED_OVER, ratedOver().in(first))
                        : Input.usual(RATED_OVER, ratedOver().in(first), "usual on labels, common practice"),
                bank.facts()
                        .find(Bank.PEUKERT_EXPONENT)
                        .map(exponent -> Input.described(EXPONENT, exponent))
                        .orElseGet(() -> Input.usual(
                                EXPONENT, Rounding.NEAREST.print(kind.exponent(), 2), kind.exponentSource())));
    }

    Input acceptsInput(MeasureSystem first) {
        return bank.facts().has(Bank.CHARGE_LIMIT)
                ? Input.described(ACCEPTS, accepts().in(first))
                : Input.usual(ACCEPTS, accepts().in(first), "common practice, no source");
    }
}
