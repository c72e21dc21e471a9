package bayfolio.model;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Described;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Quantity;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Facts of a coach in words, for its people: measures in their own system first, places with left
 * and right.
 */
public record Wording(Coach coach, Catalog words) {
    /** A fact as a reader reads it: a measure as its writer put it, with what it is in the other system. */
    public <T> String of(Type<T> type, Located<?> fact) {
        return fact.value() instanceof Quantity quantity
                        && !fact.written().isEmpty()
                        && type instanceof Type.Measured<?> measured
                        && !measured.roundedUp()
                ? shown(quantity.asWritten(fact.written()))
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
                return shown(measured.roundedUp() ? clearance((Meters) value) : ((Quantity) value).both(first()));
            }

            @Override
            public <E> String choice(Type.Choice<E> choice) {
                return words.say(key((Enum<?>) value));
            }

            @Override
            public <E> String listed(Type.Listed<E> listed) {
                return device((Device) value);
            }

            @Override
            public String yesNo(Type.YesNo yesNo) {
                return words.say(value.equals(true) ? "yes" : "no");
            }

            @Override
            public String whole(Type.Whole whole) {
                return value.toString();
            }

            @Override
            public String day(Type.Day day) {
                return Wording.this.day((LocalDate) value);
            }

            @Override
            public String reference(Type.Reference reference) {
                return coach.referred(reference, value.toString())
                        .map(Thing::name)
                        .orElse(value.toString());
            }

            @Override
            public String role(Type.Role role) {
                return value.toString().replace('-', ' ');
            }

            @Override
            public <E> String list(Type.ListOf<E> list) {
                return words.row(((List<?>) value)
                        .stream()
                                .map(element -> of(list.element(), ((Located<?>) element).value()))
                                .toList());
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

    /** A day with its month in words. */
    public String day(LocalDate day) {
        return words.day(day);
    }

    /** Of the word for one of a list of choices: {@code choice.tank-contents.fresh}. */
    public static String key(Enum<?> choice) {
        Class<?> type = choice.getDeclaringClass();
        Class<?> of = type.getEnclosingClass();
        String name = of == null ? type.getSimpleName() : of.getSimpleName() + type.getSimpleName();
        return "choice." + name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT) + "."
                + Type.word(choice);
    }

    /** What an appliance is: one of the fleet's own is called as its file says. */
    public String device(Device device) {
        return words.find("choice.appliance-what." + device.word()).orElse(device.name());
    }

    private Amount clearance(Meters length) {
        return Amount.both(length.roundedUp(first()), length.roundedUp(first().other()));
    }

    /** A number and its unit stay on one line; a line may break before the brackets. */
    private String shown(Amount quantity) {
        return words.amount(quantity).replace(' ', '\u00A0').replace("\u00A0(", " (");
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
                                        : spot.side().map(this::side),
                                coach.around(thing).map(this::in),
                                spot.where())
                        .flatMap(Optional::stream)
                        .reduce(this::then)
                        .orElse(""))
                .orElse("");
    }

    /** What a writer has said again of the side, or of the bay, is said once. */
    private String then(String place, String where) {
        return where.toLowerCase(Locale.ROOT).startsWith(place.toLowerCase(Locale.ROOT))
                ? where
                : words.row(List.of(place, where));
    }

    private String in(Compartment compartment) {
        return words.row(Stream.concat(
                        compartment.spot().flatMap(Spot::side).map(this::side).stream(), Stream.of(compartment.name()))
                .toList());
    }

    private String side(Side side) {
        return words.say("place." + Type.word(side));
    }
}
