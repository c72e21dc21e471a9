package bayfolio.compose;

import bayfolio.check.Case;
import bayfolio.handbook.Handbook;
import bayfolio.handbook.Page;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.prose.ScreenWords;
import java.util.ArrayList;
import java.util.List;

/** Makes the renter's handbook of a coach that the check found nothing wrong with. */
public final class Composer {
    private Composer() {}

    public static Handbook compose(Case coach, ScreenWords screen) {
        Draft draft = new Draft(coach, screen);
        List<Page> pages = new ArrayList<>();
        pages.add(new HomePage(draft).page());
        new ThingsPage(draft).pages().forEach(pages::add);
        StagePage stages = new StagePage(draft);
        pages.add(stages.all());
        stages.pages().forEach(pages::add);
        new ProcedurePage(draft).pages().forEach(pages::add);
        pages.add(new WordsPage(draft).page());
        pages.add(new IndexPage(draft).page());
        return new Handbook(coach.unit().id(), coach.unit().name(), language(coach), pages);
    }

    /** The coach's first language, or the fleet's. */
    private static String language(Case coach) {
        return coach.unit().facts().all(Unit.LANGUAGES).stream()
                .findFirst()
                .orElseGet(() -> coach.coach()
                        .fleet()
                        .facts()
                        .facts()
                        .all(FleetFacts.LANGUAGES)
                        .get(0));
    }
}
