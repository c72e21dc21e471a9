package bayfolio.reckon;

import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Volts;
import bayfolio.model.Adapter;
import bayfolio.model.Coach;
import bayfolio.model.Cord;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How much voltage is left at the coach, behind its own cord and each extension. */
public final class CordVolts {
    private static final String ASKED = "How much voltage does the power cord lose?";

    private final Region region;
    private final MeasureSystem first;
    private final CordSet own;
    private final List<CordSet> extensions;
    private final List<String> unlisted;
    private final List<Outlet> outlets;
    private final List<Post> posts;

    /**
     * What the coach is plugged into, fully loaded.
     *
     * @param amps on one leg
     * @param legs of the outlet, not of the coach
     */
    private record Outlet(String name, Amps amps, int legs) {}

    /** A post and the voltage that it gives. */
    private record Post(String name, Volts volts, String source) {
        Volts behind(Volts lost) {
            return new Volts(Math.max(0, volts.value() - lost.value()));
        }
    }

    private CordVolts(Unit unit, CordSet own, List<Outlet> outlets, Volts nominal) {
        this.region = unit.region();
        this.first = region.first();
        this.own = own;
        this.extensions = CordSet.extensions(unit);
        this.unlisted = CordSet.unlisted(unit);
        this.outlets = outlets;
        this.posts = posts(region, nominal);
    }

    public static Reckoned of(Coach coach) {
        Unit unit = coach.unit();
        Optional<Supply> largest = largest(unit);
        List<String> lacking = lacking(coach);
        return lacking.isEmpty() && largest.isPresent()
                ? new CordVolts(
                                unit,
                                CordSet.own(unit).orElseThrow(),
                                outlets(unit, largest.get()),
                                largest.get().facts().get(Supply.VOLTS))
                        .reckoning()
                : new Reckoned.Lacking(Question.CORD_VOLTS, ASKED, lacking);
    }

    private static Optional<Supply> largest(Unit unit) {
        return Shore.of(unit).stream()
                .filter(supply -> supply.facts().get(Supply.AMPS).value() > 0
                        && supply.facts().get(Supply.VOLTS).value() > 0)
                .max(Comparator.comparingDouble(
                        supply -> supply.facts().get(Supply.AMPS).value()));
    }

    static List<String> lacking(Coach coach) {
        Unit unit = coach.unit();
        Optional<Cord> cord = unit.facts().find(Unit.CORD);
        if (Shore.of(unit).isEmpty() && cord.isEmpty()) {
            return List.of();
        }
        List<String> lacking = new ArrayList<>();
        if (cord.flatMap(it -> it.facts().find(Cord.LENGTH))
                .filter(it -> it.value() > 0)
                .isEmpty()) {
            lacking.add("length of the power cord");
        }
        if (cord.flatMap(it -> it.facts().find(Cord.CONDUCTOR)).isEmpty()) {
            lacking.add("conductor size of the power cord");
        } else if (cord.flatMap(it -> it.facts().find(Cord.CONDUCTOR))
                .flatMap(Conductor::of)
                .isEmpty()) {
            lacking.add("conductor size of the power cord, 16 AWG (1.31 mm²) or thicker");
        }
        if (largest(unit).isEmpty()) {
            lacking.add("shore power with its volts and amps");
        }
        return lacking;
    }

    /** From the largest down. An outlet larger than the coach gives no more than the coach's main breaker lets in. */
    private static List<Outlet> outlets(Unit unit, Supply largest) {
        Amps most = largest.facts().get(Supply.AMPS);
        return Stream.concat(
                        Shore.of(unit).stream()
                                .map(supply -> new Outlet(
                                        supply.name(),
                                        supply.facts().get(Supply.AMPS),
                                        supply.facts().get(Supply.LEGS))),
                        Shore.adapters(unit).stream()
                                .filter(adapter ->
                                        !adapter.facts().get(Adapter.FROM).exceeds(most))
                                .map(adapter -> new Outlet(
                                        adapter.name(), adapter.facts().get(Adapter.FROM), 1)))
                .filter(outlet -> outlet.amps().value() > 0)
                .sorted(Comparator.comparingDouble(
                                (Outlet outlet) -> outlet.amps().value())
                        .reversed())
                .toList();
    }

    private static List<Post> posts(Region region, Volts nominal) {
        String share = region == Region.EUROPE
                ? "EN 50160, 10 % below, as electricians quote it"
                : "120 V service band, 5 % below; a reference page";
        List<Post> posts = new ArrayList<>();
        posts.add(new Post("At " + Rounding.DOWN.print(nominal.value(), 0) + " V", nominal, ""));
        if (region == Region.NORTH_AMERICA) {
            posts.add(post(nominal, 0.95, share));
            posts.add(post(nominal, 0.90, "equipment is built for 10 % below; a reference page"));
        } else {
            posts.add(post(nominal, 0.90, share));
        }
        return posts;
    }

    private static Post post(Volts nominal, double part, String source) {
        Volts volts = new Volts(nominal.value() * part);
        return new Post("At " + Rounding.DOWN.print(volts.value(), 0) + " V", volts, source);
    }

    private Reckoned reckoning() {
        Outlet largest = outlets.get(0);
        Volts lost = alone().drop(largest.amps());
        Post nominal = posts.get(0);
        Post weak = posts.get(posts.size() - 1);
        List<Grid> grids = new ArrayList<>();
        grids.add(grid("The coach's own cord, " + printed(own), Optional.empty()));
        extensions.forEach(extension -> grids.add(
                grid("With " + extension.name() + ", " + printed(extension) + ", added", Optional.of(extension))));
        return new Reckoned.Reckoning(
                Question.CORD_VOLTS,
                ASKED,
                "At " + current(largest.amps()) + " the cord loses up to " + Rounding.UP.print(lost) + ". "
                        + leaves(nominal, lost) + " " + leaves(weak, lost),
                grids,
                inputs(),
                "Lost = 2 × current × length × resistance of one conductor; cords in a row add up.",
                steps(),
                assumed(),
                "Textbook formula. Resistances: "
                        + String.join(
                                "; ",
                                leads().stream()
                                        .map(lead -> lead.conductor().source())
                                        .distinct()
                                        .toList())
                        + "." + limits(),
                "A worn or loose plug loses more than the whole cord. Read the meter, if one is there.");
    }

    private String limits() {
        return region == Region.EUROPE
                ? " BS 7671 advises at most 5 % from the supply to the device (reference page)."
                : " The NEC advises at most 3 % in one circuit and 5 % in all (reference page).";
    }

    private List<CordSet> leads() {
        return Stream.concat(Stream.of(own), extensions.stream()).toList();
    }

    private Run alone() {
        return Run.of(own.stretch());
    }

    private Run run(Optional<CordSet> extension) {
        return extension.map(it -> Run.of(own.stretch(), it.stretch())).orElseGet(this::alone);
    }

    private Grid grid(String title, Optional<CordSet> extension) {
        List<String> head = new ArrayList<>(List.of("Plugged in by", "Full load", "Lost"));
        posts.forEach(post -> head.add(post.name()));
        return new Grid(
                title,
                head,
                outlets.stream().map(outlet -> row(outlet, extension)).toList());
    }

    private List<String> row(Outlet outlet, Optional<CordSet> extension) {
        Volts lost = run(extension).drop(outlet.amps());
        List<String> row = new ArrayList<>();
        row.add(outlet.name());
        row.add(current(outlet.amps()) + (outlet.legs() > 1 ? " on one leg alone" : ""));
        if (extension.filter(it -> !it.carries(outlet.amps(), region)).isPresent()) {
            row.add("too thin, do not use");
            posts.forEach(post -> row.add("−"));
            return row;
        }
        row.add(Rounding.UP.print(lost) + ", " + percent(lost));
        posts.forEach(post -> row.add(left(post, lost)));
        return row;
    }

    private String percent(Volts lost) {
        return Rounding.UP.print(100 * lost.value() / posts.get(0).volts().value(), 1) + " %";
    }

    private static String leaves(Post post, Volts lost) {
        return "A post of " + shown(post) + " leaves " + left(post, lost) + ".";
    }

    private static String left(Post post, Volts lost) {
        return Rounding.DOWN.print(post.behind(lost));
    }

    private static String shown(Post post) {
        return Rounding.DOWN.print(post.volts().value(), 0) + " V";
    }

    private static String current(Amps amps) {
        return Rounding.UP.print(amps.value(), amps.value() == Math.rint(amps.value()) ? 0 : 1) + " A";
    }

    private String printed(CordSet lead) {
        return Rounding.NEAREST.print(lead.length(), first) + " of " + size(lead);
    }

    private String size(CordSet lead) {
        return lead.conductor().is(lead.stated())
                ? lead.conductor().size()
                : lead.stated().in(first);
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (CordSet lead : leads()) {
            inputs.add(Input.described(lead.name() + ", length", Rounding.NEAREST.print(lead.length(), first)));
            inputs.add(Input.described(lead.name() + ", conductor", size(lead)));
            inputs.add(Input.usual(
                    lead.name() + ", resistance of one conductor",
                    ohms(lead),
                    lead.conductor().source()
                            + (lead.conductor().celsius() < Conductor.WARM ? ", made warm: + 0.393 % a kelvin" : "")));
        }
        for (Outlet outlet : outlets) {
            inputs.add(Input.described(outlet.name(), current(outlet.amps())));
        }
        inputs.add(Input.described("Voltage of the supply", shown(posts.get(0))));
        posts.stream()
                .skip(1)
                .forEach(post -> inputs.add(Input.usual("Voltage of a weak post", shown(post), post.source())));
        return inputs;
    }

    private String ohms(CordSet lead) {
        String us = ohmsPerThousandFeet(lead);
        String metric = ohmsPerKilometer(lead);
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }

    private static String ohmsPerThousandFeet(CordSet lead) {
        return Rounding.UP.print(lead.conductor().warm() * 304.8, 3) + " ohm a 1,000 ft";
    }

    private static String ohmsPerKilometer(CordSet lead) {
        return Rounding.UP.print(lead.conductor().warm() * 1000, 3) + " ohm a km";
    }

    private List<String> steps() {
        Outlet largest = outlets.get(0);
        List<String> steps = new ArrayList<>();
        steps.add("The cord alone: 2 × " + current(largest.amps()) + " × " + product(own) + " = "
                + Rounding.UP.print(alone().drop(largest.amps()).value(), 2) + " V.");
        if (largest.legs() > 1) {
            steps.add("The same current on both legs: half of that on each, "
                    + Rounding.UP.print(alone().perLeg(largest.amps()).value(), 2)
                    + " V. The table shows the worse.");
        }
        for (CordSet extension : extensions) {
            steps.add(extension.name() + " adds 2 × " + current(largest.amps()) + " × " + product(extension) + " = "
                    + Rounding.UP.print(
                            Run.of(extension.stretch()).drop(largest.amps()).value(), 2) + " V.");
        }
        return steps;
    }

    /** In the measures of the region alone: a product of two pairs cannot be read. */
    private String product(CordSet lead) {
        return switch (first) {
            case US -> Rounding.NEAREST.print(lead.length().feet(), 1) + " ft × " + ohmsPerThousandFeet(lead);
            case METRIC -> Rounding.NEAREST.print(lead.length().value(), 1) + " m × " + ohmsPerKilometer(lead);
        };
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("All that the outlet can give flows through the cord, at a weak post too.");
        assumed.add("The cord is warm from its load. A cold one loses less.");
        assumed.add("Plugs are clean and tight. Adapters are short and lose nothing.");
        if (outlets.get(0).legs() > 1) {
            assumed.add("One leg carries all, which is the worst. Equal legs lose half.");
        }
        for (CordSet lead : leads()) {
            if (!lead.conductor().is(lead.stated())) {
                assumed.add(lead.name() + ": no table has " + size(lead) + ". The next smaller size was taken, "
                        + lead.conductor().size() + ".");
            }
        }
        assumed.add(ExtensionCord.rule(extensions));
        unlisted.forEach(name -> assumed.add(name + " is thinner than any size in the tables. Do not use it."));
        if (region == Region.EUROPE) {
            tooLong().ifPresent(assumed::add);
        }
        return assumed;
    }

    private Optional<String> tooLong() {
        Meters longest = new Meters(own.length().value()
                + extensions.stream()
                        .mapToDouble(it -> it.length().value())
                        .max()
                        .orElse(0));
        return longest.exceeds(CordSet.LONGEST_IN_EUROPE)
                ? Optional.of("Camp sites in Europe allow a cord of 25 m (82 ft) at most "
                        + "(DIN VDE 0100-708, trade press). This one would be longer.")
                : Optional.empty();
    }
}
