package bayfolio.reckon;

import bayfolio.fact.Key;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.model.Coach;
import bayfolio.model.Feature;
import bayfolio.model.Features;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a coach fits under, through and into. */
public final class Clearances {
    private static final String ASKED = "What does this coach fit under and through?";
    private static final String OWN_MARGIN = "our own choice, no rule of anybody else";

    /** 102 in: 23 CFR 658.15. 96 in: agency page on tunnels and older roads. */
    private static final Limit WIDE_ROADS =
            new Limit("Width, main US highways", new Meters(102 * 0.0254), Size.WIDTH, "23 CFR 658.15");

    private static final Limit NARROW_ROADS =
            new Limit("Width, some tunnels and old roads", new Meters(96 * 0.0254), Size.WIDTH, "road agency page");

    private static final String EUROPE_SOURCE =
            "a road authority's table for any motor vehicle; Regulation (EU) 1230/2012 Annex I for trucks";
    private static final List<Limit> EUROPE = List.of(
            new Limit("Height, Europe", new Meters(4), Size.HEIGHT, EUROPE_SOURCE),
            new Limit("Width, Europe", new Meters(2.55), Size.WIDTH, EUROPE_SOURCE),
            new Limit("Length, Europe", new Meters(12), Size.LENGTH, EUROPE_SOURCE));

    private final Size size;
    private final Features features;
    private final Region region;
    private final MeasureSystem first;

    private record Limit(String name, Meters most, Key<Meters> of, String source) {}

    private Clearances(Size size, Coach coach) {
        this.size = size;
        this.features = coach.features();
        this.region = coach.unit().region();
        this.first = region.first();
    }

    public static Reckoned of(Coach coach) {
        List<String> lacking = lacking(coach);
        return lacking.isEmpty()
                ? new Clearances(coach.unit().size(), coach).reckoning()
                : new Reckoned.Lacking(Question.CLEARANCE, ASKED, lacking);
    }

    static List<String> lacking(Coach coach) {
        Optional<Size> size = coach.unit().facts().find(Unit.SIZE);
        List<String> lacking = new ArrayList<>();
        if (size.flatMap(it -> it.facts().find(Size.HEIGHT)).isEmpty()) {
            lacking.add("height of the coach");
        }
        if (size.flatMap(it -> it.facts().find(Size.WIDTH)).isEmpty()) {
            lacking.add("width of the coach");
        }
        if (size.flatMap(it -> it.facts().find(Size.LENGTH)).isEmpty()) {
            lacking.add("length of the coach");
        }
        return lacking;
    }

    private Reckoned reckoning() {
        return new Reckoned.Reckoning(
                Question.CLEARANCE,
                ASKED,
                answer(),
                List.of(measures(), signs(), limits()),
                inputs(),
                "Lowest sign = height + margin, up to the next step that signs show.",
                steps(),
                assumed(),
                "The margin is taken for planning. Limits: "
                        + String.join(
                                "; ",
                                limitsHere().stream()
                                        .map(Limit::source)
                                        .distinct()
                                        .toList())
                        + ".",
                "All sizes are rounded up, so the coach is never bigger than shown. "
                        + "A sign may be wrong: new pavement, snow and ice take height away.");
    }

    /** The lowest sign that the coach may be driven under, in both systems, each with the margin that goes with its signs. */
    public static Optional<String> lowestSign(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.SIZE)
                .flatMap(size -> size.facts().find(Size.HEIGHT))
                .map(height -> sign(height, coach.unit().region().first()));
    }

    private String answer() {
        String under =
                "Never drive under a sign lower than " + sign(size.facts().get(Size.HEIGHT), first) + ".";
        return mirrors()
                .map(wide -> under + " Stay out of gaps narrower than " + Rounding.UP.print(wide, first) + ".")
                .orElse(under);
    }

    private static String sign(Meters height, MeasureSystem first) {
        String us = card(height, MeasureSystem.US);
        String metric = card(height, MeasureSystem.METRIC);
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }

    private static String card(Meters height, MeasureSystem signs) {
        return Clearance.card(Clearance.of(height, signs).lowestSign(signs), signs);
    }

    private Optional<Meters> mirrors() {
        return size.facts().find(Size.WIDTH_MIRRORS);
    }

    /** Where there is one that can stand up. */
    private String antennaDown() {
        return features.contains(Feature.ANTENNA_RAISED) ? ", antenna down" : "";
    }

    private Optional<Meters> antennaUp() {
        return size.facts().find(Size.HEIGHT_ANTENNA_UP);
    }

    private Grid measures() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(measure("Height on the road" + antennaDown(), size.facts().get(Size.HEIGHT)));
        antennaUp().ifPresent(up -> rows.add(measure("Height with the antenna up", up)));
        mirrors().ifPresent(wide -> rows.add(measure("Width over the mirrors", wide)));
        rows.add(measure("Width of the body", size.facts().get(Size.WIDTH)));
        rows.add(measure("Length", size.facts().get(Size.LENGTH)));
        return new Grid("This coach, rounded up", List.of("What", "Plan with", "In short"), rows);
    }

    private List<String> measure(String name, Meters length) {
        return List.of(
                name,
                Rounding.UP.print(length, first),
                Clearance.card(length, first) + " (" + Clearance.card(length, first.other()) + ")");
    }

    private Grid signs() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(signRow("On the road" + antennaDown(), size.facts().get(Size.HEIGHT)));
        antennaUp().ifPresent(up -> rows.add(signRow("Antenna left up by mistake", up)));
        return new Grid(
                "The lowest sign to drive under, for the card at the dashboard",
                List.of("How", "Sign in feet and inches", "Sign in meters"),
                rows);
    }

    private static List<String> signRow(String how, Meters height) {
        return List.of(how, card(height, MeasureSystem.US), card(height, MeasureSystem.METRIC));
    }

    private List<Limit> limitsHere() {
        return switch (region) {
            case NORTH_AMERICA -> List.of(WIDE_ROADS, NARROW_ROADS);
            case EUROPE -> EUROPE;
        };
    }

    private Grid limits() {
        return new Grid(
                "Usual limits, mirrors not counted",
                List.of("Limit", "The most", "This coach"),
                limitsHere().stream()
                        .map(limit -> List.of(limit.name(), Rounding.DOWN.print(limit.most(), first), against(limit)))
                        .toList());
    }

    /** Compared before anything is rounded. */
    private String against(Limit limit) {
        Meters over = size.facts().get(limit.of()).minus(limit.most());
        return over.value() > 1e-9 ? "over it by " + Rounding.UP.print(over, first) : "within it";
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(described("Height" + antennaDown(), size.facts().get(Size.HEIGHT)));
        antennaUp().ifPresent(up -> inputs.add(described("Height, antenna up", up)));
        mirrors().ifPresent(wide -> inputs.add(described("Width over the mirrors", wide)));
        inputs.add(described("Width of the body", size.facts().get(Size.WIDTH)));
        inputs.add(described("Length", size.facts().get(Size.LENGTH)));
        inputs.add(Input.unverified("Margin under signs", margin(), OWN_MARGIN));
        return inputs;
    }

    private Input described(String name, Meters length) {
        return Input.described(name, Rounding.UP.print(length, first));
    }

    private String margin() {
        return first == MeasureSystem.US ? "6 in (150 mm)" : "150 mm (6 in)";
    }

    private List<String> steps() {
        Meters height = size.facts().get(Size.HEIGHT);
        String us = Rounding.UP.print(height.value() / 0.0254, 1) + " in + 6 in = "
                + Rounding.UP.print(height.plus(Clearance.MARGIN_INCHES).value() / 0.0254, 1)
                + " in, so a sign of " + card(height, MeasureSystem.US) + ".";
        String metric = Rounding.UP.print(height.value(), 3) + " m + 0.150 m = "
                + Rounding.UP.print(height.plus(Clearance.MARGIN_MILLIMETERS).value(), 3)
                + " m, so a sign of " + card(height, MeasureSystem.METRIC) + ".";
        return first == MeasureSystem.US ? List.of(us, metric) : List.of(metric, us);
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("The height counts hard parts"
                + (features.contains(Feature.ROOF_AC) ? ", such as the air conditioner" : "")
                + ". What bends is not counted.");
        assumed.add("Nothing was put on the roof after the coach was measured.");
        assumed.add("The sign tells the height at the lowest point of the lane.");
        if (region == Region.NORTH_AMERICA) {
            assumed.add("The highway width is a rule for trucks. Each state sets its own for motorhomes.");
        }
        if (mirrors().isEmpty()) {
            assumed.add("The width over the mirrors is not stated. They stick out on both sides.");
        }
        return assumed;
    }
}
