package bayfolio.render.print;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.html.Words;
import bayfolio.template.TemplateProblem;
import java.util.List;

/** What all outputs on paper have: a press, the words that it prints, and one reader for whom it prints. */
abstract class PaperOutput implements Output {
    final Means means;
    final Press press;
    final Words words = new Words();
    private final Audience reader;

    PaperOutput(Means means, Audience reader) {
        this.means = means;
        this.press = new Press(means);
        this.reader = reader;
    }

    @Override
    public List<TemplateProblem> complaints() {
        return press.complaints();
    }

    @Override
    public boolean of(Audience other) {
        return other == reader;
    }

    /** The page that something printed is of, by itself. */
    String filled(Press.Form form, Handbook handbook, Media media, Printed print, double letters) {
        return press.filled(
                form,
                PaperView.alone(means, handbook, media, words).alone(Printed.at(handbook), letters, print.page()));
    }
}
