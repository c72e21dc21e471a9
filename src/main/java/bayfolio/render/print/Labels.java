package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Sketch;
import bayfolio.prose.Target;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.View;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Labels for doors and for switches: on sheets as they are sold, and each as a drawing by itself. */
public final class Labels extends PaperOutput {
    /** By the kind of what they are stuck on. */
    private static final Map<String, Printed> SHEETS =
            new TreeMap<>(Map.of("compartment", Printed.DOOR_LABELS, "switch", Printed.SWITCH_LABELS));

    /** Of drawings of a switch: how it looks when it does its work, and when it does not. */
    private static final Set<String> STATES = Set.of("on", "off", "open", "shut");

    private final Press.Form sheet;
    private final Press.Form single;
    private final Map<String, String> symbols;

    public Labels(Means means) {
        super(means, Audience.STAFF);
        this.sheet = press.form("labels");
        this.single = press.form("label");
        this.symbols = means.theme().symbols();
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new TreeMap<>();
        SHEETS.forEach((kind, print) -> {
            List<Content.Label> labels = handbook.walk()
                    .filter(Content.Label.class::isInstance)
                    .map(Content.Label.class::cast)
                    .filter(label -> label.thing().target() instanceof Target.OfThing thing
                            && thing.kind().equals(kind))
                    .filter(label ->
                            !kind.equals("switch") || states(handbook, label).size() > 1)
                    .toList();
            if (labels.isEmpty()) {
                return;
            }
            Stock stock = means.printing().stock().map(Stock::named).orElseGet(() -> Stock.on(Printed.at(handbook)));
            List<View> views = new ArrayList<>();
            for (Content.Label label : labels) {
                View view = laid(handbook, label, stock);
                views.add(view);
                files.put(
                        print.folder(handbook) + name(label) + ".svg",
                        press.filled(single, view).getBytes(StandardCharsets.UTF_8));
            }
            String path = print.path(handbook);
            String filled = press.filled(sheet, sheets(handbook, media, print, stock, views));
            files.put(path, press.pdf(sheet, filled, media, around.before().apply(path)));
        });
        return files;
    }

    /** A door has none. */
    private static List<Sketch> states(Handbook handbook, Content.Label label) {
        return handbook.sketches(label.thing().target()).stream()
                .filter(it -> STATES.contains(it.state()))
                .toList();
    }

    private View laid(Handbook handbook, Content.Label label, Stock stock) {
        Catalog screen = means.catalogs().of(handbook.language());
        Map<String, String> states = new HashMap<>();
        List<Sketch> sketches = states(handbook, label);
        sketches.forEach(it -> states.put(it.state(), screen.say("handling.look." + it.state())));
        LabelView.Laid laid = LabelView.of(label, stock, sketches, states, symbols);
        laid.lacking()
                .ifPresent(words -> press.complain(
                        single,
                        "on a label of `" + stock.name() + "` there is no room for `" + words + "` of `"
                                + label.thing().target().written() + "` of " + handbook.unit()
                                + "; choose a larger one with --label-stock"));
        return laid.view();
    }

    private View sheets(Handbook handbook, Media media, Printed print, Stock stock, List<View> labels) {
        Map<Integer, List<View>> bySheet = new TreeMap<>();
        int cell = (means.printing().start() - 1) % stock.cells();
        for (View label : labels) {
            Stock.Cell at = stock.cell(cell++);
            bySheet.computeIfAbsent(at.sheet(), it -> new ArrayList<>())
                    .add(new View()
                            .with("left", mm(at.left()))
                            .with("top", mm(at.top()))
                            .with("label", label));
        }
        PaperView paper = PaperView.alone(means, handbook, media, words);
        return paper.frame(Printed.at(handbook), Printed.CLEAR)
                .with(
                        "title",
                        means.catalogs().of(handbook.language()).say("printed." + print.id()) + ", " + handbook.name())
                .with("page-width", mm(stock.pageWidth()))
                .with("page-height", mm(stock.pageHeight()))
                .with("cell-width", mm(stock.width()))
                .with("cell-height", mm(stock.height()))
                .with(
                        "sheets",
                        bySheet.entrySet().stream()
                                .map(each -> new View()
                                        .with("later", each.getKey() > 0)
                                        .with("cells", each.getValue()))
                                .toList());
    }

    private static String name(Content.Label label) {
        return label.address().substring(label.address().lastIndexOf('/') + 1);
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }
}
