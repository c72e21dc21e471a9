package bayfolio.procedure;

import bayfolio.model.Coach;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.Order;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The procedures that set this coach up at a site, {@code turn.plug}, and those that take that back, {@code
 * turn-back.plug}; {@code each} is all of them in the order of this coach.
 */
record TurnNames(Coach coach, Library library, boolean staff, boolean back) implements Names {
    private static final String EACH = "each";

    /** Every name there is. */
    static List<String> words(EquipmentKinds kinds) {
        return Stream.concat(Stream.of(EACH), kinds.turns().stream()).toList();
    }

    @Override
    public Value find(String word) {
        EquipmentKinds kinds = coach.unit().equipment();
        if (kinds.whole() && !words(kinds).contains(word)) {
            return new Value.Unknown();
        }
        List<Equipment> those = kinds.on(coach.unit()).stream()
                .filter(kind -> kind.turn()
                        .filter(turn -> word.equals(EACH) || word.equals(turn))
                        .isPresent())
                .toList();
        List<Value> scripts = Order.of(coach.unit(), back)
                .sorted(those, Equipment::id, kind -> 0, Comparator.comparing(those::indexOf))
                .stream()
                .flatMap(this::scripts)
                .distinct()
                .map(ScriptNames::value)
                .toList();
        return new Value.Many(word, scripts);
    }

    private Stream<Script> scripts(Equipment kind) {
        List<String> ids = kind.facts().all(back ? Equipment.UNDONE_BY : Equipment.SET_UP_BY);
        return library.of(coach.unit()).stream()
                .filter(script -> script.form() == Form.PROCEDURE && ids.contains(script.id()))
                .filter(script -> staff || script.head().who().forRenters());
    }

    @Override
    public Collection<String> known() {
        return words(coach.unit().equipment());
    }
}
