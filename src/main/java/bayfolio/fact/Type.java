package bayfolio.fact;

import bayfolio.measure.Meters;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What may stand behind a key, without regard to the format that it is written in.
 *
 * @param <T> the value that comes of it
 */
public sealed interface Type<T> {

    /**
     * Asked by everything that treats each type in its own way; no default, so that a new type is
     * not forgotten.
     */
    interface Visitor<R> {
        R text(Text type);

        <Q extends Quantity> R measured(Measured<Q> type);

        <E> R choice(Choice<E> type);

        <E> R listed(Listed<E> type);

        R yesNo(YesNo type);

        R whole(Whole type);

        R day(Day type);

        R reference(Reference type);

        R role(Role type);

        <E> R list(ListOf<E> type);

        <E extends Described> R record(Nested<E> type);
    }

    <R> R accept(Visitor<R> visitor);

    Type<String> TEXT = words(Phrase.SENTENCES);
    Type<String> NAME = words(Phrase.NAME);
    Type<String> PLACE = words(Phrase.PLACE);
    Type<String> ACT = words(Phrase.ACT);
    Type<String> LOOK = words(Phrase.LOOK);
    Type<String> STATE = words(Phrase.STATE);
    Type<String> FIGURE = words(Phrase.FIGURE);
    Type<String> PLATE = words(Phrase.PLATE);
    Type<String> ID = new Text(
            "id", "^[a-z0-9]+(-[a-z0-9]+)*$", "small letters, digits and single hyphens, such as `gray-valve`");
    Type<String> LANGUAGE = new Text("language", "^[a-z]{2}(-[A-Z]{2})?$", "a language such as `en-US`");
    Type<String> PHONE =
            new Text("phone number", "^[+(]?[0-9][0-9 ()+-]{2,24}$", "a phone number such as `+1 555-0100`");
    Type<String> EXPONENT = new Text("exponent", "^1(\\.[0-9]+)?$", "a figure from 1 to less than 2, such as `1.25`");
    Type<String> WEB_ADDRESS = new Text(
            "web address",
            "^https://([a-z0-9]+(-+[a-z0-9]+)*\\.)+[a-z]{2,}(/[A-Za-z0-9._~/-]*)?$",
            "an address that begins with `https://`");
    Type<String> FILE_NAME =
            new Text("file name", "^[A-Za-z0-9][A-Za-z0-9_-]*(\\.[A-Za-z0-9]+)+$", "a file name without folders");
    Type<Boolean> YES_NO = new YesNo();
    Type<LocalDate> DAY = new Day();

    private static Type<String> words(Phrase phrase) {
        return new Text("text", "\\S", "words", phrase);
    }

    /** Whether it is words of a writer. */
    static boolean ofWords(Type<?> type) {
        return type instanceof Text text && text.phrase() != Phrase.NONE;
    }

    static Type<Integer> whole(int least, int most) {
        return new Whole(least, most);
    }

    static <Q extends Quantity> Type<Q> measured(Scale<Q> scale) {
        return new Measured<>(scale, false);
    }

    /** A length that must pass somewhere: printed so that it is never too small. */
    static Type<Meters> clearance() {
        return new Measured<>(Meters.SCALE, true);
    }

    /** The words of an enum, as written: {@code NORTH_AMERICA} is {@code north-america}. */
    static <E extends Enum<E>> Type<E> choice(Class<E> words) {
        return new Choice<>(Stream.of(words.getEnumConstants())
                .collect(Collectors.toMap(Type::word, Function.identity(), (a, b) -> a, java.util.LinkedHashMap::new)));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** An id of this coach, of one of the kinds named. */
    static Reference reference(String... kinds) {
        return new Reference(new java.util.TreeSet<>(List.of(kinds)));
    }

    static Type<String> role(String kind) {
        return new Role(Optional.of(kind));
    }

    /** A role of whatever kind of thing. */
    static Type<String> anyRole() {
        return new Role(Optional.empty());
    }

    static <E> Type<List<Located<E>>> list(Type<E> element) {
        return new ListOf<>(element, false);
    }

    /** Records that are written as cues of a WebVTT file, whose name stands behind the key. */
    static <E extends Described> Type<List<Located<E>>> cues(Shape<E> shape) {
        return new ListOf<>(nested(shape), true);
    }

    static <E extends Described> Type<E> nested(Shape<E> shape) {
        return new Nested<>(shape);
    }

    /**
     * One or more words.
     *
     * @param pattern must be found in the text (ECMA-262 and Java agree on it)
     * @param taken what the pattern takes, in words
     */
    record Text(String what, String pattern, String taken, Phrase phrase) implements Type<String> {
        public Text(String what, String pattern, String taken) {
            this(what, pattern, taken, Phrase.NONE);
        }

        /** Whether a bare number stands for its digits: a room, a size, a year on a plate, an exponent. */
        public boolean takesNumbers() {
            return ofWords(this) || equals(EXPONENT);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }

    /**
     * @param roundedUp whether it is printed no smaller than it is
     */
    record Measured<Q extends Quantity>(Scale<Q> scale, boolean roundedUp) implements Type<Q> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.measured(this);
        }
    }

    record Choice<E>(Map<String, E> words) implements Type<E> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.choice(this);
        }
    }

    /**
     * One of a list that files of the fleet declare.
     *
     * @param list what is listed, in the plural
     * @param bare what stands for one where nobody knows the list
     */
    record Listed<E>(String list, Function<String, E> bare) implements Type<E> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.listed(this);
        }
    }

    record YesNo() implements Type<Boolean> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.yesNo(this);
        }
    }

    record Whole(int least, int most) implements Type<Integer> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.whole(this);
        }
    }

    record Day() implements Type<LocalDate> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.day(this);
        }
    }

    record Reference(Set<String> kinds) implements Type<String> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reference(this);
        }
    }

    record Role(Optional<String> kind) implements Type<String> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.role(this);
        }
    }

    /** @param cues whether it is written in a file of its own */
    record ListOf<E>(Type<E> element, boolean cues) implements Type<List<Located<E>>> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.list(this);
        }
    }

    record Nested<E extends Described>(Shape<E> shape) implements Type<E> {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.record(this);
        }
    }
}
