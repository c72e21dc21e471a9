package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Type;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Quantity;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Facts of a coach in words, for its people: measures in their own system first, places with left
 * and right.
 */
public record Wording(Coach coach) {
    private static final DateTimeFormatter AMERICAN = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);
    private static final DateTimeFormatter EUROPEAN = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

    /** A fact as a reader reads it: a measure as its writer put it, with what it is in the other system. */
    public <T> String of(Type<T> type, Located<?> fact) {
        return fact.value() instanceof Quantity quantity
                        && !fact.written().isEmpty()
                        && type instanceof Type.Measured<?> measured
                        && !measured.roundedUp()
                ? unbroken(quantity.asWritten(fact.written()))
                : of(type, fact.value());
    }

    /** One value as a reader reads it; a list is joined with commas. */
    public <T> String of(Type<T> type, Object value) {
        return type.accept(new Type.Visitor<String>() {
            @Override
            public String text(Type.Text text) {
                return value.toString().strip();
            }

            @Override
            public <Q extends Quantity> String measured(Type.Measured<Q> measured) {
                return unbroken(measured.roundedUp() ? clearance((Meters) value) : ((Quantity) value).both(first()));
            }

            @Override
            public <E> String choice(Type.Choice<E> choice) {
                return choice.words().entrySet().stream()
                        .filter(entry -> entry.getValue().equals(value))
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElseThrow()
                        .replace('-', ' ');
            }

            @Override
            public String yesNo(Type.YesNo yesNo) {
                return value.equals(true) ? "yes" : "no";
            }

            @Override
            public String whole(Type.Whole whole) {
                return value.toString();
            }

            @Override
            public String day(Type.Day day) {
                return ((LocalDate) value).format(coach.unit().region() == Region.EUROPE ? EUROPEAN : AMERICAN);
            }

            @Override
            public String reference(Type.Reference reference) {
                return referred(reference, value.toString()).map(Thing::name).orElse(value.toString());
            }

            @Override
            public String role(Type.Role role) {
                return value.toString().replace('-', ' ');
            }

            @Override
            public <E> String list(Type.ListOf<E> list) {
                return ((List<?>) value)
                        .stream()
                                .map(element -> of(list.element(), ((Located<?>) element).value()))
                                .collect(Collectors.joining(", "));
            }

            @Override
            public <E extends Described> String record(Type.Nested<E> nested) {
                throw new IllegalArgumentException("a " + nested.shape().name() + " is a table, not a word");
            }
        });
    }

    private MeasureSystem first() {
        return coach.unit().region().first();
    }

    private String clearance(Meters length) {
        return length.roundedUp(first()) + " (" + length.roundedUp(first().other()) + ")";
    }

    /** A number and its unit stay on one line; a line may break before the brackets. */
    private static String unbroken(String quantity) {
        return quantity.replace(' ', '\u00A0').replace("\u00A0(", " (");
    }

    /** The thing that a reference in the description names. */
    public Optional<Thing> referred(Type.Reference reference, String id) {
        return reference.kinds().stream()
                .flatMap(kind -> coach.thing(kind, id).stream())
                .findFirst();
    }

    /**
     * Where a thing is: {@code left side, L3 Service bay, behind the rear axle}; empty where
     * nothing is said of it.
     */
    public String place(Thing thing) {
        return thing.spot()
                .map(spot -> Stream.of(
                                coach.around(thing).isPresent()
                                        ? Optional.<String>empty()
                                        : spot.side().map(Wording::side),
                                coach.around(thing).map(around -> sideOf(around) + around.name()),
                                spot.where())
                        .flatMap(Optional::stream)
                        .reduce(Wording::then)
                        .orElse(""))
                .orElse("");
    }

    /** What a writer has said again of the side, or of the bay, is said once. */
    private static String then(String place, String where) {
        return where.toLowerCase(Locale.ROOT).startsWith(place.toLowerCase(Locale.ROOT)) ? where : place + ", " + where;
    }

    private static String sideOf(Compartment compartment) {
        return compartment
                .spot()
                .flatMap(Spot::side)
                .map(side -> side(side) + ", ")
                .orElse("");
    }

    private static String side(Side side) {
        return switch (side) {
            case LEFT -> "left side";
            case RIGHT -> "right side";
            case FRONT -> "front";
            case REAR -> "rear";
            case ROOF -> "roof";
            case UNDERFLOOR -> "under the floor";
            case INSIDE -> "inside";
        };
    }
}
