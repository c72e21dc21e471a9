package bayfolio.render.web;

import bayfolio.document.Today;
import bayfolio.document.Today.Line;
import bayfolio.document.Today.Part;
import bayfolio.document.Today.Way;
import bayfolio.render.html.View;

/** What a day needs, as names for the template. */
final class TodayView {
    private TodayView() {}

    static View of(Today today) {
        return new View()
                .with("heading", today.title())
                .with(
                        "remarks",
                        today.remarks().stream()
                                .map(remark -> new View().with("words", remark))
                                .toList())
                .with("parts", today.parts().stream().map(TodayView::part).toList());
    }

    private static View part(Part part) {
        return new View()
                .with("id", part.id())
                .with("heading", part.title())
                .with("empty", part.lines().isEmpty())
                .with("none", part.none())
                .with("lines", part.lines().stream().map(TodayView::line).toList());
    }

    private static View line(Line line) {
        return new View()
                .with("words", line.words())
                .with("ways", line.ways().stream().map(TodayView::way).toList());
    }

    private static View way(Way way) {
        return new View()
                .with("there", way.page().isPresent())
                .with(
                        "href",
                        way.page()
                                .map(page -> way.unit() + "/" + WebSite.file(page))
                                .orElse(""))
                .with("words", way.words());
    }
}
