package bayfolio.reckon.cord;

import bayfolio.measure.Amps;
import bayfolio.measure.Meters;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.model.Adapter;
import bayfolio.model.Coach;
import bayfolio.model.Cord;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import bayfolio.reckon.power.Shore;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much voltage is left at the coach, behind its own cord and each extension.
 *
 * @param unlisted names of extensions that are thinner than any size in the tables
 * @param outlets from the largest down
 * @param posts at its nominal voltage, then ever weaker ones
 */
public record CordVolts(
        Region region,
        CordSet own,
        List<CordSet> extensions,
        List<String> unlisted,
        List<Outlet> outlets,
        List<Post> posts) {
    /**
     * What the coach is plugged into, fully loaded.
     *
     * @param amps on one leg
     * @param legs of the outlet, not of the coach
     */
    public record Outlet(String name, Given<Amps> amps, int legs) {}

    /** A post and the voltage that it gives. */
    public record Post(Given<Volts> volts) {
        public Volts behind(Volts lost) {
            return new Volts(Math.max(0, volts.value().value() - lost.value()));
        }
    }

    public CordVolts {
        extensions = List.copyOf(extensions);
        unlisted = List.copyOf(unlisted);
        outlets = List.copyOf(outlets);
        posts = List.copyOf(posts);
    }

    public static Optional<CordVolts> of(Coach coach) {
        Unit unit = coach.unit();
        return lacking(coach).isEmpty()
                ? largest(unit)
                        .flatMap(largest -> CordSet.own(unit)
                                .map(own -> new CordVolts(
                                        unit.region(),
                                        own,
                                        CordSet.extensions(unit),
                                        CordSet.unlisted(unit),
                                        outlets(unit, largest),
                                        posts(unit.region(), Given.stated(largest.facts(), Supply.VOLTS)))))
                : Optional.empty();
    }

    private static Optional<Supply> largest(Unit unit) {
        return Shore.of(unit).stream()
                .filter(supply -> supply.facts().get(Supply.AMPS).value() > 0
                        && supply.facts().get(Supply.VOLTS).value() > 0)
                .max(Comparator.comparingDouble(
                        supply -> supply.facts().get(Supply.AMPS).value()));
    }

    /** Nothing where the coach takes no shore power. */
    public static List<Missing> lacking(Coach coach) {
        Unit unit = coach.unit();
        Optional<Cord> cord = unit.facts().find(Unit.CORD);
        if (Shore.of(unit).isEmpty() && cord.isEmpty()) {
            return List.of();
        }
        List<Missing> lacking = new ArrayList<>();
        if (cord.flatMap(it -> it.facts().find(Cord.LENGTH))
                .filter(it -> it.value() > 0)
                .isEmpty()) {
            lacking.add(new Missing("cord-length"));
        }
        if (cord.flatMap(it -> it.facts().find(Cord.CONDUCTOR)).isEmpty()) {
            lacking.add(new Missing("cord-conductor"));
        } else if (cord.flatMap(it -> it.facts().find(Cord.CONDUCTOR))
                .flatMap(Conductor::of)
                .isEmpty()) {
            lacking.add(new Missing("cord-conductor-listed"));
        }
        if (largest(unit).isEmpty()) {
            lacking.add(new Missing("shore-power"));
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
                                        Given.stated(supply.facts(), Supply.AMPS),
                                        supply.facts().get(Supply.LEGS))),
                        Shore.adapters(unit).stream()
                                .filter(adapter ->
                                        !adapter.facts().get(Adapter.FROM).exceeds(most))
                                .map(adapter ->
                                        new Outlet(adapter.name(), Given.stated(adapter.facts(), Adapter.FROM), 1)))
                .filter(outlet -> outlet.amps().value().value() > 0)
                .sorted(Comparator.comparingDouble(
                                (Outlet outlet) -> outlet.amps().value().value())
                        .reversed())
                .toList();
    }

    private static List<Post> posts(Region region, Given<Volts> nominal) {
        return Stream.concat(Stream.of(new Post(nominal)), bands(region).map(figure -> weaker(nominal.value(), figure)))
                .toList();
    }

    private static Stream<String> bands(Region region) {
        return switch (region) {
            case NORTH_AMERICA -> Stream.of("post.service-band", "post.equipment");
            case EUROPE -> Stream.of("post.europe");
            case OCEANIA -> Stream.of(); // no band was looked up
        };
    }

    private static Post weaker(Volts nominal, String figure) {
        Published<Share> part = CordSet.TABLE.quantity(figure, Share.SCALE);
        return new Post(Given.usual(part.map(it -> new Volts(nominal.value() * it.value()))));
    }

    /** The coach's own cord, and all that may be added. */
    public List<CordSet> leads() {
        return Stream.concat(Stream.of(own), extensions.stream()).toList();
    }

    public Run alone() {
        return Run.of(own.stretch());
    }

    public Run with(Optional<CordSet> extension) {
        return extension.map(it -> Run.of(own.stretch(), it.stretch())).orElseGet(this::alone);
    }

    /** The cord with the longest extension. */
    public Meters longest() {
        return new Meters(own.length().value().value()
                + extensions.stream()
                        .mapToDouble(it -> it.length().value().value())
                        .max()
                        .orElse(0));
    }
}
