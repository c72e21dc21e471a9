package bayfolio.document;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.model.Notice;
import bayfolio.model.Thing;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * What a part of a handbook came from: things and facts of the description, and texts. Nothing where the program made it
 * alone, as a list of pages.
 *
 * @param sources in the order of their making
 */
public record From(List<Source> sources) {
    public static final From PROGRAM = new From(List.of());

    /** What kind of source it is. */
    public enum Sort {
        THING,
        FACT,
        TEXT
    }

    /**
     * @param name as in the description: {@code switch/pump-switch}, {@code switch/pump-switch/plate}; of a text its form
     *     and id
     * @param forStaff whether renters never hear of it
     * @param at where it is written; not part of the normal form, since a blank line moves it
     */
    public record Source(Sort sort, String name, boolean forStaff, Place at) {}

    public From {
        sources = List.copyOf(sources);
    }

    public static From thing(Thing thing) {
        return new From(List.of(new Source(Sort.THING, name(thing), thing.forStaff(), thing.at())));
    }

    /** A fact that a record states. */
    public static From fact(Described record, Key<?> key) {
        return new From(List.of(new Source(
                Sort.FACT,
                name(record) + "/" + key.name(),
                record.forStaff() || key.forStaff(),
                record.facts().at(key))));
    }

    /** @param form of the text: {@code procedure} */
    public static From text(String form, String id, boolean forStaff, Place at) {
        return new From(List.of(new Source(Sort.TEXT, form + "/" + id, forStaff, at)));
    }

    /** Whether a renter may read what came of it. */
    public Optional<Source> secret() {
        return sources.stream().filter(Source::forStaff).findFirst();
    }

    private static String name(Described record) {
        String shape = record.facts().shape().name();
        return record instanceof Thing thing
                ? thing.kind() + "/" + thing.id()
                : record instanceof Notice notice ? shape + "/" + notice.id() : shape;
    }
}
