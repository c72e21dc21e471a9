package bayfolio.reckon;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Celsius;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Share;
import bayfolio.measure.Toward;
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
        return new Peukert(capacity, Peukert.TWENTY_HOURS, kind.exponent()).holding(kind.holds(temperature));
    }

    /** How full it is when it must be charged. */
    Share limit() {
        return new Share(1 - usable.value());
    }

    List<Input> inputs(MeasureSystem first) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.described("capacity of " + named(), capacity.in(first)));
        inputs.add(Input.described("voltage of " + named(), volts.in(first)));
        inputs.add(
                bank.facts().has(Bank.USABLE)
                        ? Input.described("share that may be used", usable.in(first))
                        : Input.usual("share that may be used", usable.in(first), kind.usableSource()));
        return inputs;
    }

    List<Input> ratingInputs(MeasureSystem first) {
        return List.of(
                Input.usual(
                        "time in which that capacity comes out",
                        Peukert.TWENTY_HOURS.in(first),
                        "usual on labels, common practice"),
                Input.usual("Peukert exponent", Toward.NEAREST.print(kind.exponent(), 2), kind.exponentSource()));
    }
}
