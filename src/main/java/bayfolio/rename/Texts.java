package bayfolio.rename;

import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.procedure.Translation;
import java.util.ArrayList;
import java.util.List;

/** All texts of a library, translations among them, those too that are of older texts. */
final class Texts {
    private Texts() {}

    static List<Script> of(Library library) {
        List<Script> all = new ArrayList<>(library.texts());
        for (Translation each : library.translations().written()) {
            sources(each, library).stream().findFirst().ifPresent(source -> all.add(source.in(each, told -> {})));
        }
        return all;
    }

    /** What a translation is of; a coach may have a text of its own under the id of a shared one. */
    static List<Script> sources(Translation translation, Library library) {
        return library.texts().stream()
                .filter(script -> script.form() == translation.form()
                        && script.head().facts().ifRead(bayfolio.procedure.Head.ID).stream()
                                .anyMatch(id -> id.value().equals(translation.of())))
                .toList();
    }
}
