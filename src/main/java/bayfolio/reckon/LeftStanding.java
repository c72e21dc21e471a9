package bayfolio.reckon;

import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.model.Solar;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.reckon.Reckoned.Lacking;
import bayfolio.reckon.Reckoned.Reckoning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How long the coach may stand unplugged before the house batteries are down to their limit. */
public final class LeftStanding {
    private static final String ASKED = "How long can the coach stand unplugged?";

    private static final double DAY = 86_400;

    /** Beyond that nothing is promised. */
    private static final double YEAR = 365;

    private final Coach coach;
    private final HouseBank bank;
    private final List<HouseLoad> always;
    private final MeasureSystem first;

    private LeftStanding(Coach coach, HouseBank bank, List<HouseLoad> always) {
        this.coach = coach;
        this.bank = bank;
        this.always = always;
        this.first = coach.unit().region().first();
    }

    public static Reckoned of(Coach coach) {
        List<String> lacking = lacking(coach);
        return HouseBank.of(coach)
                .filter(bank -> lacking.isEmpty() && !coach.unit().loads().isEmpty())
                .map(bank -> (Reckoned) new LeftStanding(coach, bank, always(coach.unit(), bank)).reckon())
                .orElseGet(() -> new Lacking(Question.LEFT_STANDING, ASKED, lacking));
    }

    static List<String> lacking(Coach coach) {
        Optional<HouseBank> bank = HouseBank.of(coach);
        if (bank.isEmpty() || coach.unit().loads().isEmpty()) {
            return HouseBank.lacking(coach);
        }
        List<String> unknown = HouseLoad.unknown(coach.unit(), bank.get())
                .filter(load -> load.facts().find(Load.ALWAYS_ON).orElse(false))
                .map(load -> "what " + HouseLoad.named(load.name()) + " draws")
                .toList();
        return unknown.isEmpty() && always(coach.unit(), bank.get()).isEmpty()
                ? List.of("which loads of the house batteries are always on")
                : unknown;
    }

    /** The inverter is off while the coach stands. */
    private static List<HouseLoad> always(Unit unit, HouseBank bank) {
        return HouseLoad.all(unit, bank).stream()
                .filter(load -> load.alwaysOn() && !load.inverted())
                .filter(load -> load.current().value() > 0)
                .toList();
    }

    private Reckoning reckon() {
        return new Reckoning(
                Question.LEFT_STANDING,
                ASKED,
                answer(),
                List.of(bySwitch(), byLoad()),
                inputs(),
                "Left after t days = (1 + d / r) · e^(−r · t) − d / r; d: share drawn a day, r: share lost a day by itself.",
                steps(),
                assumed(),
                "A battery that loses a steady share of what it holds, and gives a steady current. "
                        + "Loss by itself: " + bank.kind().fadesSource() + ".",
                "Days get fewer in heat, with old batteries, and with anything left on. "
                        + "The loss by itself is the least certain figure.");
    }

    private String answer() {
        String on = days(always);
        if (!switched()) {
            return "From a full charge the limit of %s comes after %s.".formatted(limit(), on);
        }
        String with = "With the house battery switch on, the limit of %s comes after %s.".formatted(limit(), on);
        return offKnown() ? with + " With it off, after " + days(past()) + "." : with;
    }

    private String limit() {
        return Rounding.UP.print(bank.limit());
    }

    private boolean switched() {
        return !coach.holders(Switch.SHAPE.name(), "house-battery-switch").isEmpty();
    }

    /** Only where somebody has looked what stays live. */
    private boolean offKnown() {
        return switched()
                && coach.unit().circuits().stream()
                        .anyMatch(circuit -> circuit.facts().has(Circuit.PAST_BATTERY_SWITCH));
    }

    private List<HouseLoad> past() {
        return always.stream().filter(this::past).toList();
    }

    private boolean past(HouseLoad load) {
        return Draw.circuit(load.load(), coach.unit())
                .flatMap(circuit -> circuit.facts().find(Circuit.PAST_BATTERY_SWITCH))
                .orElse(false);
    }

    private static Amps sum(List<HouseLoad> loads) {
        return new Amps(
                loads.stream().mapToDouble(load -> load.current().value()).sum());
    }

    private SelfDischarge standing(List<HouseLoad> loads) {
        Amps current = sum(loads);
        return new SelfDischarge(
                bank.kind().fades(),
                current.value() > 0
                        ? DAY / bank.at(HouseBank.MILD).lasts(current).value()
                        : 0);
    }

    private String days(List<HouseLoad> loads) {
        return standing(loads)
                .until(bank.limit())
                .filter(time -> time.value() <= YEAR * DAY)
                .map(Rounding.DOWN::days)
                .orElse("more than a year");
    }

    private Grid bySwitch() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(switched() ? "On" : "As it stands", always));
        if (offKnown()) {
            rows.add(row("Off", past()));
        }
        return new Grid("", List.of(switched() ? "House battery switch" : "", "Draws", "Limit after"), rows);
    }

    private List<String> row(String name, List<HouseLoad> loads) {
        return List.of(name, drawn(sum(loads)), days(loads));
    }

    /** What stands for weeks draws little: to the hundredth. */
    private static String drawn(Amps current) {
        return Rounding.UP.print(current.value(), 2) + " A";
    }

    private Grid byLoad() {
        boolean off = offKnown();
        List<List<String>> rows = always.stream()
                .map(load -> off
                        ? List.of(load.name(), drawn(load.current()), past(load) ? "stays on" : "goes off")
                        : List.of(load.name(), drawn(load.current())))
                .toList();
        return new Grid("What draws", off ? List.of("", "Draws", "With the switch off") : List.of("", "Draws"), rows);
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(bank.inputs(first));
        if (bank.at(HouseBank.MILD).ratedCurrent().value() < sum(always).value()) {
            inputs.addAll(bank.ratingInputs(first));
        }
        inputs.add(Input.usual(
                "loss by itself in a month",
                bank.kind().fades().in(first),
                bank.kind().fadesSource()));
        always.forEach(load -> inputs.add(
                Input.described("draw of " + load.named(), load.current().in(first))));
        return inputs;
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(step(switched() ? "Switch on" : "As it stands", always));
        if (offKnown()) {
            steps.add(step("Switch off", past()));
        }
        return steps;
    }

    private String step(String name, List<HouseLoad> loads) {
        return "%s: %s × 24 h takes %s of the charge a day; %s is left after %s."
                .formatted(
                        name,
                        drawn(sum(loads)),
                        Rounding.NEAREST.print(100 * standing(loads).dailyDrain(), 2) + " %",
                        limit(),
                        days(loads));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("It begins with a full charge.");
        assumed.add(
                coach.unit().facts().has(Unit.INVERTER)
                        ? "The inverter is off, and so is all that you can switch off."
                        : "All that you can switch off is off.");
        assumed.add("The weather is mild.");
        if (switched() && !offKnown()) {
            assumed.add("Nobody has stated yet what draws with the switch off.");
        }
        if (coach.unit()
                .facts()
                .find(Unit.SOLAR)
                .filter(it -> it.facts().has(Solar.RATING))
                .isPresent()) {
            assumed.add("The sun puts nothing back; with sun it lasts longer.");
        }
        return assumed;
    }
}
