package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.MeasureSystem;
import bayfolio.model.Bank;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a battery whose share that may be used leaves another rest than the reading at which it must be charged. */
public final class BatteryLimitsDisagree implements Rule {
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d)?) ?(?:%|percent)");

    /** Half a percent, for what is written in whole ones. */
    private static final double NEAR = 0.5;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().banks().stream().flatMap(bank -> check(bank).stream());
    }

    private static Optional<Finding> check(Bank bank) {
        Optional<String> low = bank.facts().find(Bank.LOW_FIGURE).flatMap(BatteryLimitsDisagree::percent);
        return bank.facts()
                .find(Bank.USABLE)
                .flatMap(usable -> low.filter(
                                percent -> Math.abs(100 - 100 * usable.value() - Double.parseDouble(percent)) > NEAR)
                        .map(percent -> Finding.error(
                                        "battery-limits-disagree",
                                        bank.facts().at(Bank.LOW_FIGURE),
                                        "bank `%s` must be charged at %s %%, and its usable share of %s leaves another rest"
                                                .formatted(bank.id(), percent, usable.in(MeasureSystem.METRIC)))
                                .mend("Give both the same limit: what may be used and the rest are 100 % together.")));
    }

    private static Optional<String> percent(String reading) {
        Matcher matcher = PERCENT.matcher(reading);
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
