package bayfolio.ask;

import bayfolio.catalog.Catalog;
import bayfolio.document.Handbook;
import bayfolio.model.Coach;
import bayfolio.procedure.Library;
import java.util.function.Supplier;

/**
 * A coach that is asked.
 *
 * @param words of its own language
 * @param handbook composed when pages are asked for; it throws where something is wrong with the coach
 */
record AskedCoach(Coach coach, Library library, Catalog words, Supplier<Handbook> handbook) {
    String id() {
        return coach.unit().id();
    }
}
