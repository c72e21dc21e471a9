package bayfolio.render.print;

import bayfolio.document.Content;
import bayfolio.document.Sketch;
import bayfolio.render.html.DrawingView;
import bayfolio.render.html.View;
import bayfolio.typeface.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One label, laid out for its cell; lengths in millimeters. Letters are as tall as is read at arm's length in poor light: a
 * code of 9 mm or more, all else 4.5 mm, on small labels 4 mm (the ratios of ANSI Z535.2, as a maker of signs gives them).
 */
final class LabelView {
    private static final Face FACE = Face.TEXT_BOLD;

    /** From the edge of the label, since no sheet lies still in a printer. */
    private static final double EDGE = 3;

    private static final double GAP = 1.5;

    /** Of a line, of the size of its letters. */
    private static final double LEADING = 1.12;

    /** Above the capitals of a line, of their height. */
    private static final double HANGING = 0.17;

    /** Capitals of the code of a door, from the largest. */
    private static final double[] CODE = {16, 14, 12, 10.5, 9};

    private static final double[] WORDS = {4.5, 4.2, 4};

    private static final double[] NAME = {6, 5.2, 4.5, 4};

    /** Typed by hand where no phone reads the code, which one leans over for. */
    private static final double TYPED = 2;

    /** A module that is as large is read by any phone; a larger code is read from further away. */
    private static final double MODULE = 0.8;

    /** One that is read when it is blurred, too; a code of many modules gets wider for it. */
    private static final double EASY = 0.9;

    /** A code is read from ten times as far as it is wide: rule of the trade, no standard. */
    private static final double READ_FROM = 300.0 / 10;

    private static final double SWATCH = 14;

    private final Content.Label label;
    private final double width;
    private final double height;
    private final List<View> texts = new ArrayList<>();
    private final View view = new View();

    private LabelView(Content.Label label, Stock stock) {
        this.label = label;
        this.width = stock.width();
        this.height = stock.height();
    }

    /** @param lacking what has no room, in words; empty where all has */
    record Laid(View view, Optional<String> lacking) {}

    /**
     * @param sketches how a switch looks in its states; none of a door
     * @param states the words for those, by their names
     */
    static Laid of(
            Content.Label label,
            Stock stock,
            List<Sketch> sketches,
            Map<String, String> states,
            Map<String, String> symbols) {
        LabelView laid = new LabelView(label, stock);
        Optional<String> lacking = laid.lay(sketches, states, symbols);
        return new Laid(laid.view.with("texts", laid.texts), lacking);
    }

    /** With a code that is as large as leaves room for all else. */
    private Optional<String> lay(List<Sketch> sketches, Map<String, String> states, Map<String, String> symbols) {
        Optional<String> lacking = Optional.empty();
        for (double large : CODE) {
            texts.clear();
            lacking = lay(large, sketches, states, symbols);
            if (lacking.isEmpty()) {
                break;
            }
        }
        return lacking;
    }

    private Optional<String> lay(
            double large, List<Sketch> sketches, Map<String, String> states, Map<String, String> symbols) {
        Code code = Code.of(label.address());
        double typed = leading(TYPED);
        line(typed(), fitting(typed(), width - 2 * EDGE, TYPED), EDGE, height - EDGE - typed);
        double end = height - EDGE - typed - band(height - EDGE - typed) - GAP;
        double module =
                Math.min(Math.max(READ_FROM / code.modules(), EASY), (end - EDGE) / (code.modules() + 2 * Code.QUIET));
        boolean coded = module >= MODULE;
        double side = coded ? module * (code.modules() + 2 * Code.QUIET) : 0;
        view.with("width", mm(width))
                .with("height", mm(height))
                .with("coded", coded)
                .with("code", code.path())
                .with("code-x", mm(width - EDGE - side + Code.QUIET * module))
                .with("code-y", mm(EDGE + Code.QUIET * module))
                .with("module", String.format(Locale.ROOT, "%.4f", module))
                .with("alt", alt());
        double left = width - 2 * EDGE - side;
        double top = EDGE;
        if (!label.code().isEmpty()) {
            double capital = fitting(label.code(), left, large);
            line(label.code(), capital, EDGE, top - capital * HANGING);
            top += capital + GAP;
        }
        for (double size : NAME) {
            if (wrapped(label.name(), left, size).size() <= 2 || size == NAME[NAME.length - 1]) {
                for (String line : wrapped(label.name(), left, size)) {
                    top = line(line, size, EDGE, top);
                }
                break;
            }
        }
        double next = top + GAP / 2;
        List<View> drawn = new ArrayList<>();
        if (!sketches.isEmpty()) {
            next = pictograms(sketches, states, symbols, left, next, end, drawn) + GAP / 2;
        }
        view.with("pictograms", drawn);
        // On a switch its states say what counts; a door has nothing but this.
        boolean warned = label.warnings().isEmpty() || warn(next, end, EDGE + side, left) || !sketches.isEmpty();
        return warned && top <= end + GAP
                ? Optional.empty()
                : Optional.of(warned ? label.name() : label.warnings().get(0));
    }

    /**
     * The first warning that there is room for.
     *
     * @param beside down to where its lines have the code at their right, and no more than {@code left}
     */
    private boolean warn(double top, double end, double beside, double left) {
        for (double size : WORDS) {
            for (String warning : label.warnings()) {
                List<String> lines = new ArrayList<>();
                List<Double> tops = new ArrayList<>();
                double at = top;
                String rest = warning;
                while (!rest.isEmpty()) {
                    String line = first(rest, at < beside ? left : width - 2 * EDGE, size);
                    lines.add(line);
                    tops.add(at);
                    at += leading(size);
                    rest = rest.substring(line.length()).strip();
                }
                if (at <= end + GAP / 2) {
                    for (int i = 0; i < lines.size(); i++) {
                        line(lines.get(i), size, EDGE, tops.get(i));
                    }
                    return true;
                }
            }
        }
        return false;
    }

    /** How a switch looks on and off, each with its word. */
    private double pictograms(
            List<Sketch> sketches,
            Map<String, String> states,
            Map<String, String> symbols,
            double room,
            double top,
            double end,
            List<View> drawn) {
        double each = Math.min(room / sketches.size() - GAP, 30);
        double bottom = top;
        double x = EDGE;
        for (Sketch sketch : sketches) {
            double most = Math.max(8, Math.min(22, end - top - leading(WORDS[0])));
            double scale = Math.min(
                    each / sketch.drawing().width(), most / sketch.drawing().height());
            drawn.add(new View()
                    .with("x", mm(x))
                    .with("y", mm(top))
                    .with("scale", String.format(Locale.ROOT, "%.5f", scale))
                    .with(
                            "drawing",
                            DrawingView.of(
                                    sketch.drawing(),
                                    sketch.title(),
                                    "s" + drawn.size(),
                                    symbols,
                                    it -> Optional.empty())));
            double below = top + sketch.drawing().height() * scale + 0.8;
            String state = states.getOrDefault(sketch.state(), sketch.state()).toUpperCase(Locale.ROOT);
            bottom = Math.max(bottom, line(state, fitting(state, each, WORDS[0]), x, below));
            x += each + GAP;
        }
        return bottom;
    }

    /** Who may open it, in a pattern that is told apart without color, and in words. */
    private double band(double bottom) {
        double room = width - 2 * EDGE - SWATCH - GAP;
        double size = WORDS[0];
        for (double each : WORDS) {
            size = each;
            if (wrapped(label.accessWords(), room, each).size() == 1) {
                break;
            }
        }
        List<String> lines = wrapped(label.accessWords(), room, size);
        double tall = Math.max(7, lines.size() * leading(size));
        double top = bottom - tall;
        double at = top + (tall - lines.size() * leading(size)) / 2;
        for (String line : lines) {
            at = line(line, size, EDGE + SWATCH + GAP, at);
        }
        view.with("swatch-y", mm(top + tall / 2 - 2.6))
                .with("swatch-x", mm(EDGE))
                .with("band-y", mm(top - GAP / 2))
                .with("band-end", mm(width - EDGE));
        for (String access : List.of("access-free", "access-task", "access-on-call", "access-staff")) {
            view.with(access, label.access().equals(access));
        }
        return tall;
    }

    /** The scheme is what phones add of themselves. */
    private String typed() {
        return label.address().replaceFirst("^[A-Za-z]+://", "");
    }

    private String alt() {
        return Stream.of(
                        label.code(),
                        label.name(),
                        label.warnings().stream().findFirst().orElse(""),
                        label.accessWords(),
                        label.address())
                .filter(it -> !it.isEmpty())
                .reduce((one, other) -> one + ". " + other)
                .orElse("");
    }

    private static double fitting(String line, double room, double largest) {
        return Math.min(largest, room / wide(line, 1));
    }

    private static double leading(double capital) {
        return capital / FACE.capital() * LEADING;
    }

    /**
     * Adds a line.
     *
     * @param capital how tall its capitals are
     * @return where it ends
     */
    private double line(String words, double capital, double x, double top) {
        double size = capital / FACE.capital();
        texts.add(new View()
                .with("x", mm(x))
                .with("y", mm(top + capital * (1 + HANGING)))
                .with("size", mm(size))
                .with("long", mm(FACE.width(words) * size))
                .with("words", words));
        return top + leading(capital);
    }

    private static List<String> wrapped(String words, double room, double capital) {
        List<String> lines = new ArrayList<>();
        String rest = words;
        while (!rest.isEmpty()) {
            String line = first(rest, room, capital);
            lines.add(line);
            rest = rest.substring(line.length()).strip();
        }
        return lines;
    }

    /** As many words as there is room for, one at least; of a word that is longer than a line, as many letters. */
    private static String first(String words, double room, double capital) {
        int end = words.indexOf(' ') < 0 ? words.length() : words.indexOf(' ');
        while (end > 1 && wide(words.substring(0, end), capital) > room) {
            end--;
        }
        while (end < words.length() && words.charAt(end) == ' ') {
            int next = words.indexOf(' ', end + 1) < 0 ? words.length() : words.indexOf(' ', end + 1);
            if (wide(words.substring(0, next), capital) > room) {
                break;
            }
            end = next;
        }
        return words.substring(0, end);
    }

    private static double wide(String line, double capital) {
        return FACE.width(line) * capital / FACE.capital();
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }
}
