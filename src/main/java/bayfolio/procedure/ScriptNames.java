package bayfolio.procedure;

import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether a procedure or trouble guide applies to the coach: {@code trouble.no-heat}, for sections around a link to it. */
record ScriptNames(Form form, Unit unit, Library library, boolean staff) implements Names {
    /** What is known of each. */
    static final List<String> WORDS = List.of("id", "title");

    @Override
    public Value find(String id) {
        Optional<Script> script = library.named(unit, id)
                .filter(it -> it.form() == form && (staff || it.head().who().forRenters()));
        if (script.isPresent()) {
            return new Value.Many(id, List.of(value(script.get())));
        }
        if (!staff && library.forStaff(form, id)) {
            return Withheld.script(form, id);
        }
        return library.knows(form, id, new Whose.OfACoach(unit.id()))
                ? new Value.Absent(
                        form.called() + " `" + id + "` does not apply to this coach",
                        "Guard the text with {{#" + form.scheme() + "." + id + "}}.")
                : new Value.Unknown();
    }

    static Value value(Script script) {
        Map<String, Value> names = new LinkedHashMap<>();
        names.put("id", new Value.Text(script.id()));
        names.put("title", new Value.Text(script.head().title()));
        return new Value.Inner(Names.of(names));
    }

    @Override
    public Collection<String> known() {
        return library.ids(form);
    }
}
