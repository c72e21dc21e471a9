package bayfolio.compose;

import bayfolio.check.Case;
import bayfolio.handbook.Copy;
import bayfolio.handbook.Handbook;
import bayfolio.handbook.Page;
import bayfolio.prose.ScreenWords;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;

/** Makes a copy of the handbook of a coach that the check found nothing wrong with. */
public final class Composer {
    private Composer() {}

    public static Handbook compose(Case coach, ScreenWords screen, Copy copy) {
        Draft draft = new Draft(coach, screen, copy);
        List<Page> pages = new ArrayList<>();
        pages.add(new HomePage(draft).page());
        pages.add(new TroublePage(draft).page());
        new ThingsPage(draft).pages().forEach(pages::add);
        StagePage stages = new StagePage(draft);
        pages.add(stages.all());
        stages.pages().forEach(pages::add);
        new ProcedurePage(draft).pages().forEach(pages::add);
        pages.add(draft.workedOut().page());
        pages.add(new WordsPage(draft).page());
        pages.add(new IndexPage(draft).page());
        if (copy == Copy.STAFF) {
            new StaffSheets(draft).pages().forEach(pages::add);
        }
        return new Handbook(copy, coach.unit().id(), coach.unit().name(), screen.language(), explained(pages, coach));
    }

    /** The glossary itself explains each word where it stands. */
    private static List<Page> explained(List<Page> pages, Case coach) {
        FirstUse firstUse = new FirstUse(coach.coach().fleet().words());
        return pages.stream()
                .map(page -> page.home().equals(new Target.OfPage("words")) ? page : firstUse.linked(page))
                .toList();
    }
}
