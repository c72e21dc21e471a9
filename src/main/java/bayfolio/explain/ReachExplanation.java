package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.Size;
import bayfolio.model.Thing;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.reach.Footprint;
import bayfolio.reckon.reach.Posts;
import bayfolio.reckon.reach.Reach;
import bayfolio.reckon.reach.RequiredLength;
import bayfolio.reckon.reach.SiteLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether cord and hoses reach the posts of a site, for both ways onto it. */
final class ReachExplanation {
    private final Reach reach;
    private final Voice voice;

    private ReachExplanation(Reach reach, Voice voice) {
        this.reach = reach;
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.REACH, coach.unit().region());
        return Reach.of(coach)
                .map(reach -> new ReachExplanation(reach, voice).explanation())
                .orElseGet(() -> voice.lacking(Reach.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.REACH,
                voice.asked(),
                answer(),
                reach.useful().stream().map(this::grid).toList(),
                inputs(),
                voice.say("formula"),
                reach.cases().stream().map(this::step).toList(),
                assumed(),
                voice.regional("source"),
                voice.say("error"),
                Optional.empty());
    }

    private String answer() {
        Posts site = reach.useful().get(0);
        return voice.say(
                "answer",
                "site",
                name(site),
                "ways",
                String.join(
                        "; ",
                        Stream.of(Posts.Way.values())
                                .map(way -> voice.say("answer.way", "way", way(way), "verdict", verdict(site, way)))
                                .toList()));
    }

    private String name(Posts site) {
        return site.name().orElseGet(() -> voice.say("usual-site"));
    }

    private String way(Posts.Way way) {
        return voice.say("way." + Type.word(way));
    }

    private String verdict(Posts site, Posts.Way way) {
        List<Reach.CheckedCoach> cases =
                reach.cases(site).stream().filter(it -> it.way() == way).toList();
        List<String> said = new ArrayList<>();
        cases.stream()
                .filter(Reach.CheckedCoach::isShort)
                .forEach(it -> said.add(voice.say("verdict.short", "name", name(it), "length", needed(it.missing()))));
        cases.stream()
                .filter(it -> it.line().owned().isEmpty())
                .forEach(it -> said.add(voice.say(
                        "verdict.needs",
                        "name",
                        name(it),
                        "length",
                        needed(it.need().length()))));
        if (said.isEmpty()) {
            return cases.size() == 1
                    ? voice.say("verdict.reaches", "name", name(cases.get(0)))
                    : voice.say("verdict.all");
        }
        return voice.words().row(said);
    }

    private String name(Reach.CheckedCoach it) {
        return name(it.line());
    }

    private String name(SiteLine line) {
        return line.name().orElseGet(() -> voice.say("line." + Type.word(line.kind())));
    }

    private Grid grid(Posts site) {
        List<List<String>> rows = new ArrayList<>();
        for (Reach.CheckedCoach it : reach.cases(site)) {
            rows.add(row(it, name(it), it.line().owned()));
            if (it.line().kind() == SiteLine.Kind.POWER && it.isShort()) {
                reach.longestExtension()
                        .ifPresent(extension -> rows.add(row(
                                it,
                                voice.words()
                                        .and(List.of(name(it), extension.name().orElse(""))),
                                it.line().owned().map(extension.length().value()::plus))));
            }
        }
        return new Grid(
                voice.say("table", "site", name(site)),
                voice.heads("what", "way", "needs", "on-board", "result"),
                rows);
    }

    private List<String> row(Reach.CheckedCoach it, String name, Optional<Meters> owned) {
        return List.of(
                name,
                way(it.way()),
                needed(it.need().length()),
                owned.map(this::owned).orElseGet(() -> voice.say("not-stated")),
                owned.map(length -> result(it.need(), length)).orElseGet(() -> voice.say("measure-first")));
    }

    private String result(RequiredLength need, Meters owned) {
        return need.metBy(owned)
                ? voice.say("result.reaches")
                : voice.say("result.short", "length", needed(need.length().minus(owned)));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        Footprint footprint = reach.footprint();
        inputs.add(voice.input(
                "size",
                voice.words().row(List.of(print(footprint.length()), print(footprint.width()))),
                new Origin.Stated(reach.coach().unit().size().facts(), Size.LENGTH)));
        for (SiteLine line : reach.lines()) {
            Thing inlet = line.inletThing();
            inputs.add(voice.input(
                    "inlet-place",
                    print(line.inlet()),
                    inlet.spot()
                            .<Origin>map(spot ->
                                    new Origin.Stated(spot.facts(), spot.keys().fromFront()))
                            .orElseGet(() -> line.height().origin()),
                    "name",
                    inlet.name()));
            inputs.add(voice.input("inlet-height", line.height().map(this::print), "name", inlet.name()));
            line.onBoard()
                    .ifPresent(length -> inputs.add(
                            voice.input("on-board", owned(length.value()), length.origin(), "name", name(line))));
        }
        for (Posts site : reach.sites()) {
            for (SiteLine line : reach.lines()) {
                site.find(line.kind()).ifPresent(post -> inputs.add(input(site, line.kind(), post)));
            }
        }
        return inputs;
    }

    private Input input(Posts site, SiteLine.Kind kind, Posts.Post post) {
        return voice.input(
                "post",
                voice.words()
                        .row(List.of(
                                print(post.backedIn()),
                                post.height().value() > 0
                                        ? voice.say("high", "height", print(post.height()))
                                        : voice.say("on-the-ground"))),
                post.origin(),
                "kind",
                voice.say("kind." + Type.word(kind)),
                "site",
                name(site));
    }

    /** {@code 34 ft 1 in (10.39 m) behind the front, 4 ft (1.2 m) left of the middle}. */
    private String print(Footprint.Place place) {
        return voice.words()
                .row(List.of(
                        voice.say(
                                place.back() < 0 ? "place.ahead" : "place.behind",
                                "length",
                                print(new Meters(Math.abs(place.back())))),
                        voice.say(
                                place.right() < 0 ? "place.left" : "place.right",
                                "length",
                                print(new Meters(Math.abs(place.right()))))));
    }

    private Amount print(Meters length) {
        return Rounding.NEAREST.print(length, voice.first());
    }

    /** {@code 29 ft (8.9 m)}: up to the next foot and tenth of a meter. */
    private String needed(Meters length) {
        return print(length, Rounding.UP);
    }

    /** {@code 25 ft (7.6 m)}: down to the foot and tenth of a meter. */
    private String owned(Meters length) {
        return print(length, Rounding.DOWN);
    }

    private String print(Meters length, Rounding toward) {
        return voice.amount(Amount.both(
                toward.print(length.feet(), 0, Symbol.FOOT),
                toward.print(length.value(), 1, Symbol.METER),
                voice.first()));
    }

    private String step(Reach.CheckedCoach it) {
        return voice.say(
                it.straight() ? "step.straight" : "step.round",
                "name",
                name(it),
                "way",
                way(it.way()),
                "route",
                up(it.need().route()),
                "inlet",
                up(it.need().inlet()),
                "outlet",
                up(it.need().outlet()),
                "slack",
                voice.words().digits(Rounding.NEAREST.print(RequiredLength.SLACK, 2)),
                "needed",
                needed(it.need().length()));
    }

    private Amount up(Meters length) {
        return Rounding.UP.print(length, voice.first());
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.ways"));
        assumed.add(voice.say("assumed.straight"));
        if (reach.sites().stream().anyMatch(Posts::usual)) {
            assumed.add(voice.regional("assumed.usual-site"));
        }
        if (reach.leads(SiteLine.Kind.SEWER)) {
            assumed.add(voice.say("assumed.sewer"));
        }
        if (reach.leads(SiteLine.Kind.POWER)) {
            assumed.add(ExtensionCordRule.of(reach.extensions(), voice.words()));
        }
        return assumed;
    }
}
