package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.PageKind;
import bayfolio.fact.Type;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is printed of a coach, in the order in which it is offered. */
public enum Printed {
    BOOK(Audience.RENTERS),
    CHANGED_PAGES(Audience.RENTERS),
    LARGE_PRINT(Audience.RENTERS),
    NIGHT_CARD(Audience.RENTERS),
    PHONE_CARD(Audience.RENTERS),
    QUICK_CARD(Audience.RENTERS),
    CONDITION(Audience.STAFF),
    DAMAGE(Audience.STAFF),
    INVENTORY(Audience.STAFF),
    READY(Audience.STAFF),
    DOOR_LABELS(Audience.STAFF),
    SWITCH_LABELS(Audience.STAFF);

    private static final String FOLDER = "/print/";

    /** Of the body, in points: clear print, and large print, as societies for the blind ask for. */
    static final double CLEAR = 12;

    static final double LARGE = 18;

    private final Audience reader;

    Printed(Audience reader) {
        this.reader = reader;
    }

    /** The page that it is of, where it is of one. */
    PageKind page() {
        return PageKind.valueOf(name());
    }

    /** As files and messages call it. */
    String id() {
        return Type.word(this);
    }

    /** The book is bound in a binder of either size. */
    private boolean ofEachSize() {
        return this == BOOK || this == CHANGED_PAGES;
    }

    /** Of what is printed on one size of paper for each country. */
    String path(Handbook handbook) {
        return handbook.unit() + FOLDER + id() + ".pdf";
    }

    /** Where its parts lie, each by itself. */
    String folder(Handbook handbook) {
        return handbook.unit() + FOLDER + id() + "/";
    }

    String path(Handbook handbook, Paper paper) {
        return handbook.unit() + FOLDER + id() + "-" + paper.id() + ".pdf";
    }

    /** The paper that is at hand where the language is spoken; the tables of CLDR know it. */
    static Paper at(Handbook handbook) {
        return at(handbook.language());
    }

    static Paper at(String language) {
        LocaleData.PaperSize size = LocaleData.getPaperSize(ULocale.addLikelySubtags(new ULocale(language)));
        return size.getHeight() == (int) Math.round(Paper.LETTER.height()) ? Paper.LETTER : Paper.A4;
    }

    /** @param path below the root of the readers' files, and below the folder of the coach */
    public record File(Audience reader, String path, String words, int bytes) {}

    /** Those of a coach that are among some files. */
    public static List<File> among(Map<String, byte[]> files, Handbook handbook, Catalog screen) {
        return Arrays.stream(values())
                .flatMap(print -> print.ofEachSize()
                        ? Arrays.stream(Paper.values())
                                .flatMap(paper -> print.file(
                                        files,
                                        handbook,
                                        print.path(handbook, paper),
                                        screen.say(
                                                "printed." + print.id(), "paper", screen.say("paper." + paper.id()))))
                        : print.file(files, handbook, print.path(handbook), screen.say("printed." + print.id())))
                .toList();
    }

    private Stream<File> file(Map<String, byte[]> files, Handbook handbook, String path, String words) {
        return Optional.ofNullable(files.get(path))
                .map(bytes -> new File(reader, path.substring(handbook.unit().length() + 1), words, bytes.length))
                .stream();
    }
}
