package bayfolio.procedure;

import bayfolio.model.Unit;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a procedure sends to, from its end to its beginning, each replaced by the procedures that take it back: {@code
 * back.set-up-on-site}. So the way back needs no list of its own that could fall behind.
 *
 * @param from the procedure that asks; what it names itself is left out, so that it may give that a place of its own
 * @param fill a procedure for this coach, so that its references are known
 */
record WayBack(Script from, Unit unit, Library library, boolean staff, Function<Script, Procedure> fill)
        implements Names {
    @Override
    public Value find(String id) {
        if (!staff && library.forStaff(Form.PROCEDURE, id)) {
            return Withheld.script(Form.PROCEDURE, id);
        }
        Optional<Script> forth = library.named(unit, id).filter(it -> it.form() == Form.PROCEDURE);
        if (forth.isEmpty()) {
            return library.knows(Form.PROCEDURE, id)
                    ? new Value.Absent(
                            "procedure `" + id + "` does not apply to this coach",
                            "Guard the text with the features that it asks for.")
                    : new Value.Unknown();
        }
        List<String> sent = new ArrayList<>(fill.apply(forth.get())
                .links()
                .map(Inline.Link::target)
                .filter(Target.OfProcedure.class::isInstance)
                .map(target -> ((Target.OfProcedure) target).id())
                .distinct()
                .toList());
        Collections.reverse(sent);
        return new Value.Many(
                id,
                sent.stream()
                        .flatMap(each -> library.of(unit).stream()
                                .filter(script ->
                                        script.head().facts().all(Head.UNDOES).contains(each))
                                .filter(script -> staff || script.head().who().forRenters())
                                .filter(script -> !from.body().contains("(procedure:" + script.id() + ")")))
                        .distinct()
                        .map(ScriptNames::value)
                        .toList());
    }

    @Override
    public Collection<String> known() {
        return library.ids(Form.PROCEDURE);
    }
}
