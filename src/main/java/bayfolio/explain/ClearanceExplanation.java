package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.Features;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.reckon.Given;
import bayfolio.reckon.Question;
import bayfolio.reckon.clearance.Clearance;
import bayfolio.reckon.clearance.Clearances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a coach fits under, through and into. */
final class ClearanceExplanation {
    private final Clearances clearances;
    private final Features features;
    private final Voice voice;

    private ClearanceExplanation(Clearances clearances, Voice voice) {
        this.clearances = clearances;
        this.features = clearances.coach().features();
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.CLEARANCE, coach.unit().region());
        return Clearances.of(coach)
                .map(clearances -> new ClearanceExplanation(clearances, voice).explanation())
                .orElseGet(() -> voice.lacking(Clearances.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.CLEARANCE,
                voice.asked(),
                answer(),
                clearances.limits().isEmpty() ? List.of(measures(), signs()) : List.of(measures(), signs(), limits()),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                source(),
                voice.say("error"),
                Optional.empty());
    }

    private String source() {
        List<String> limits = clearances.limits().stream()
                .map(limit -> voice.source(limit.most()))
                .distinct()
                .toList();
        return limits.isEmpty() ? voice.say("source.margin") : voice.say("source", "limits", String.join("; ", limits));
    }

    private String answer() {
        Amount sign = Clearances.sign(clearances.height(), voice.first());
        return clearances
                .find(Size.WIDTH_MIRRORS)
                .map(wide -> voice.say(
                        "answer.mirrors", "sign", sign, "width", Rounding.UP.print(wide.value(), voice.first())))
                .orElseGet(() -> voice.say("answer", "sign", sign));
    }

    /** Where there is an antenna that can stand up, it must be down. */
    private String lowered(String key) {
        return voice.say(features.contains("antenna-raised") ? key + ".antenna" : key);
    }

    private Grid measures() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(measure(lowered("measure.height"), clearances.height()));
        measure("measure.antenna-up", Size.HEIGHT_ANTENNA_UP, rows);
        measure("measure.mirrors", Size.WIDTH_MIRRORS, rows);
        measure("measure.width", Size.WIDTH, rows);
        measure("measure.length", Size.LENGTH, rows);
        return new Grid(voice.say("table.measures"), voice.heads("what", "plan-with", "in-short"), rows);
    }

    private void measure(String key, Key<Meters> fact, List<List<String>> rows) {
        clearances.find(fact).ifPresent(length -> rows.add(measure(voice.say(key), length.value())));
    }

    private List<String> measure(String name, Meters length) {
        return List.of(
                name,
                voice.amount(Rounding.UP.print(length, voice.first())),
                voice.amount(Amount.both(
                        Clearance.card(length, MeasureSystem.US),
                        Clearance.card(length, MeasureSystem.METRIC),
                        voice.first())));
    }

    private Grid signs() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(sign(lowered("sign.road"), clearances.height()));
        clearances
                .find(Size.HEIGHT_ANTENNA_UP)
                .ifPresent(up -> rows.add(sign(voice.say("sign.antenna-up"), up.value())));
        return new Grid(voice.say("table.signs"), voice.heads("how", "sign-us", "sign-metric"), rows);
    }

    private List<String> sign(String how, Meters height) {
        return List.of(
                how,
                voice.amount(Clearances.card(height, MeasureSystem.US)),
                voice.amount(Clearances.card(height, MeasureSystem.METRIC)));
    }

    private Grid limits() {
        return new Grid(
                voice.say("table.limits"),
                voice.heads("limit", "most", "this-coach"),
                clearances.limits().stream()
                        .map(limit -> List.of(
                                voice.say("limit." + limit.name()),
                                voice.amount(Rounding.DOWN.print(limit.most().value(), voice.first())),
                                against(limit)))
                        .toList());
    }

    private String against(Clearances.Limit limit) {
        Meters over = clearances.over(limit);
        return over.value() > 1e-9
                ? voice.say("over", "length", Rounding.UP.print(over, voice.first()))
                : voice.say("within");
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        input(lowered("input.height"), Size.HEIGHT, inputs);
        input(voice.say("input.antenna-up"), Size.HEIGHT_ANTENNA_UP, inputs);
        input(voice.say("input.mirrors"), Size.WIDTH_MIRRORS, inputs);
        input(voice.say("input.width"), Size.WIDTH, inputs);
        input(voice.say("input.length"), Size.LENGTH, inputs);
        inputs.add(voice.input(
                "margin",
                Given.usual(Clearance.usualMargin(voice.first()))
                        .map(it ->
                                Amount.both(margin(MeasureSystem.US), margin(MeasureSystem.METRIC), voice.first()))));
        return inputs;
    }

    private void input(String name, Key<Meters> key, List<Input> inputs) {
        clearances
                .find(key)
                .ifPresent(length -> inputs.add(new Input(
                        name, voice.amount(Rounding.UP.print(length.value(), voice.first())), length.origin())));
    }

    private static Amount margin(MeasureSystem signs) {
        Meters margin = Clearance.usualMargin(signs).value();
        return switch (signs) {
            case US -> margin.amount(MeasureSystem.US);
            case METRIC -> Rounding.NEAREST.print(1000 * margin.value(), 0, Symbol.MILLIMETER);
        };
    }

    private List<String> steps() {
        String us = step(MeasureSystem.US, 0.0254, 1, Symbol.INCH, 0);
        String metric = step(MeasureSystem.METRIC, 1, 3, Symbol.METER, 3);
        return voice.first() == MeasureSystem.US ? List.of(us, metric) : List.of(metric, us);
    }

    private String step(MeasureSystem system, double unit, int decimals, Symbol symbol, int marginDecimals) {
        Meters height = clearances.height();
        Meters margin = Clearance.usualMargin(system).value();
        return voice.say(
                "step",
                "height",
                Rounding.UP.print(height.value() / unit, decimals, symbol),
                "margin",
                Rounding.UP.print(margin.value() / unit, marginDecimals, symbol),
                "sum",
                Rounding.UP.print(height.plus(margin).value() / unit, decimals, symbol),
                "sign",
                Clearances.card(height, system));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say(features.contains("roof-ac") ? "assumed.hard-parts.ac" : "assumed.hard-parts"));
        assumed.add(voice.say("assumed.roof"));
        assumed.add(voice.say("assumed.sign"));
        if (voice.region() == Region.NORTH_AMERICA) {
            assumed.add(voice.say("assumed.highway"));
        }
        if (clearances.find(Size.WIDTH_MIRRORS).isEmpty()) {
            assumed.add(voice.say("assumed.mirrors"));
        }
        return assumed;
    }
}
