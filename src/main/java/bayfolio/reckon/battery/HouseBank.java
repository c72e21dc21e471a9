package bayfolio.reckon.battery;

import bayfolio.fact.Facts;
import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.model.Bank;
import bayfolio.model.Coach;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Published;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The batteries of the living area, with all that is needed to reckon with them. */
public record HouseBank(Bank bank, BatteryKind kind) {
    /** The temperature at which capacities are rated. */
    public static final Celsius MILD = new Celsius(25);

    /** Labels rate house batteries so, where they say nothing else. */
    public static final Published<Seconds> USUALLY_RATED_OVER = BatteryKind.TABLE.quantity("rated-over", Seconds.SCALE);

    /** Empty where the coach has none, or where one of its figures cannot be. */
    public static Optional<HouseBank> of(Coach coach) {
        return holder(coach)
                .filter(bank -> lacking(bank).isEmpty())
                .map(bank -> new HouseBank(bank, BatteryKind.of(bank)));
    }

    /** What stands in the way; nothing where no batteries or no loads are described at all. */
    public static List<Missing> lacking(Coach coach) {
        if (coach.unit().banks().isEmpty() || coach.unit().loads().isEmpty()) {
            return List.of();
        }
        return holder(coach).map(HouseBank::lacking).orElse(List.of(new Missing("house-bank")));
    }

    private static Optional<Bank> holder(Coach coach) {
        return coach.holders(Bank.SHAPE.name(), "house-bank").stream()
                .map(Bank.class::cast)
                .findFirst();
    }

    private static List<Missing> lacking(Bank bank) {
        List<Missing> facts = new ArrayList<>();
        if (bank.facts().get(Bank.AMP_HOURS).value() <= 0) {
            facts.add(new Missing("bank-amp-hours", bank.name()));
        }
        if (bank.facts().get(Bank.VOLTS).value() <= 0) {
            facts.add(new Missing("bank-volts", bank.name()));
        }
        if (bank.facts().find(Bank.USABLE).filter(share -> share.value() <= 0).isPresent()) {
            facts.add(new Missing("bank-usable", bank.name()));
        }
        return facts;
    }

    private Facts facts() {
        return bank.facts();
    }

    public Volts volts() {
        return facts().get(Bank.VOLTS);
    }

    public AmpHours capacity() {
        return facts().get(Bank.AMP_HOURS);
    }

    /** As stated, or else as is usual for its kind. */
    public Given<Share> usable() {
        return Given.of(facts(), Bank.USABLE, kind.usable());
    }

    public Peukert at(Celsius temperature) {
        return new Peukert(capacity(), ratedOver().value(), exponent().value()).holding(kind.holds(temperature));
    }

    public Given<Seconds> ratedOver() {
        return Given.of(facts(), Bank.RATED_OVER, USUALLY_RATED_OVER);
    }

    public Given<Double> exponent() {
        return facts().has(Bank.PEUKERT_EXPONENT)
                ? Given.stated(facts(), Bank.PEUKERT_EXPONENT).map(Double::valueOf)
                : Given.usual(kind.exponent());
    }

    /** The strongest current that it is charged with. */
    public Given<Amps> accepts() {
        return facts().has(Bank.CHARGE_LIMIT)
                ? Given.stated(facts(), Bank.CHARGE_LIMIT)
                : new Given<>(new Amps(capacity().value() * kind.accepts().value()), new Origin.Usual(kind.accepts()));
    }

    /** How full it is when it must be charged. */
    public Share limit() {
        return new Share(1 - usable().value().value());
    }
}
