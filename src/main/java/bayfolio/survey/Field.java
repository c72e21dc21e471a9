package bayfolio.survey;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Described;
import bayfolio.fact.Phrase;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.model.Coach;
import bayfolio.model.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a fact is entered in.
 *
 * @param kind of the field
 * @param example of what may be written; empty where the field shows it
 * @param choices empty for a field in which one writes
 */
record Field(Kind kind, String example, List<Choice> choices) {
    /** As forms have them. */
    enum Kind {
        LINE,
        LINES,
        WHOLE,
        DAY,
        CHOICE
    }

    /** @param written as it stands in the file */
    record Choice(String written, String name) {}

    /** Whether a fact of this type is a single value. */
    static boolean isOne(Type<?> type) {
        return !(type instanceof Type.ListOf<?> || type instanceof Type.Nested<?> || type instanceof Type.Role);
    }

    static Field of(Type<?> type, Coach coach, Catalog words) {
        return type.accept(new Type.Visitor<Field>() {
            @Override
            public Field text(Type.Text text) {
                boolean several = text.phrase() == Phrase.SENTENCES;
                return new Field(several ? Kind.LINES : Kind.LINE, "", List.of());
            }

            @Override
            public <Q extends Quantity> Field measured(Type.Measured<Q> measured) {
                return new Field(Kind.LINE, measured.scale().example(), List.of());
            }

            @Override
            public <E> Field choice(Type.Choice<E> choice) {
                List<Choice> choices = new ArrayList<>();
                choice.words()
                        .forEach((written, value) -> choices.add(new Choice(
                                written,
                                value instanceof Enum<?> it
                                        ? words.find(Wording.key(it)).orElse(written)
                                        : written)));
                return new Field(Kind.CHOICE, "", choices);
            }

            @Override
            public <E> Field listed(Type.Listed<E> listed) {
                Wording wording = new Wording(coach, words);
                return new Field(
                        Kind.CHOICE,
                        "",
                        coach.unit().equipment().devices().values().stream()
                                .map(device -> new Choice(device.word(), wording.device(device)))
                                .toList());
            }

            @Override
            public Field yesNo(Type.YesNo yesNo) {
                return new Field(
                        Kind.CHOICE,
                        "",
                        Stream.of("yes", "no")
                                .map(each -> new Choice(each, words.say(each)))
                                .toList());
            }

            @Override
            public Field whole(Type.Whole whole) {
                return new Field(Kind.WHOLE, whole.least() + "–" + whole.most(), List.of());
            }

            @Override
            public Field day(Type.Day day) {
                return new Field(Kind.DAY, "", List.of());
            }

            @Override
            public Field reference(Type.Reference reference) {
                return new Field(
                        Kind.CHOICE,
                        "",
                        coach.unit()
                                .things()
                                .filter(thing -> reference.kinds().contains(thing.kind()))
                                .map(thing -> new Choice(
                                        thing.id(),
                                        thing.facts()
                                                .ifRead(thing.identity().name())
                                                .map(it -> it.value())
                                                .orElse(thing.id())))
                                .toList());
            }

            @Override
            public Field role(Type.Role role) {
                throw new IllegalArgumentException("a role is chosen at a desk");
            }

            @Override
            public <E> Field list(Type.ListOf<E> list) {
                throw new IllegalArgumentException("a list is no single value");
            }

            @Override
            public <E extends Described> Field record(Type.Nested<E> nested) {
                throw new IllegalArgumentException("a " + nested.shape().name() + " is no single value");
            }
        });
    }
}
