package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.Quantity;
import bayfolio.measure.Rounding;
import bayfolio.measure.Share;
import bayfolio.model.Bank;
import bayfolio.model.Charger;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.reckon.Given;
import bayfolio.reckon.Question;
import bayfolio.reckon.battery.ChargingBack;
import bayfolio.reckon.battery.HouseBank;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How long generator or hook-up must charge to bring back what a usual night took. */
final class ChargingBackExplanation {
    private final ChargingBack charging;
    private final HouseBank bank;
    private final Voice voice;

    private ChargingBackExplanation(ChargingBack charging, Voice voice) {
        this.charging = charging;
        this.bank = charging.night().bank();
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.CHARGING_BACK, coach.unit().region());
        return ChargingBack.of(coach)
                .map(charging -> new ChargingBackExplanation(charging, voice).explanation())
                .orElseGet(() -> voice.lacking(ChargingBack.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.CHARGING_BACK,
                voice.asked(),
                answer(),
                List.of(new Grid("", List.of("", voice.say("head.after-a-night")), rows())),
                inputs(),
                voice.say(bank.kind().leadAcid() ? "formula.lead-acid" : "formula"),
                steps(),
                assumed(),
                voice.say("source"),
                voice.say("error"),
                Optional.empty());
    }

    private String answer() {
        if (charging.time().value() <= 0) {
            return voice.say("answer.none");
        }
        if (charging.generator().isEmpty()) {
            return voice.say("answer.site", "site", site(), "hours", hours());
        }
        return charging.burned()
                .map(liters -> voice.say(
                        "answer.generator-burns", "hours", hours(), "fuel", Rounding.UP.print(liters, voice.first())))
                .orElseGet(() -> voice.say("answer.generator", "hours", hours()));
    }

    private Amount hours() {
        return Rounding.UP.hours(charging.time());
    }

    private String site() {
        return voice.regional("site");
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(voice.say("row.taken"), Rounding.UP.print(charging.taken())));
        rows.add(row(
                voice.say("row.current"),
                Rounding.DOWN.print(charging.recharge().strongest())));
        rows.add(row(
                charging.generator().isPresent() ? voice.say("row.generator") : voice.say("row.time", "site", site()),
                hours()));
        charging.burned()
                .ifPresent(liters -> rows.add(row(voice.say("row.fuel"), Rounding.UP.print(liters, voice.first()))));
        return rows;
    }

    private List<String> row(String name, Amount value) {
        return List.of(name, voice.amount(value));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(voice.input(
                "capacity",
                voice.shown(Given.stated(bank.bank().facts(), Bank.AMP_HOURS)),
                "name",
                bank.bank().name(),
                "inside",
                Voice.inside(bank.bank().name())));
        inputs.add(voice.input("charger", stated(charging.charger(), Charger.RATING)));
        inputs.add(voice.input("gives-back", voice.shown(Given.usual(bank.kind().givesBack()))));
        inputs.add(new BankInputs(bank, voice).accepts());
        charging.generator().ifPresent(it -> {
            inputs.add(voice.input("generator", stated(it, Generator.POWER)));
            inputs.add(charging.measured()
                    .map(watts -> voice.input("charger-draws", voice.shown(watts)))
                    .orElseGet(() -> voice.input("charger-gives", voice.shown(charging.efficiency()))));
        });
        charging.generator().filter(it -> charging.fuel().isPresent()).ifPresent(it -> {
            inputs.add(voice.input("fuel-half", stated(it, Generator.BURN_HALF)));
            inputs.add(voice.input("fuel-full", stated(it, Generator.BURN_FULL)));
        });
        return inputs;
    }

    private <Q extends Quantity> Given<Amount> stated(Described record, Key<Q> key) {
        return voice.shown(Given.stated(record.facts(), key));
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(voice.say(
                "step.taken",
                "taken",
                Rounding.UP.print(charging.taken()),
                "capacity",
                bank.capacity().amount(voice.first())));
        steps.add(voice.say(
                "step.current",
                "rating",
                charging.charger().facts().get(Charger.RATING).amount(voice.first()),
                "always",
                Rounding.UP.small(charging.always()),
                "most",
                charging.recharge().accepts().amount(voice.first()),
                "current",
                Rounding.DOWN.print(charging.recharge().strongest())));
        steps.add(voice.say(
                "step.time",
                "hours",
                hours(),
                "full",
                Rounding.NEAREST.print(charging.recharge().charged())));
        charging.fuel()
                .ifPresent(it -> steps.add(voice.say(
                        "step.fuel",
                        "power",
                        Rounding.UP.print(charging.watts()),
                        "share",
                        Rounding.NEAREST.print(new Share(it.load(charging.watts()))),
                        "flow",
                        it.at(charging.watts()).amount(voice.first()))));
        return steps;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.alone"));
        assumed.add(voice.say("assumed.not-lower"));
        if (bank.kind().leadAcid()) {
            assumed.add(voice.say("assumed.charged", "site", site()));
        } else {
            assumed.add(bank.bank()
                    .facts()
                    .find(Bank.FROST_LIMIT)
                    .map(limit -> voice.say("assumed.warmer", "temperature", limit.both(voice.first())))
                    .orElseGet(() -> voice.say("assumed.warm")));
        }
        if (charging.cutShort()) {
            assumed.add(voice.say("assumed.cut-short"));
        }
        if (charging.fuel().filter(it -> it.drawnOn(charging.watts())).isPresent()) {
            assumed.add(voice.say("assumed.drawn-on"));
        }
        return assumed;
    }
}
