package bayfolio.render.print;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.html.View;
import bayfolio.render.html.Words;
import bayfolio.template.TemplateProblem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What staff clip to a board and fill in by hand. */
public final class Sheets implements Output {
    private static final List<Printed> SHEETS =
            List.of(Printed.CONDITION, Printed.DAMAGE, Printed.INVENTORY, Printed.READY);

    private final Means means;
    private final Press press;
    private final Words words = new Words();
    private final Press.Form form;

    public Sheets(Means means) {
        this.means = means;
        this.press = new Press(means);
        this.form = press.form("sheet");
    }

    @Override
    public List<TemplateProblem> complaints() {
        return press.complaints();
    }

    @Override
    public boolean of(Audience reader) {
        return reader == Audience.STAFF;
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new TreeMap<>();
        for (Printed sheet : SHEETS) {
            View view = PaperView.alone(means, handbook, media, words)
                    .alone(Printed.at(handbook), Printed.CLEAR, sheet.page());
            String path = sheet.path(handbook);
            files.put(
                    path,
                    press.pdf(
                            form,
                            press.filled(form, view),
                            media,
                            around.before().apply(path)));
        }
        return files;
    }
}
