package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.measure.Amount;
import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.measure.Volts;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.cord.Conductor;
import bayfolio.reckon.cord.CordSet;
import bayfolio.reckon.cord.CordVolts;
import bayfolio.reckon.cord.CordVolts.Outlet;
import bayfolio.reckon.cord.CordVolts.Post;
import bayfolio.reckon.cord.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How much voltage is left at the coach, behind its own cord and each extension. */
final class CordVoltsExplanation {
    private final CordVolts cord;
    private final Voice voice;

    private CordVoltsExplanation(CordVolts cord, Voice voice) {
        this.cord = cord;
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.CORD_VOLTS, coach.unit().region());
        return CordVolts.of(coach)
                .map(cord -> new CordVoltsExplanation(cord, voice).explanation())
                .orElseGet(() -> voice.lacking(CordVolts.lacking(coach)));
    }

    private Explained explanation() {
        Amps most = largest().amps().value();
        Volts lost = cord.alone().drop(most);
        List<Post> posts = cord.posts();
        List<Grid> grids = new ArrayList<>();
        grids.add(grid(voice.say("table.own", "cord", printed(cord.own())), Optional.empty()));
        cord.extensions()
                .forEach(extension -> grids.add(grid(
                        voice.say("table.extension", "name", name(extension), "cord", printed(extension)),
                        Optional.of(extension))));
        return new Explained.Explanation(
                Question.CORD_VOLTS,
                voice.asked(),
                voice.say(
                        "answer",
                        "amps",
                        current(most),
                        "lost",
                        Rounding.UP.print(lost),
                        "left",
                        Stream.of(posts.get(0), posts.get(posts.size() - 1))
                                .distinct()
                                .map(post -> leaves(post, lost))
                                .collect(Collectors.joining(" "))),
                grids,
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.regional(
                        "source",
                        "tables",
                        String.join(
                                "; ",
                                cord.leads().stream()
                                        .map(lead ->
                                                voice.source(lead.conductor().row()))
                                        .distinct()
                                        .toList())),
                voice.say("error"),
                Optional.of(new Plot.Bars(bars(most))));
    }

    /** What arrives of a post's volts at full load, with the cord alone and with each extension that carries it. */
    private List<Bar> bars(Amps most) {
        Post post = cord.posts().get(0);
        double whole = post.volts().value().value();
        List<Bar> bars = new ArrayList<>();
        bars.add(bar(name(cord.own()), post, cord.alone().drop(most), whole));
        for (CordSet extension : cord.extensions()) {
            if (extension.carries(most, voice.region())) {
                bars.add(bar(
                        name(extension), post, cord.with(Optional.of(extension)).drop(most), whole));
            }
        }
        return bars;
    }

    private Bar bar(String name, Post post, Volts lost, double whole) {
        return new Bar(name, voice.amount(left(post, lost)), post.behind(lost).value(), 0, false, whole);
    }

    private Outlet largest() {
        return cord.outlets().get(0);
    }

    private String name(CordSet lead) {
        return lead.name().orElseGet(() -> voice.say("own"));
    }

    private Grid grid(String title, Optional<CordSet> extension) {
        List<String> head = new ArrayList<>(voice.heads("plugged-in", "load", "lost"));
        cord.posts().forEach(post -> head.add(voice.say("head.at", "volts", shown(post))));
        return new Grid(
                title,
                head,
                cord.outlets().stream().map(outlet -> row(outlet, extension)).toList());
    }

    private List<String> row(Outlet outlet, Optional<CordSet> extension) {
        Amps amps = outlet.amps().value();
        Volts lost = cord.with(extension).drop(amps);
        List<String> row = new ArrayList<>();
        row.add(outlet.name());
        row.add(outlet.legs() > 1 ? voice.say("on-one-leg", "amps", current(amps)) : voice.amount(current(amps)));
        if (extension.filter(it -> !it.carries(amps, voice.region())).isPresent()) {
            row.add(voice.say("too-thin"));
            cord.posts().forEach(post -> row.add("−"));
            return row;
        }
        row.add(voice.words().row(List.of(Rounding.UP.print(lost), percent(lost))));
        cord.posts().forEach(post -> row.add(voice.amount(left(post, lost))));
        return row;
    }

    private Amount percent(Volts lost) {
        return Rounding.UP.print(
                100 * lost.value() / cord.posts().get(0).volts().value().value(), 1, Symbol.PERCENT);
    }

    private String leaves(Post post, Volts lost) {
        return voice.say("leaves", "post", shown(post), "left", left(post, lost));
    }

    private static Amount left(Post post, Volts lost) {
        return Rounding.DOWN.print(post.behind(lost));
    }

    private static Amount shown(Post post) {
        return Rounding.DOWN.print(post.volts().value().value(), 0, Symbol.VOLT);
    }

    private static Amount current(Amps amps) {
        return Rounding.UP.print(amps.value(), amps.value() == Math.rint(amps.value()) ? 0 : 1, Symbol.AMPERE);
    }

    private String printed(CordSet lead) {
        return voice.say("length-of", "length", length(lead), "size", lead.size(voice.first()));
    }

    private Amount length(CordSet lead) {
        return Rounding.NEAREST.print(lead.length().value(), voice.first());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (CordSet lead : cord.leads()) {
            inputs.add(voice.input("length", lead.length().map(it -> length(lead)), "name", name(lead)));
            inputs.add(voice.input("conductor", lead.stated().map(it -> lead.size(voice.first())), "name", name(lead)));
            boolean warmed = lead.conductor().celsius() < Conductor.WARM;
            inputs.add(voice.input(
                    warmed ? "resistance-warm" : "resistance",
                    ohms(lead),
                    new Origin.Usual(lead.conductor().row()),
                    "name",
                    name(lead)));
        }
        for (Outlet outlet : cord.outlets()) {
            inputs.add(voice.input("outlet", outlet.amps().map(CordVoltsExplanation::current), "name", outlet.name()));
        }
        cord.posts()
                .forEach(post -> inputs.add(voice.input(
                        post.volts().isStated() ? "voltage" : "weak-post",
                        post.volts().map(it -> shown(post)))));
        return inputs;
    }

    private String ohms(CordSet lead) {
        return voice.amount(Amount.both(ohmsPerThousandFeet(lead), ohmsPerKilometer(lead), voice.first()));
    }

    private static Amount ohmsPerThousandFeet(CordSet lead) {
        return Rounding.UP.print(lead.conductor().warm() * 304.8, 3, Symbol.OHM_PER_1000_FEET);
    }

    private static Amount ohmsPerKilometer(CordSet lead) {
        return Rounding.UP.print(lead.conductor().warm() * 1000, 3, Symbol.OHM_PER_KILOMETER);
    }

    private List<String> steps() {
        Amps most = largest().amps().value();
        List<String> steps = new ArrayList<>();
        steps.add(voice.say(
                "step.alone",
                "amps",
                current(most),
                "product",
                product(cord.own()),
                "lost",
                hundredths(cord.alone().drop(most))));
        if (largest().legs() > 1) {
            steps.add(voice.say("step.legs", "lost", hundredths(cord.alone().perLeg(most))));
        }
        for (CordSet extension : cord.extensions()) {
            steps.add(voice.say(
                    "step.extension",
                    "name",
                    name(extension),
                    "amps",
                    current(most),
                    "product",
                    product(extension),
                    "lost",
                    hundredths(Run.of(extension.stretch()).drop(most))));
        }
        return steps;
    }

    private static Amount hundredths(Volts lost) {
        return Rounding.UP.print(lost.value(), 2, Symbol.VOLT);
    }

    /** In the measures of the region alone: a product of two pairs cannot be read. */
    private String product(CordSet lead) {
        boolean us = voice.first() == MeasureSystem.US;
        Amount length = us
                ? Rounding.NEAREST.print(lead.length().value().feet(), 1, Symbol.FOOT)
                : Rounding.NEAREST.print(lead.length().value().value(), 1, Symbol.METER);
        return voice.amount(length) + " × " + voice.amount(us ? ohmsPerThousandFeet(lead) : ohmsPerKilometer(lead));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.full-load"));
        assumed.add(voice.say("assumed.warm"));
        assumed.add(voice.say("assumed.plugs"));
        if (largest().legs() > 1) {
            assumed.add(voice.say("assumed.one-leg"));
        }
        cord.leads().stream()
                .filter(lead -> !lead.listed())
                .forEach(lead -> assumed.add(voice.say(
                        "assumed.next-size",
                        "name",
                        name(lead),
                        "size",
                        lead.size(voice.first()),
                        "taken",
                        lead.conductor().size())));
        assumed.add(ExtensionCordRule.of(cord.extensions(), voice.words()));
        cord.unlisted().forEach(name -> assumed.add(voice.say("assumed.unlisted", "name", name)));
        if (voice.region() == Region.EUROPE && cord.longest().exceeds(CordSet.LONGEST_IN_EUROPE)) {
            assumed.add(voice.say(
                    "assumed.too-long",
                    "most",
                    Rounding.NEAREST.print(CordSet.LONGEST_IN_EUROPE.value(), 0, Symbol.METER),
                    "feet",
                    Rounding.NEAREST.print(CordSet.LONGEST_IN_EUROPE.feet(), 0, Symbol.FOOT)));
        }
        return assumed;
    }
}
