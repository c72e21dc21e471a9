package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Share;
import bayfolio.model.Coach;
import bayfolio.model.Tank;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterUse;
import bayfolio.reckon.water.WaterUseProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** For how many days the water lasts, and the room for waste. */
final class WaterDaysExplanation {
    /** Longer than most stay in one place. */
    private static final double MOST_DAYS = 14;

    private final WaterUse use;
    private final Voice voice;

    private WaterDaysExplanation(WaterUse use, Voice voice) {
        this.use = use;
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.WATER_DAYS, coach.unit().region());
        return WaterUse.of(coach)
                .map(use -> new WaterDaysExplanation(use, voice).explanation())
                .orElseGet(() -> voice.lacking(WaterUse.lacking(coach.unit())));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.WATER_DAYS,
                voice.asked(),
                use.berths() > 2 ? promise(2) + " " + promise(use.berths()) : promise(use.berths()),
                Stream.concat(Stream.of(first()), WaterUseProfile.ALL.stream().map(this::each))
                        .toList(),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.say("source"),
                voice.say("error"),
                Optional.of(course(Math.min(2, use.berths()))));
    }

    /** Water falls and waste rises from day to day, for so many people living as usual. */
    private Course course(int people) {
        List<WaterUse.Lasting> all = use.lasting(WaterUseProfile.USUAL, people);
        double longest = all.stream().mapToDouble(WaterUse.Lasting::days).max().orElse(1);
        double span = Math.max(1, Math.min(MOST_DAYS, Math.ceil(longest)));
        return new Course(
                span,
                voice.say("course.unit"),
                0,
                all.stream().map(lasting -> line(lasting, span)).toList());
    }

    private Course.Line line(WaterUse.Lasting lasting, double span) {
        boolean empties = lasting.end() == WaterUse.End.EMPTY;
        double end = Math.min(span, lasting.days());
        double used = end / lasting.days();
        return new Course.Line(
                voice.say("course.line", "what", what(lasting, voice), "days", shown(lasting)),
                List.of(new Course.Point(0, empties ? 1 : 0), new Course.Point(end, empties ? 1 - used : used)));
    }

    private String promise(int people) {
        WaterUse.Lasting first = use.first(WaterUseProfile.USUAL, people);
        return voice.say(
                "promise",
                "people",
                people,
                "days",
                voice.say("whole", "days", first.whole()),
                "tanks",
                first.tanks().names(),
                "count",
                first.tanks().tanks().size(),
                "end",
                end(first));
    }

    private IntStream counts() {
        return IntStream.rangeClosed(1, use.berths());
    }

    private Grid first() {
        List<String> head = new ArrayList<>(List.of(voice.say("head.people")));
        WaterUseProfile.ALL.forEach(way -> head.add(voice.say("head.living", "way", way.name())));
        return new Grid(
                "",
                head,
                counts().mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        WaterUseProfile.ALL.stream().map(way -> {
                                            WaterUse.Lasting first = use.first(way, people);
                                            return voice.say("first", "days", shown(first), "what", what(first, voice));
                                        }))
                                .toList())
                        .toList());
    }

    private Grid each(WaterUseProfile way) {
        List<String> head = new ArrayList<>(List.of(voice.say("head.people")));
        use.lasting(way, 1).forEach(lasting -> head.add(what(lasting, voice)));
        return new Grid(
                voice.say("table.each", "way", way.name()),
                head,
                counts().mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        use.lasting(way, people).stream().map(this::shown))
                                .toList())
                        .toList());
    }

    private String shown(WaterUse.Lasting lasting) {
        return voice.amount(Rounding.DOWN.days(lasting.time()));
    }

    /** {@code Gray tank full}. */
    static String what(WaterUse.Lasting lasting, Voice voice) {
        return voice.say("what", "tanks", lasting.tanks().names(), "end", end(lasting));
    }

    static String end(WaterUse.Lasting lasting) {
        return Type.word(lasting.end());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        Stream.of(use.fresh(), use.gray(), use.toilet())
                .flatMap(tanks -> tanks.tanks().stream())
                .forEach(tank -> {
                    inputs.add(voice.input(
                            "holds",
                            voice.times(
                                    WaterTanks.count(tank),
                                    tank.facts().written(Tank.CAPACITY).orElseThrow()),
                            new Origin.Stated(tank.facts(), Tank.CAPACITY),
                            "name",
                            tank.name()));
                    inputs.add(voice.input("usable", shownShare(tank), "name", tank.name()));
                });
        use.perMinute()
                .filter(it -> use.shower())
                .ifPresent(given -> inputs.add(voice.input("shower", Voice.written(given))));
        use.perFlush().ifPresent(given -> {
            inputs.add(voice.input(
                    "flush",
                    given.isStated() ? Voice.written(given) : given.map(it -> Rounding.UP.print(it, voice.first()))));
            inputs.add(voice.input(
                    "body", Given.usual(WaterUseProfile.BODY).map(it -> Rounding.UP.print(it, voice.first()))));
        });
        for (WaterUseProfile way : WaterUseProfile.ALL) {
            inputs.add(voice.input("each", habits(way), new Origin.Usual(way.drink()), "way", way.name()));
        }
        return inputs;
    }

    /** As stated, or all of it. */
    private static Given<Amount> shownShare(Tank tank) {
        Given<Share> share = WaterTanks.share(tank);
        return share.isStated() ? Voice.written(share) : share.map(it -> it.amount(MeasureSystem.METRIC));
    }

    private String habits(WaterUseProfile way) {
        List<String> parts = new ArrayList<>(List.of(
                voice.say("habit.drink", "water", more(way.drink().value())),
                voice.say("habit.dishes", "water", more(way.dishes())),
                voice.say("habit.wash", "water", more(way.wash()))));
        if (use.shower()) {
            parts.add(
                    way.showers() > 0
                            ? voice.say(
                                    "habit.shower",
                                    "minutes",
                                    Math.round(way.shower().value() / 60))
                            : voice.say("habit.no-shower"));
        }
        if (!use.toilet().none()) {
            parts.add(voice.say("habit.flushes", "count", way.flushes()));
        }
        return voice.words().row(parts);
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        for (WaterUseProfile way : WaterUseProfile.ALL) {
            steps.add(voice.say(
                    "step.each",
                    "way",
                    way.name(),
                    "parts",
                    voice.words()
                            .row(use.lasting(way, 1).stream()
                                    .map(lasting -> voice.say(
                                            "step.part",
                                            "tanks",
                                            lasting.tanks().names(),
                                            "water",
                                            more(lasting.each())))
                                    .toList())));
        }
        use.lasting(WaterUseProfile.USUAL, use.berths())
                .forEach(lasting -> steps.add(voice.say(
                        "step.tank",
                        "tanks",
                        lasting.tanks().names(),
                        "people",
                        use.berths(),
                        "usable",
                        Rounding.DOWN.print(lasting.tanks().usable(), voice.first()),
                        "each",
                        more(lasting.each()),
                        "days",
                        shown(lasting))));
        return steps;
    }

    private List<String> assumed() {
        return List.of(
                voice.say("assumed.start", "tanks", use.fresh().names()),
                voice.say("assumed.usual"),
                voice.say("assumed.no-hose"),
                voice.say("assumed.drinking"),
                voice.say(use.shower() ? "assumed.shower" : "assumed.no-shower"),
                voice.say("assumed.heater"));
    }

    private String more(Liters volume) {
        return voice.amount(Rounding.UP.print(volume, voice.first()));
    }
}
