package bayfolio.ask;

import bayfolio.document.Page;
import java.util.List;

/** A page of the handbook by its address, or all pages of a kind: {@code page:worked-out/a-night}, {@code page:tray}. */
record PageTerm(String name) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.handbook().get().pages().stream()
                .filter(this::meant)
                .map(page -> Answer.of(
                        coach.id(),
                        "page:" + page.address(),
                        page.title(),
                        page.stamp().from().sources().stream()
                                .findFirst()
                                .map(source -> source.at())
                                .orElse(coach.coach().unit().facts().at())))
                .toList();
    }

    private boolean meant(Page page) {
        return page.address().equals(name) || page.kind().id().equals(name);
    }
}
