package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.power.Draw;
import bayfolio.reckon.power.LoadSharing;
import bayfolio.reckon.power.RunsTogether;
import bayfolio.reckon.power.Starting;
import bayfolio.reckon.power.SupplyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What runs together on each supply of a coach, and what never does. */
final class RunsTogetherExplanation {
    private final RunsTogether together;
    private final List<LoadSharing> ways;
    private final Voice voice;
    private final SupplyNames names;
    private final boolean american;

    private RunsTogetherExplanation(RunsTogether together, Voice voice) {
        this.together = together;
        this.ways = together.ways();
        this.voice = voice;
        this.names = new SupplyNames(voice);
        this.american = voice.region() == Region.NORTH_AMERICA;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.RUNS_TOGETHER, coach.unit().region());
        return RunsTogether.of(coach)
                .map(together -> new RunsTogetherExplanation(together, voice).explanation())
                .orElseGet(() -> voice.lacking(RunsTogether.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.RUNS_TOGETHER,
                voice.asked(),
                answer(),
                Stream.concat(
                                Stream.of(fitting()),
                                Stream.concat(
                                        ways.stream().flatMap(way -> never(way).stream()),
                                        Stream.of(dead(), order(), starting()).flatMap(Optional::stream)))
                        .toList(),
                inputs(),
                voice.regional("formula"),
                ways.stream().map(this::step).toList(),
                assumed(),
                voice.regional("source"),
                voice.say("error"),
                Optional.of(new Plot.Bars(bars())));
    }

    /** How full each leg is with the usual things and as many air conditioners as fit. */
    private List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (LoadSharing way : ways) {
            List<Draw> on = RunsTogether.on(way);
            for (LoadSharing.Limit leg : RunsTogether.legs(way)) {
                String supply = names.of(way.feed());
                Amps carried = way.carried(leg, on);
                bars.add(Bar.upTo(
                        leg.leg() == 0
                                ? supply
                                : voice.words().row(List.of(supply, voice.say("bar.leg", "leg", leg.leg()))),
                        voice.say("bar", "carried", Rounding.UP.print(carried), "limit", plain(leg.limit())),
                        carried.value(),
                        leg.limit().value()));
            }
        }
        return bars;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.always", "names", namesOr(ways.get(0).always(), "nothing")));
        assumed.add(voice.say("assumed.usual", "names", namesOr(RunsTogether.usual(ways.get(0)), "nothing-more")));
        together.chargerLimit()
                .filter(limit -> ways.stream().anyMatch(way -> way.feed().small()))
                .ifPresent(limit -> assumed.add(voice.say("assumed.charger", "limit", plain(limit))));
        if (american) {
            assumed.add(voice.say("assumed.continuous"));
        }
        if (ways.stream().anyMatch(LoadSharing::manyThings)) {
            assumed.add(voice.say("assumed.many", "count", count(LoadSharing.FEW)));
        }
        if (ways.stream()
                .anyMatch(way -> !Starting.all(way).isEmpty() && way.feed().source() != Supply.Source.SHORE)) {
            assumed.add(voice.say("assumed.starting"));
        }
        assumed.add(voice.say("assumed.nothing-else"));
        return assumed;
    }

    private static Amount plain(Amps amps) {
        return amps.amount(MeasureSystem.METRIC);
    }

    private String answer() {
        boolean cooled = together.cooled();
        return voice.say(
                cooled ? "answer.cooled" : "answer.free",
                "parts",
                voice.words()
                        .row(ways.stream()
                                .map(way -> voice.say(
                                        "answer.on",
                                        "what",
                                        cooled ? cooling(way) : free(way),
                                        "supply",
                                        names.inside(way.feed())))
                                .toList()));
    }

    private String cooling(LoadSharing way) {
        return count(RunsTogether.coolers(way).size());
    }

    private Grid fitting() {
        boolean cooled = together.cooled();
        List<List<String>> rows = new ArrayList<>();
        for (LoadSharing way : ways) {
            List<String> row = new ArrayList<>(List.of(names.of(way.feed()), gives(way.feed())));
            if (cooled) {
                row.add(cooling(way));
            }
            row.add(free(way));
            rows.add(row);
        }
        return new Grid(
                "",
                cooled
                        ? voice.heads("power-from", "gives", "air-conditioners", "free-then")
                        : voice.heads("power-from", "gives", "free"),
                rows);
    }

    /** What each leg still carries with the usual things and as many air conditioners as fit. */
    private String free(LoadSharing way) {
        List<Draw> on = RunsTogether.on(way);
        if (!way.fits(on)) {
            return voice.say("nothing");
        }
        List<String> legs = new ArrayList<>();
        for (LoadSharing.Limit leg : RunsTogether.legs(way)) {
            Amount amps = Rounding.DOWN.print(
                    new Amps(leg.limit().value() - way.carried(leg, on).value()));
            legs.add(leg.leg() == 0 ? voice.amount(amps) : voice.say("free.leg", "leg", leg.leg(), "amps", amps));
        }
        return voice.words().row(legs);
    }

    private String gives(SupplyOption feed) {
        Amount amps = plain(feed.perLeg());
        return switch (feed.legs()) {
            case TWO -> voice.times(2, amps);
            case JOINED ->
                feed.source() == Supply.Source.SHORE ? voice.say("gives.joined", "amps", amps) : voice.amount(amps);
            case FIRST_ONLY -> voice.say("gives.first-only", "amps", amps);
            case ONE -> voice.amount(amps);
        };
    }

    private Optional<Grid> never(LoadSharing way) {
        List<List<Draw>> never = way.never();
        if (never.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> rows = new LinkedHashMap<>();
        if (never.get(0).isEmpty()) {
            rows.put(voice.say("never.anything"), voice.say("never.always-on"));
        } else {
            never.forEach(set -> rows.putIfAbsent(phrase(set, way), why(set, way)));
        }
        return Optional.of(new Grid(
                voice.say("table.never", "supply", names.inside(way.feed())),
                voice.heads("these", "why"),
                rows.entrySet().stream()
                        .map(row -> List.of(row.getKey(), row.getValue()))
                        .toList()));
    }

    private String why(List<Draw> set, LoadSharing way) {
        LoadSharing.Limit over = RunsTogether.over(set, way);
        boolean supply = over.circuit().isEmpty() && over.leg() == 0;
        String why = voice.say(
                "why",
                "carried",
                Rounding.UP.print(way.carried(over, set)),
                "carrier",
                supply ? voice.say("the-supply") : names.of(over, way.feed()),
                "limit",
                plain(over.limit()));
        return together.fitsWithChargerLow(set, way)
                ? together.chargerLimit()
                        .map(limit -> voice.say("why.charger", "why", why, "limit", plain(limit)))
                        .orElse(why)
                : why;
    }

    private String phrase(List<Draw> set, LoadSharing way) {
        return String.join(
                " + ",
                RunsTogether.grouped(set, way).stream()
                        .map(some -> phrase(some, way))
                        .toList());
    }

    private String phrase(RunsTogether.Some some, LoadSharing way) {
        List<String> each = some.of().stream().map(draw -> draw.load().name()).toList();
        int all = each.size();
        if (all == 1) {
            return each.get(0);
        }
        boolean every = some.chosen() == all;
        if (some.of().equals(RunsTogether.air(way.switched()))) {
            return voice.say(
                    every ? "set.air-all" : "set.air-some",
                    "chosen",
                    some.chosen(),
                    "count",
                    count(some.chosen()),
                    "all",
                    count(all));
        }
        if (every) {
            return String.join(" + ", each);
        }
        return some.chosen() == 1
                ? voice.say("set.either", "names", voice.words().or(each))
                : voice.say("set.any", "count", count(some.chosen()), "names", each);
    }

    private Optional<Grid> dead() {
        List<List<String>> rows = new ArrayList<>();
        for (LoadSharing way : ways) {
            if (!way.dead().isEmpty() && way.feed().source() != Supply.Source.INVERTER) {
                rows.add(List.of(names.of(way.feed()), named(way.dead())));
            }
        }
        for (LoadSharing way : ways) {
            if (way.feed().source() == Supply.Source.INVERTER) {
                List<Draw> fed = Stream.concat(way.always().stream(), way.switched().stream())
                        .toList();
                rows.add(List.of(names.of(way.feed()), voice.say("everything-but", "names", named(fed))));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid(voice.say("table.dead"), voice.heads("power-from", "without-power"), rows));
    }

    private Optional<Grid> order() {
        List<List<String>> rows = new ArrayList<>();
        for (Draw draw : together.switchOff()) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    draw.load().name(),
                    voice.amount(Rounding.UP.print(draw.needs()))));
        }
        List<String> head = new ArrayList<>(List.of(""));
        head.addAll(voice.heads("what", "counts-as"));
        return rows.size() < 2 ? Optional.empty() : Optional.of(new Grid(voice.say("table.order"), head, rows));
    }

    private Optional<Grid> starting() {
        List<List<String>> rows = ways.stream()
                .filter(way -> way.feed().source() != Supply.Source.SHORE)
                .flatMap(way -> Starting.all(way).stream().map(start -> starting(start, way)))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid(
                        voice.say("table.starting"), voice.heads("power-from", "what", "for-a-moment", "so"), rows));
    }

    private List<String> starting(Starting start, LoadSharing way) {
        SupplyOption feed = way.feed();
        String supply = names.of(feed);
        String motor = start.motor().load().name();
        if (start.moment().isEmpty()) {
            return List.of(supply, motor, "", voice.say("start.never", "supply", supply));
        }
        Amps moment = start.moment().get();
        String what = start.running().isEmpty()
                ? motor
                : voice.say("start.beside", "name", motor, "others", named(start.running()));
        return List.of(
                supply,
                feed.legs() == SupplyOption.Legs.TWO ? voice.say("start.leg", "what", what, "leg", start.leg()) : what,
                voice.amount(Rounding.UP.print(moment)),
                feed.surge()
                        .map(surge -> voice.say(
                                Draw.over(moment, surge) ? "start.no" : "start.yes",
                                "surge",
                                Rounding.DOWN.print(surge)))
                        .orElseGet(() -> voice.say(
                                "start." + Type.word(start.turn()),
                                "supply",
                                supply,
                                "amps",
                                Rounding.DOWN.print(feed.perLeg()))));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (LoadSharing way : ways) {
            SupplyOption feed = way.feed();
            inputs.add(voice.input(
                    "supply",
                    voice.words().row(List.of(gives(feed), feed.volts().amount(MeasureSystem.METRIC))),
                    feed.origin(),
                    "name",
                    names.of(feed)));
        }
        LinkedHashSet<Draw> draws = new LinkedHashSet<>();
        ways.forEach(way -> Stream.of(way.always(), way.switched(), way.dead()).forEach(draws::addAll));
        Set<Load> seen = new HashSet<>();
        for (Draw draw : draws) {
            List<Object> value = new ArrayList<>(List.of(stated(draw)));
            if (draw.continuous()) {
                value.add(voice.say("for-hours"));
            }
            if (draw.alwaysOn()) {
                value.add(voice.say("always-on"));
            }
            inputs.add(voice.input(
                    seen.add(draw.load()) ? "load" : "load-set-low",
                    voice.words().row(value),
                    new Origin.Stated(draw.load().facts(), draw.stated()),
                    "name",
                    draw.load().name()));
        }
        if (american) {
            inputs.add(voice.input(
                    "factor",
                    Given.usual(Draw.CONTINUOUS_NORTH_AMERICA).map(it -> Rounding.NEAREST.print(it, 2, Symbol.NONE))));
        }
        return inputs;
    }

    /** As its plate says, or what it is set to. */
    private static Amount stated(Draw draw) {
        Facts facts = draw.load().facts();
        return facts.find(Load.AMPS).filter(draw.amps()::equals).isPresent()
                ? facts.written(Load.AMPS).orElseThrow()
                : Rounding.UP.print(draw.amps());
    }

    private String step(LoadSharing way) {
        List<Draw> on = RunsTogether.on(way);
        List<String> legs = new ArrayList<>();
        for (LoadSharing.Limit leg : RunsTogether.legs(way)) {
            String sum = voice.say("step.of", "sum", sum(leg, on, way), "limit", Rounding.DOWN.print(leg.limit()));
            legs.add(leg.leg() == 0 ? sum : voice.say("step.leg", "leg", names.of(leg, way.feed()), "sum", sum));
        }
        return voice.say("step", "supply", names.of(way.feed()), "legs", String.join("; ", legs));
    }

    private String sum(LoadSharing.Limit leg, List<Draw> on, LoadSharing way) {
        List<String> parts = new ArrayList<>();
        parts.add(voice.say("step.always", "amps", Rounding.UP.print(leg.always())));
        for (Draw draw : on) {
            Amps drawn = leg.draws().get(way.switched().indexOf(draw));
            if (drawn.value() > 0) {
                parts.add(voice.say("step.part", "name", draw.load().name(), "amps", Rounding.UP.print(drawn)));
            }
        }
        return String.join(" + ", parts) + " = " + voice.amount(Rounding.UP.print(way.carried(leg, on)));
    }

    private String count(int count) {
        return voice.common("count", "count", count);
    }

    private String namesOr(List<Draw> draws, String none) {
        return draws.isEmpty() ? voice.say(none) : named(draws);
    }

    private String named(List<Draw> draws) {
        return voice.words().and(draws.stream().map(draw -> draw.load().name()).toList());
    }
}
