package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.View;
import java.util.Map;

/** A sheet of questions, to be answered by hand at a coach. */
public final class Clipboard {
    private final Means means;

    public Clipboard(Means means) {
        this.means = means;
    }

    /**
     * As PDF.
     *
     * @param names what its template asks for; see {@code print/survey.mustache}
     * @param edition of what it was made from
     */
    public byte[] of(View names, String coach, String edition, Catalog screen) {
        Press press = new Press(means);
        Press.Form form = press.form("survey");
        String filled = press.filled(
                form,
                names.with("size", Printed.at(screen.language()).size())
                        .with("letters", Double.toString(Printed.CLEAR))
                        .with("small", PaperView.SMALL)
                        .with("fleet", means.fleet().name())
                        .with("head", coach)
                        .with("edition", PaperView.edition(means, edition, screen))
                        .with("footed", PaperView.footed(screen))
                        // No reference stands on it.
                        .with("see", "\"\"")
                        .with("explains", "\"\"")
                        .with("turn", "\"\""));
        byte[] bytes = press.pdf(form, filled, new Media(Map.of(), Map.of())).bytes();
        if (!press.complaints().isEmpty()) {
            throw new IllegalStateException(press.complaints().get(0).toString());
        }
        return bytes;
    }
}
