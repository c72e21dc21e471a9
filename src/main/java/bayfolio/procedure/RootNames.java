package bayfolio.procedure;

import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.model.Compartment;
import bayfolio.model.Country;
import bayfolio.model.Kinds;
import bayfolio.model.Phone;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Wording;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The names that every procedure may use: {@code unit}, {@code fleet} and {@code country} with their facts, {@code
 * phone}, {@code has} with the features, {@code count}, {@code all} with every thing of a kind, and
 * each kind with its roles, and its ids; {@code reckoned}, and what other scripts there are for it.
 *
 * @param staff whether staff alone read the text; to all others, what is for staff has no name
 * @param own whether the text is of this coach alone: in others things are called by their roles only
 * @param scripts {@code procedure} and {@code trouble}, see {@link ScriptNames}; {@code turn} and {@code turn-back},
 *     see {@link TurnNames}; {@code acts}, see {@link ActNames}
 */
record RootNames(Wording wording, boolean staff, boolean own, Map<String, Names> scripts) implements Names {
    static final List<String> ROOTS = Stream.concat(
                    Stream.of(
                            "unit",
                            "fleet",
                            "country",
                            "phone",
                            "has",
                            "count",
                            "all",
                            "any",
                            "reckoned",
                            "procedure",
                            "trouble",
                            "turn",
                            "turn-back",
                            "acts"),
                    Kinds.names().stream())
            .toList();

    /** Sides by the names of the number of their doors. */
    private static final Map<String, Side> DOORS =
            Stream.of(Side.values()).collect(Collectors.toMap(side -> "compartments-" + Type.word(side), side -> side));

    @Override
    public Value find(String name) {
        return switch (name) {
            case "unit" ->
                new Value.Inner(new RecordNames(wording, wording.coach().unit().facts(), "this coach", staff));
            case "fleet" ->
                new Value.Inner(
                        new RecordNames(wording, wording.coach().fleet().facts().facts(), "the fleet", staff));
            case "country" -> new Value.Inner(new RecordNames(wording, country(), "the country", staff));
            case "phone" -> new Value.Inner(phones());
            case "has" -> new Value.Inner(new FeatureNames(wording.coach(), staff));
            case "count" -> new Value.Inner(Names.of(DOORS.keySet(), this::doors));
            case "reckoned" -> new Value.Inner(new ReckonedNames(wording));
            case "procedure", "trouble", "turn", "turn-back", "acts" ->
                new Value.Inner(scripts.getOrDefault(name, Names.of(Map.of())));
            // Whether the coach has a thing of that id or role, for a text that stands there once however many there
            // are.
            case "any" ->
                new Value.Inner(Names.of(
                        Kinds.names(),
                        kind -> new Value.Inner(new AnyNames(new KindNames(wording, kind, staff, own)))));
            case "all" -> new Value.Inner(Names.of(Kinds.names(), this::everything));
            default ->
                Kinds.named(name)
                        .<Value>map(kind -> new Value.Inner(new KindNames(wording, name, staff, own)))
                        .orElse(new Value.Unknown());
        };
    }

    @Override
    public Collection<String> known() {
        return ROOTS;
    }

    /** What a country that is not on the list says, nobody knows; that is told where it is named. */
    private Facts country() {
        return wording.coach()
                .country()
                .map(Country::facts)
                .orElseGet(() -> Facts.unread(
                        Country.SHAPE, wording.coach().unit().facts().at()));
    }

    private Names phones() {
        return new Names() {
            @Override
            public Value find(String id) {
                return wording.coach()
                        .fleet()
                        .phone(id)
                        .<Value>map(phone -> new Value.Text(phone.number()))
                        .orElse(new Value.Unknown());
            }

            @Override
            public Collection<String> known() {
                return wording.coach().fleet().phones().stream().map(Phone::id).toList();
            }
        };
    }

    /** How many doors of compartments there are on a side; a compartment that goes right through has two. */
    private Value doors(String word) {
        Side side = DOORS.get(word);
        long doors = wording.coach().unit().compartments().stream()
                .flatMap(compartment -> Stream.concat(
                        compartment.spot().flatMap(Spot::side).stream(),
                        compartment.facts().find(Compartment.SECOND_DOOR).stream()))
                .filter(it -> it == side)
                .count();
        return new Value.Text(Long.toString(doors));
    }

    /** Every thing of a kind that the reader may know, in walking order. */
    private Value everything(String kind) {
        return new Value.Many(
                kind,
                wording.coach()
                        .walked()
                        .filter(thing -> thing.kind().equals(kind) && (staff || !thing.forStaff()))
                        .<Value>map(thing -> new Value.Inner(new ThingNames(wording, thing, staff)))
                        .toList());
    }
}
