package bayfolio.procedure;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Equipment;
import bayfolio.model.Order;
import bayfolio.model.Situation;
import bayfolio.model.Standpoint;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * The steps that a page has for the equipment of a coach, {@code acts.refueling}: of each kind what its file says for that
 * situation, else the link to what takes it back or sets it up; in the order of this coach, under a heading for each place
 * where one stands.
 */
record ActNames(Coach coach, Library library, Catalog words, boolean staff) implements Names {
    /** Where one begins: outside to set up, else inside. */
    private static final List<Standpoint> THERE =
            List.of(Standpoint.OUTSIDE, Standpoint.DRIVER_SEAT, Standpoint.INSIDE);

    private static final List<Standpoint> BACK = List.of(Standpoint.INSIDE, Standpoint.OUTSIDE, Standpoint.DRIVER_SEAT);

    /** To which one comes by driving, so that what rests on the road rests there, too. */
    private static final Set<Situation> FROM_THE_ROAD =
            EnumSet.of(Situation.REFUELING, Situation.FERRY, Situation.RETURN, Situation.STANDING, Situation.PICKUP);

    private record Act(Equipment kind, Standpoint place, Value.Pieces.Piece piece) {}

    @Override
    public Value find(String word) {
        return Situation.named(word)
                .filter(it -> it.word().equals(word))
                .<Value>map(this::pieces)
                .orElse(new Value.Unknown());
    }

    @Override
    public Collection<String> known() {
        return Situation.words();
    }

    private Value pieces(Situation situation) {
        boolean there = situation == Situation.SETTING_UP;
        List<Standpoint> places = there ? THERE : BACK;
        List<Thing> walked = coach.walked().toList();
        ToIntFunction<Act> place = act -> places.indexOf(act.place);
        Comparator<Act> walk = Comparator.comparingInt(act -> met(act.kind, walked));
        // What is only looked at needs no order but that of the way.
        List<Act> acts = situation == Situation.DRIVING || situation == Situation.PICKUP
                ? acts(situation).stream()
                        .sorted(Comparator.comparingInt(place).thenComparing(walk))
                        .toList()
                : Order.of(coach.unit(), !there).sorted(acts(situation), act -> act.kind.id(), place, walk);
        boolean several = acts.stream().map(Act::place).distinct().count() > 1;
        List<Value.Pieces.Piece> pieces = new ArrayList<>();
        Map<Standpoint, Integer> visits = new EnumMap<>(Standpoint.class);
        Optional<Standpoint> here = Optional.empty();
        for (Act act : acts) {
            if (several && !here.equals(Optional.of(act.place))) {
                int visit = visits.merge(act.place, 1, Integer::sum);
                // Named by where one stands: which kind comes first there may change.
                pieces.add(new Value.Pieces.Written(
                        "\n### " + words.say("acts.place." + Type.word(act.place)) + " {#" + situation.word() + "-"
                                + Type.word(act.place) + (visit > 1 ? "-" + visit : "") + "}\n\n",
                        act.kind.facts().at()));
            }
            here = Optional.of(act.place);
            pieces.add(act.piece);
        }
        return new Value.Pieces(pieces);
    }

    /** When one comes by the first thing that belongs to it. */
    private static int met(Equipment kind, List<Thing> walked) {
        Set<String> roles = Set.copyOf(kind.facts().all(Equipment.ROLES));
        for (int i = 0; i < walked.size() && !roles.isEmpty(); i++) {
            Thing thing = walked.get(i);
            if (thing.facts().read(thing.identity().roles()) && thing.holdsOneOf(roles)) {
                return i;
            }
        }
        return walked.size();
    }

    private List<Act> acts(Situation situation) {
        List<Act> acts = new ArrayList<>();
        Set<String> linked = new HashSet<>();
        for (Acts each : library.acts()) {
            Equipment kind = each.equipment();
            if (!coach.features().contains(kind.id())
                    || !staff && coach.unit().outOfBounds().contains(kind.id())) {
                continue;
            }
            List<Acts.Section> sections =
                    Acts.sections(library.translations().in(words.language(), each.script())).stream()
                            .filter(section -> section.situations().contains(situation))
                            .toList();
            sections.forEach(section -> acts.add(
                    new Act(kind, Order.place(kind, section.place()), new Value.Pieces.Filled(section.steps()))));
            if (sections.isEmpty()) {
                wayOf(kind, situation)
                        .filter(way -> linked.add(way.value().id()))
                        .ifPresent(way -> acts.add(new Act(
                                kind,
                                Order.place(kind, Optional.empty()),
                                new Value.Pieces.Written(step(kind, way.value(), situation), way.at()))));
            }
        }
        return acts;
    }

    private String step(Equipment kind, Script way, Situation situation) {
        String link = "[](procedure:" + way.id() + ")";
        return "1. " + (situation == Situation.DRIVING ? words.say("acts.seen") + " " + link : link) + ". {#"
                + kind.id() + "}\n";
    }

    /** The procedure that a page leads to where the file has no steps of its own for it. */
    private Optional<Located<Script>> wayOf(Equipment kind, Situation situation) {
        return switch (situation) {
            case WINTER, BEFORE_RETURN -> Optional.empty();
            case DRIVING ->
                kind.turn().isPresent() && rests(kind, situation)
                        ? applying(kind.facts().find(Equipment.UNDONE_BY))
                        : Optional.empty();
            case SETTING_UP ->
                kind.turn().isPresent() ? applying(kind.facts().find(Equipment.SET_UP_BY)) : Optional.empty();
            case BREAKING_CAMP ->
                kind.turn().isPresent() ? applying(kind.facts().find(Equipment.UNDONE_BY)) : Optional.empty();
            default -> rests(kind, situation) ? applying(kind.facts().find(Equipment.UNDONE_BY)) : Optional.empty();
        };
    }

    /** Whether it has to rest then, and was not left so on the road before. */
    private static boolean rests(Equipment kind, Situation situation) {
        boolean fromTheRoad = FROM_THE_ROAD.contains(situation);
        return kind.resting().isPresent()
                && kind.resting().equals(kind.in(situation))
                && !(fromTheRoad && kind.resting().equals(kind.in(Situation.DRIVING)));
    }

    private Optional<Located<Script>> applying(Optional<List<Located<String>>> ids) {
        for (Located<String> id : ids.orElse(List.of())) {
            Optional<Script> script = library.of(coach.unit()).stream()
                    .filter(it -> it.id().equals(id.value())
                            && it.form() == Form.PROCEDURE
                            && (staff || it.head().who().forRenters()))
                    .findFirst();
            if (script.isPresent()) {
                Place at = id.at();
                return Optional.of(new Located<>(script.get(), at));
            }
        }
        return Optional.empty();
    }
}
