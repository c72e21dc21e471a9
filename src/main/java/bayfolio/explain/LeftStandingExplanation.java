package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.measure.Amount;
import bayfolio.measure.Amps;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.battery.HouseBank;
import bayfolio.reckon.battery.HouseLoad;
import bayfolio.reckon.battery.LeftStanding;
import bayfolio.reckon.power.Draw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How long the coach may stand unplugged before the house batteries are down to their limit. */
final class LeftStandingExplanation {
    private final LeftStanding standing;
    private final HouseBank bank;
    private final Voice voice;

    private LeftStandingExplanation(LeftStanding standing, Voice voice) {
        this.standing = standing;
        this.bank = standing.bank();
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.LEFT_STANDING, coach.unit().region());
        return LeftStanding.of(coach)
                .map(standing -> new LeftStandingExplanation(standing, voice).explanation())
                .orElseGet(() -> voice.lacking(LeftStanding.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.LEFT_STANDING,
                voice.asked(),
                answer(),
                List.of(bySwitch(), byLoad()),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.say("source", "fades", voice.source(bank.kind().fades())),
                voice.say("error"),
                Optional.empty());
    }

    private String answer() {
        String on = days(standing.always());
        if (!standing.switched()) {
            return voice.say("answer", "limit", limit(), "on", on);
        }
        return standing.offKnown()
                ? voice.say("answer.on-and-off", "limit", limit(), "on", on, "off", days(standing.past()))
                : voice.say("answer.on", "limit", limit(), "on", on);
    }

    private Amount limit() {
        return Rounding.UP.print(bank.limit());
    }

    private String days(List<HouseLoad> loads) {
        return standing.until(loads)
                .map(time -> voice.amount(Rounding.DOWN.days(time)))
                .orElseGet(() -> voice.say("more-than-a-year"));
    }

    private Grid bySwitch() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(voice.say(standing.switched() ? "on" : "as-it-stands"), standing.always()));
        if (standing.offKnown()) {
            rows.add(row(voice.say("off"), standing.past()));
        }
        List<String> head = new ArrayList<>(List.of(standing.switched() ? voice.say("head.switch") : ""));
        head.addAll(voice.heads("draws", "limit-after"));
        return new Grid("", head, rows);
    }

    private List<String> row(String name, List<HouseLoad> loads) {
        return List.of(name, voice.amount(drawn(LeftStanding.sum(loads))), days(loads));
    }

    /** What stands for weeks draws little: to the hundredth. */
    private static Amount drawn(Amps current) {
        return Rounding.UP.print(current.value(), 2, Symbol.AMPERE);
    }

    private Grid byLoad() {
        boolean off = standing.offKnown();
        List<List<String>> rows = new ArrayList<>();
        for (HouseLoad load : standing.always()) {
            List<String> row = new ArrayList<>(List.of(load.name(), voice.amount(drawn(load.current()))));
            if (off) {
                row.add(voice.say(standing.past(load) ? "stays-on" : "goes-off"));
            }
            rows.add(row);
        }
        List<String> head = new ArrayList<>(List.of(""));
        head.addAll(off ? voice.heads("draws", "with-off") : voice.heads("draws"));
        return new Grid(voice.say("table.loads"), head, rows);
    }

    private List<Input> inputs() {
        BankInputs of = new BankInputs(bank, voice);
        List<Input> inputs = new ArrayList<>(of.basics());
        if (standing.aboveRated()) {
            inputs.addAll(of.rating());
        }
        inputs.add(voice.input("fades", voice.shown(Given.usual(bank.kind().fades()))));
        standing.always()
                .forEach(load -> inputs.add(voice.input(
                        "draw",
                        voice.amount(load.current().amount(voice.first())),
                        new Origin.Stated(load.load().facts(), Draw.stated(load.load())),
                        "name",
                        load.name(),
                        "inside",
                        Voice.inside(load.name()))));
        return inputs;
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(step(voice.say(standing.switched() ? "switch-on" : "as-it-stands"), standing.always()));
        if (standing.offKnown()) {
            steps.add(step(voice.say("switch-off"), standing.past()));
        }
        return steps;
    }

    private String step(String name, List<HouseLoad> loads) {
        return voice.say(
                "step",
                "name",
                name,
                "drawn",
                drawn(LeftStanding.sum(loads)),
                "share",
                Rounding.NEAREST.print(100 * standing.standing(loads).dailyDrain(), 2, Symbol.PERCENT),
                "limit",
                limit(),
                "days",
                days(loads));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.full"));
        assumed.add(
                voice.say(standing.coach().unit().facts().has(Unit.INVERTER) ? "assumed.inverter" : "assumed.all-off"));
        assumed.add(voice.say("assumed.mild"));
        if (standing.switched() && !standing.offKnown()) {
            assumed.add(voice.say("assumed.off-unknown"));
        }
        if (standing.hasSun()) {
            assumed.add(voice.say("assumed.sun"));
        }
        return assumed;
    }
}
