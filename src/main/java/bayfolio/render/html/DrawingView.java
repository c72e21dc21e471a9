package bayfolio.render.html;

import bayfolio.drawing.Drawing;
import bayfolio.drawing.Mark;
import bayfolio.fact.Type;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A drawing as names for its template; fills are presentation attributes, which need no style. */
public final class DrawingView {
    private static final Set<String> MARKS = Set.of("box", "round", "path", "label", "symbol");

    /** What a part of a drawing leads to. */
    public record Linked(String href, String name) {}

    private DrawingView() {}

    /**
     * @param id of its patterns, unique on a page
     * @param symbols the path of each, by name, in a field of 24 by 24
     * @param links by the id of what a mark stands for
     */
    public static View of(
            Drawing drawing,
            String title,
            String id,
            Map<String, String> symbols,
            Function<String, Optional<Linked>> links) {
        Marks marks = new Marks(id, symbols, links);
        return new View()
                .with("title", title)
                .with("id", id)
                .with("width", px(drawing.width()))
                .with("height", px(drawing.height()))
                .with("patterned", drawing.marks().stream().anyMatch(DrawingView::patterned))
                .with(
                        "marks",
                        drawing.marks().stream().map(mark -> mark.accept(marks)).toList());
    }

    private static boolean patterned(Mark mark) {
        return mark instanceof Mark.Box box && pattern(box.fill());
    }

    private static boolean pattern(Mark.Fill fill) {
        return fill == Mark.Fill.STRIPES || fill == Mark.Fill.DOTS || fill == Mark.Fill.CROSSES;
    }

    /** To a unit of the drawing: finer is not seen. */
    public static String px(double length) {
        return Long.toString(Math.round(length));
    }

    private record Marks(String id, Map<String, String> symbols, Function<String, Optional<Linked>> links)
            implements Mark.Visitor<View> {
        @Override
        public View box(Mark.Box box) {
            return one(
                    "box",
                    at(linked(filled(box.fill()), box.of()), box)
                            .with("corner", px(box.corner()))
                            .with("dashed", box.dashed()));
        }

        @Override
        public View round(Mark.Round round) {
            return one(
                    "round",
                    linked(filled(round.fill()), round.of())
                            .with("x", px(round.x()))
                            .with("y", px(round.y()))
                            .with("radius", px(round.radius())));
        }

        @Override
        public View path(Mark.Path path) {
            return one(
                    "path",
                    filled(path.fill())
                            .with("dashed", path.dashed())
                            .with(
                                    "d",
                                    path.points().stream()
                                                    .map(point -> String.format(
                                                            Locale.ROOT, "%.1f %.1f", point.x(), point.y()))
                                                    .collect(Collectors.joining("L", "M", ""))
                                            + (path.closed() ? "z" : "")));
        }

        @Override
        public View symbol(Mark.Symbol symbol) {
            return one(
                    "symbol",
                    new View()
                            .with("x", px(symbol.x()))
                            .with("y", px(symbol.y()))
                            .with("scale", String.format(Locale.ROOT, "%.2f", symbol.size() / 24))
                            .with("path", symbols.getOrDefault(symbol.name(), "")));
        }

        @Override
        public View label(Mark.Label label) {
            return one(
                    "label",
                    new View()
                            .with("x", px(label.x()))
                            .with("y", px(label.y()))
                            .with("size", px(label.size()))
                            .with("words", label.words())
                            .with("anchor", Type.word(label.anchor()))
                            .with("room", at(new View(), label.room())));
        }

        private View filled(Mark.Fill fill) {
            String ink = switch (fill) {
                case NONE -> "none";
                case PLAIN -> "#ddd";
                case PAPER -> "#fff";
                case HERE -> "currentColor";
                case STRIPES, DOTS, CROSSES -> "url(#" + id + "." + Type.word(fill) + ")";
            };
            return new View()
                    .with("fill", Type.word(fill))
                    .with("filled", fill != Mark.Fill.NONE)
                    .with("ink", ink);
        }

        private View linked(View view, String of) {
            Optional<Linked> link = links.apply(of);
            return view.with("linked", link.isPresent())
                    .with("href", link.map(Linked::href).orElse(""))
                    .with("name", link.map(Linked::name).orElse(""));
        }

        private static View one(String kind, View view) {
            return View.oneOf(MARKS).with(kind, view);
        }

        private static View at(View view, Mark.Box box) {
            return view.with("x", px(box.x()))
                    .with("y", px(box.y()))
                    .with("width", px(box.width()))
                    .with("height", px(box.height()));
        }
    }
}
