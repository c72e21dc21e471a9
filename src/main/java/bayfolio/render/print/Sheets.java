package bayfolio.render.print;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.render.Means;
import bayfolio.render.Media;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What staff clip to a board and fill in by hand. */
public final class Sheets extends PaperOutput {
    private static final List<Printed> SHEETS =
            List.of(Printed.CONDITION, Printed.DAMAGE, Printed.INVENTORY, Printed.READY);

    private final Press.Form form;

    public Sheets(Means means) {
        super(means, Audience.STAFF);
        this.form = press.form("sheet");
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new TreeMap<>();
        for (Printed sheet : SHEETS) {
            String path = sheet.path(handbook);
            files.put(
                    path,
                    press.pdf(
                            form,
                            filled(form, handbook, media, sheet, Printed.CLEAR),
                            media,
                            around.before().apply(path)));
        }
        return files;
    }
}
