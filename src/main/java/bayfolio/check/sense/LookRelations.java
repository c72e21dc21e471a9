package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.model.Connection;
import bayfolio.model.Spot;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Looks, plates and states that must agree: by them a renter knows one switch from another, and ON from OFF. */
final class LookRelations {
    /** Both looks may be alike where they say that they tell nothing, and where to look instead. */
    private static final Pattern SHOWS_NOTHING =
            Pattern.compile("\\bshows? nothing\\b|\\bsprings? back\\b|\\blook at\\b");

    private static final Pattern SAYS_ON = Pattern.compile("\\b(?:to|at|on|shows|says) (?:the )?(?:word )?on\\b");
    private static final Pattern SAYS_OFF = Pattern.compile("\\b(?:to|at|on|shows|says) (?:the )?(?:word )?off\\b");

    static final List<Relation<?, ?>> ALL = List.of(
            error(
                    "on-looks-like-off",
                    Pairs.within(Switch.SHAPE, Switch.ON_LOOK, Switch.OFF_LOOK),
                    (on, off) -> !same(on, off)
                            || SHOWS_NOTHING
                                    .matcher(on.toLowerCase(Locale.ROOT))
                                    .find(),
                    "{about} looks the same when it is on and when it is off",
                    "Say what the eye sees in each; where it shows nothing, say that, and what to look at instead."),
            error(
                    "on-says-off",
                    Pairs.within(Switch.SHAPE, Switch.ON_LOOK, Switch.OFF_LOOK),
                    (on, off) -> !(says(SAYS_OFF, on) && !says(SAYS_OFF, off)),
                    "{about} is on when it looks like this: {1}",
                    "Change the two looks about, if they were."),
            error(
                    "off-says-on",
                    Pairs.within(Switch.SHAPE, Switch.OFF_LOOK, Switch.ON_LOOK),
                    (off, on) -> !(says(SAYS_ON, off) && !says(SAYS_ON, on)),
                    "{about} is off when it looks like this: {1}",
                    "Change the two looks about, if they were."),
            error(
                    "look-of-the-twin",
                    twins(),
                    (one, other) -> !look(one, Switch.ON_LOOK).equals(look(other, Switch.OFF_LOOK))
                            || look(one, Switch.ON_LOOK).isEmpty()
                            || same(
                                    look(one, Switch.ON_LOOK).get(),
                                    look(one, Switch.OFF_LOOK).orElse("")),
                    "{about} is on when it looks as its twin {2} looks when it is off",
                    "Look at both again."),
            warning(
                    "two-plates-alike",
                    alike(Switch.SHAPE, Switch.PLATE),
                    (one, other) -> tellsApart(one, other),
                    "{about} has the same plate as {2}, in one place: a renter cannot tell them apart",
                    "Say under `where` which is which: the left one, the upper one."),
            warning(
                    "two-labels-alike",
                    alike(Connection.SHAPE, Connection.LABEL),
                    (one, other) -> tellsApart(one, other),
                    "{about} has the same label as {2}, in one place: a renter cannot tell them apart",
                    "Say under `where` which is which: the left one, the upper one."),
            warning(
                    "look-alike-on-one-side-only",
                    lookAlikes(),
                    (one, other) -> other.facts().all(Connection.NOT_TO_CONFUSE).contains(one.id()),
                    "{about} is not to be confused with {2}, and that one does not say so",
                    "Say it on both: a renter may stand at either."));

    private LookRelations() {}

    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}0-9]+", " ").strip();
    }

    private static boolean says(Pattern what, String look) {
        return what.matcher(look.toLowerCase(Locale.ROOT)).find();
    }

    private static Optional<String> look(Switch it, Key<String> key) {
        return it.facts().find(key).map(LookRelations::plain);
    }

    private static Pairs<Switch, Switch> twins() {
        return records -> records.of(Switch.SHAPE)
                .flatMap(one -> one.facts().all(Switch.TWINS).stream()
                        .flatMap(id -> records.named(Switch.SHAPE, id).stream())
                        .map(other -> Pairs.Pair.of(one, one.facts().at(Switch.ON_LOOK), other)));
    }

    /** Two of a kind in one place that say the same under a key. */
    private static <T extends Thing> Pairs<T, T> alike(Shape<T> shape, Key<String> key) {
        return records -> records.of(shape)
                .filter(one -> one.facts().has(key))
                .flatMap(one -> records.of(shape)
                        .filter(other -> other.id().compareTo(one.id()) > 0
                                && other.facts()
                                        .find(key)
                                        .filter(it -> same(it, one.facts().get(key)))
                                        .isPresent()
                                && sameRoom(one, other))
                        .map(other -> Pairs.Pair.of(one, one.facts().at(key), other)));
    }

    private static boolean sameRoom(Thing one, Thing other) {
        Optional<Spot> here = one.spot();
        Optional<Spot> there = other.spot();
        return here.flatMap(Spot::in).equals(there.flatMap(Spot::in))
                && here.flatMap(Spot::side).equals(there.flatMap(Spot::side));
    }

    private static boolean tellsApart(Thing one, Thing other) {
        Optional<String> here = one.spot().flatMap(Spot::where).map(LookRelations::plain);
        Optional<String> there = other.spot().flatMap(Spot::where).map(LookRelations::plain);
        return here.isPresent() && there.isPresent() && !here.equals(there);
    }

    private static Pairs<Connection, Connection> lookAlikes() {
        // A fuel filler that looks like a water fill is an error of its own, `unmarked-fuel-fill`.
        return records -> records.of(Connection.SHAPE)
                .filter(one -> !one.roles().contains("fuel-filler"))
                .flatMap(one -> one.facts().find(Connection.NOT_TO_CONFUSE).stream()
                        .flatMap(List::stream)
                        .flatMap(id -> records.named(Connection.SHAPE, id.value()).stream()
                                .filter(other -> !other.roles().contains("fuel-filler"))
                                .map(other -> Pairs.Pair.of(one, id.at(), other))));
    }
}
