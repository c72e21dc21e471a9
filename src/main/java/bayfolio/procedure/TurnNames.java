package bayfolio.procedure;

import bayfolio.fact.Type;
import bayfolio.model.Setup;
import bayfolio.model.Unit;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * The procedures that set this coach up at a site, {@code turn.plug}, and those that take that back, {@code
 * turn-back.plug}; {@code each} is all of them in the order of this coach. So there is one order, and a list for
 * leaving that cannot fall behind.
 */
record TurnNames(Unit unit, Library library, boolean staff, boolean back) implements Names {
    private static final String EACH = "each";

    /** Every name there is. */
    static final List<String> WORDS =
            Stream.concat(Stream.of(EACH), Setup.turns().stream()).toList();

    @Override
    public Value find(String word) {
        if (!WORDS.contains(word)) {
            return new Value.Unknown();
        }
        List<Value> scripts = (back ? Setup.back(unit) : Setup.there(unit))
                .stream()
                        .filter(turn -> word.equals(EACH) || word.equals(Type.word(turn)))
                        .flatMap(this::scripts)
                        .distinct()
                        .map(ScriptNames::value)
                        .toList();
        return new Value.Many(word, scripts);
    }

    private Stream<Script> scripts(Setup.Turn turn) {
        Stream<Script> there = library.of(unit).stream()
                .filter(script -> script.head()
                        .facts()
                        .find(Head.SETS_UP)
                        .filter(turn::equals)
                        .isPresent());
        Stream<Script> scripts = back
                ? there.flatMap(set -> library.of(unit).stream()
                        .filter(it -> it.head().facts().all(Head.REVERSES).contains(set.id())))
                : there;
        return scripts.filter(script -> staff || script.head().who().forRenters());
    }

    @Override
    public Collection<String> known() {
        return WORDS;
    }
}
