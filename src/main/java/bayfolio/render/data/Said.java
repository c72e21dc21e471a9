package bayfolio.render.data;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Mark;
import bayfolio.prose.Target;
import bayfolio.render.html.ContentView;
import bayfolio.source.Digest;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reader is told on one page: its normal form, and what is shown there without standing in that: what it quotes, the
 * words in drawings, the names of small drawings.
 */
final class Said {
    private final Handbook handbook;
    private final List<String> words = new ArrayList<>();

    private Said(Handbook handbook) {
        this.handbook = handbook;
    }

    /** Another one as soon as the page says anything else. */
    static String digest(Handbook handbook, Page page) {
        Said said = new Said(handbook);
        said.add(page);
        return Digest.of(String.join("\n", said.words));
    }

    private void add(Page page) {
        words.add(handbook.asRead(page));
        page.walk().forEach(node -> add(page, node));
    }

    private void add(Page page, Node node) {
        if (node instanceof Content.Quote quote) {
            add(ContentView.quoted(handbook, quote));
        } else if (node instanceof Content.Drawn drawn) {
            add(drawn.drawing());
        } else if (node instanceof Content.Sketched sketched) {
            add(sketched.thing());
        } else if (node instanceof Content.Steps.Where where && !page.urgent()) {
            add(where.thing().target());
        }
    }

    private void add(Drawing drawing) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Label label) {
                words.add(label.words());
            }
        }
    }

    private void add(Target thing) {
        handbook.sketches(thing).forEach(sketch -> words.add(sketch.state() + " " + sketch.title()));
    }
}
