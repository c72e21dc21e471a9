package bayfolio.reckon;

import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether cord and hoses reach the posts of a site, for both ways onto it. */
public final class Reach {
    private static final String ASKED = "Do the cord and the hoses reach?";

    /** For an inlet whose height is not stated. */
    private static final Meters USUAL_HEIGHT = new Meters(0.6);

    private final Region region;
    private final MeasureSystem first;
    private final Footprint coach;
    private final List<SiteLine> hookups;
    private final List<CordSet> extensions;
    private final List<Posts> sites;

    /** One hose or cord on one site, for one way in. */
    private record Case(SiteLine hookup, Posts.Way way, boolean straight, RequiredLength need) {
        boolean isShort() {
            return hookup.owned().filter(owned -> !need.metBy(owned)).isPresent();
        }

        Meters missing() {
            return need.length().minus(hookup.owned().orElseThrow());
        }
    }

    private Reach(Coach coach, Footprint footprint, List<SiteLine> hookups) {
        this.region = coach.unit().region();
        this.first = region.first();
        this.coach = footprint;
        this.hookups = hookups;
        this.extensions = CordSet.extensions(coach.unit());
        this.sites = Posts.all(coach.fleet().pitches(), region, footprint);
    }

    public static Reckoned of(Coach coach) {
        List<String> lacking = lacking(coach);
        return known(coach)
                .filter(reach -> lacking.isEmpty())
                .map(Reach::reckoning)
                .orElseGet(() -> new Reckoned.Lacking(Question.REACH, ASKED, lacking));
    }

    private static Optional<Size> size(Coach coach) {
        return coach.unit().facts().find(Unit.SIZE).filter(it -> it.facts().whole());
    }

    private static Optional<Reach> known(Coach coach) {
        return size(coach)
                .filter(size -> SiteLine.any(coach))
                .map(size -> new Reach(
                        coach,
                        new Footprint(
                                size.facts().get(Size.LENGTH), size.facts().get(Size.WIDTH)),
                        SiteLine.all(coach, size)));
    }

    static List<String> lacking(Coach coach) {
        if (!SiteLine.any(coach)) {
            return List.of();
        }
        Optional<Reach> known = known(coach);
        if (known.isEmpty()) {
            return List.of("length and width of the coach");
        }
        if (known.get().hookups.isEmpty()) {
            return SiteLine.unplaced(coach, size(coach).orElseThrow());
        }
        return known.get().cases().isEmpty() ? List.of("posts of the sites of this fleet") : List.of();
    }

    private Reckoned reckoning() {
        return new Reckoned.Reckoning(
                Question.REACH,
                ASKED,
                answer(),
                sites.stream()
                        .filter(site -> !cases(site).isEmpty())
                        .map(this::grid)
                        .toList(),
                inputs(),
                "Need = (way on the ground + height of the inlet + height of the outlet) × 1.10.",
                cases().stream().map(this::step).toList(),
                assumed(),
                "The formula is geometry; the 10 % of slack is taken for planning."
                        + (region == Region.EUROPE
                                ? " A post may be up to 20 m (65 ft) from the coach (DIN VDE 0100-708, trade press)."
                                : ""),
                "Slopes, curbs, trees and a coach that stands askew make the way longer.");
    }

    private List<Case> cases() {
        return sites.stream().flatMap(site -> cases(site).stream()).toList();
    }

    private List<Case> cases(Posts site) {
        return hookups.stream()
                .flatMap(hookup -> site.find(hookup.kind()).stream()
                        .flatMap(post -> Stream.of(Posts.Way.values()).map(way -> one(hookup, post, way))))
                .toList();
    }

    private Case one(SiteLine hookup, Posts.Post post, Posts.Way way) {
        Footprint.Place place = post.place(way, coach.length());
        return new Case(
                hookup,
                way,
                coach.free(hookup.inlet(), place),
                new RequiredLength(
                        coach.route(hookup.inlet(), place), hookup.height().orElse(USUAL_HEIGHT), post.height()));
    }

    private String answer() {
        Posts site =
                sites.stream().filter(it -> !cases(it).isEmpty()).findFirst().orElseThrow();
        return "On " + site.name() + ", "
                + Stream.of(Posts.Way.values())
                        .map(way -> way.words() + ": "
                                + verdict(cases(site).stream()
                                        .filter(it -> it.way() == way)
                                        .toList()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private String verdict(List<Case> cases) {
        List<String> said = new ArrayList<>();
        cases.stream()
                .filter(Case::isShort)
                .forEach(it -> said.add(name(it) + " short by " + RequiredLength.needed(it.missing(), first)));
        cases.stream()
                .filter(it -> it.hookup().owned().isEmpty())
                .forEach(it -> said.add(
                        name(it) + " needs " + RequiredLength.needed(it.need().length(), first)));
        if (said.isEmpty()) {
            return cases.size() == 1 ? name(cases.get(0)) + " reaches" : "all reach";
        }
        return String.join(", ", said);
    }

    private static String name(Case it) {
        return it.hookup().name();
    }

    private Grid grid(Posts site) {
        List<List<String>> rows = new ArrayList<>();
        for (Case it : cases(site)) {
            rows.add(row(it, name(it), it.hookup().owned()));
            if (it.hookup().kind() == SiteLine.Kind.POWER && it.isShort()) {
                longest()
                        .ifPresent(extension -> rows.add(row(
                                it,
                                name(it) + " and " + extension.name(),
                                it.hookup().owned().map(extension.length()::plus))));
            }
        }
        return new Grid("On " + site.name(), List.of("What", "Way in", "Needs", "On board", "Result"), rows);
    }

    private List<String> row(Case it, String name, Optional<Meters> owned) {
        return List.of(
                name,
                it.way().words(),
                RequiredLength.needed(it.need().length(), first),
                owned.map(length -> RequiredLength.owned(length, first)).orElse("not stated"),
                owned.map(length -> result(it.need(), length)).orElse("measure it first"));
    }

    private String result(RequiredLength need, Meters owned) {
        return need.metBy(owned)
                ? "reaches"
                : "short by " + RequiredLength.needed(need.length().minus(owned), first);
    }

    private Optional<CordSet> longest() {
        return extensions.stream()
                .max(Comparator.comparingDouble(it -> it.length().value()));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(
                Input.described("Length and width of the coach", print(coach.length()) + ", " + print(coach.width())));
        for (SiteLine hookup : hookups) {
            inputs.add(Input.described(hookup.inletName() + ", place", print(hookup.inlet())));
            inputs.add(hookup.height()
                    .map(height -> Input.described(hookup.inletName() + ", height", print(height)))
                    .orElseGet(() -> Input.usual(hookup.inletName() + ", height", print(USUAL_HEIGHT), Posts.SOURCE)));
            hookup.owned()
                    .ifPresent(owned -> inputs.add(
                            Input.described(hookup.name() + ", length on board", RequiredLength.owned(owned, first))));
        }
        for (Posts site : sites) {
            for (SiteLine hookup : hookups) {
                site.find(hookup.kind()).ifPresent(post -> inputs.add(input(site, hookup.kind(), post)));
            }
        }
        return inputs;
    }

    private Input input(Posts site, SiteLine.Kind kind, Posts.Post post) {
        String name = kind.word() + " on " + site.name() + ", backed in";
        String value = print(post.backedIn()) + ", "
                + (post.height().value() > 0 ? print(post.height()) + " high" : "on the ground");
        return site.usual() ? Input.usual(name, value, Posts.SOURCE) : Input.described(name, value);
    }

    /** {@code 34 ft 1 in (10.39 m) behind the front, 4 ft (1.2 m) left of the middle}. */
    private String print(Footprint.Place place) {
        String along =
                print(new Meters(Math.abs(place.back()))) + (place.back() < 0 ? " ahead of" : " behind") + " the front";
        String across = print(new Meters(Math.abs(place.right()))) + (place.right() < 0 ? " left" : " right")
                + " of the middle";
        return along + ", " + across;
    }

    private String print(Meters length) {
        return Rounding.NEAREST.print(length, first);
    }

    private String step(Case it) {
        return name(it) + ", " + it.way().words() + ": " + (it.straight() ? "straight " : "round the coach ")
                + Rounding.UP.print(it.need().route(), first) + "; with heights "
                + Rounding.UP.print(it.need().inlet(), first) + " and "
                + Rounding.UP.print(it.need().outlet(), first) + ", × 1.10 = "
                + RequiredLength.needed(it.need().length(), first) + ".";
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("Backed in, the nose is at the road. Nose first, the tail is.");
        assumed.add("The coach stands straight, in the middle of the site.");
        if (sites.stream().anyMatch(Posts::usual)) {
            assumed.add(usualSite());
        }
        if (hookups.stream().anyMatch(it -> it.kind() == SiteLine.Kind.SEWER)) {
            assumed.add("The sewer hose lies on the ground and runs downhill all the way.");
        }
        if (hookups.stream().anyMatch(it -> it.kind() == SiteLine.Kind.POWER)) {
            assumed.add(ExtensionCord.rule(extensions));
        }
        return assumed;
    }

    private String usualSite() {
        return switch (region) {
            case NORTH_AMERICA ->
                "A usual site has all posts at the left rear quarter of a coach that is backed in. "
                        + "They stand 4 ft (1.2 m) off its wall.";
            case EUROPE ->
                "A usual site has its post off the right rear corner of a coach that is backed in. "
                        + "It stands 2 m (6 ft 7 in) off its wall.";
        };
    }
}
