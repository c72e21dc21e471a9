package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.stream.Stream;

/** What the proof asks of a kind of equipment on a coach. */
record Proof(CheckedCoach coach, Equipment kind) {
    /** Of all kinds that a coach has; nothing is asked of a draft. */
    static Stream<Proof> of(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.draft() ? Stream.of() : unit.equipment().on(unit).stream().map(kind -> new Proof(coach, kind));
    }

    /** Whether only staff may use it, so that renters need no way to it. */
    boolean outOfBounds() {
        return coach.unit().outOfBounds().contains(kind.id());
    }

    /** Where it stands in the description that the coach has it. */
    Place at() {
        return coach.unit()
                .equipment()
                .at(coach.unit(), kind.id())
                .orElseGet(() -> coach.unit().facts().at());
    }

    /** Those of the scripts named under a key that are for this coach. */
    List<Script> applying(Key<List<Located<String>>> key, Form form) {
        List<String> ids = kind.facts().all(key);
        return coach.library().all(coach.unit()).stream()
                .filter(script -> script.form() == form && ids.contains(script.id()))
                .toList();
    }

    /** Whether all that is named under a key is there; what is not is told by itself, and may be just what is missed. */
    boolean knows(Key<List<Located<String>>> key, Form form) {
        return kind.facts().all(key).stream().allMatch(id -> coach.library().knows(form, id, Whose.ALL));
    }

    List<Script> settingUp() {
        return applying(Equipment.SET_UP_BY, Form.PROCEDURE);
    }

    List<Script> undoing() {
        return applying(Equipment.UNDONE_BY, Form.PROCEDURE);
    }

    /** Whether the file says that such a thing is set up, and by what. */
    boolean says(Key<?> key) {
        return kind.facts().has(key);
    }

    /** Its file, for the mend. */
    String file() {
        return kind.facts().at().file().path();
    }

    Finding error(String code, String what) {
        return Finding.error(code, at(), "this coach has " + called() + ", and " + what);
    }

    String called() {
        return "`" + kind.id() + "` (" + kind.name() + ")";
    }
}
