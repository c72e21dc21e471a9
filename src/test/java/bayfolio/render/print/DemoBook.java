package bayfolio.render.print;

import bayfolio.DemoFleet;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.model.Unit;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A coach of the demo fleet as it is printed; its book is laid out once for all tests of a class. */
record DemoBook(Unit unit, Handbook renters, Handbook staff, Media media) {
    private static final Path ROOT = Path.of("");

    static final DemoFleet FLEET = fleet();

    private static final Map<String, byte[]> LAID = new ConcurrentHashMap<>();

    private static DemoFleet fleet() {
        try {
            return DemoFleet.of(ROOT);
        } catch (Exception e) {
            throw new IllegalStateException("the demo fleet cannot be read", e);
        }
    }

    /** The coach of the small fleet, whose book is thin. */
    static DemoBook small() {
        try {
            DemoFleet fleet = DemoFleet.of(DemoFleet.SMALL);
            return of(fleet, fleet.check().units().get(0));
        } catch (Exception e) {
            throw new IllegalStateException("the small fleet cannot be read", e);
        }
    }

    /** Those that are looked at. */
    static Map<String, DemoBook> all() {
        Map<String, DemoBook> all = new TreeMap<>();
        DemoFleet.looked().forEach(coach -> all.put(coach, of(coach)));
        return all;
    }

    static DemoBook of(String unit) {
        return FLEET.check().units().stream()
                .filter(it -> it.id().equals(unit))
                .map(DemoBook::of)
                .findFirst()
                .orElseThrow();
    }

    private static DemoBook of(Unit unit) {
        return of(FLEET, unit);
    }

    private static DemoBook of(DemoFleet fleet, Unit unit) {
        try {
            Handbook all = Composer.compose(fleet.check().of(unit));
            return new DemoBook(
                    unit,
                    all.seenBy(Audience.RENTERS),
                    all.seenBy(Audience.STAFF),
                    Media.of(unit, fleet.root()).seenBy(unit, Audience.RENTERS));
        } catch (Exception e) {
            throw new IllegalStateException(unit.id() + " cannot be composed", e);
        }
    }

    static Means means() {
        return means(Printing.USUAL);
    }

    static Means means(Printing printing) {
        try {
            return new Means(
                    Theme.load(ROOT, Theme.BUILT_IN),
                    FLEET.check().catalogs(),
                    FLEET.check().fleet(),
                    printing);
        } catch (Exception e) {
            throw new IllegalStateException("the theme cannot be read", e);
        }
    }

    byte[] book(Paper paper, double letters) {
        return LAID.computeIfAbsent(
                unit.id() + paper + letters,
                it -> new Book(means()).laid(renters, media, paper, letters).bytes());
    }

    /** Every third page of each chapter, beginning with this one, and all that every book has. */
    byte[] third(int first, Paper paper, double letters) {
        Book book = new Book(means());
        Document all = Jsoup.parse(book.filled(renters, media, paper, letters), "", Parser.xmlParser());
        for (Element chapter : all.select("div.chapter")) {
            int page = -1;
            for (Element leaf : chapter.select("> div.leaf")) {
                // What goes on with a page stays with it.
                page += leaf.selectFirst("> h2") == null ? 0 : 1;
                if (page % 3 != first % 3) {
                    leaf.remove();
                }
            }
        }
        Set<String> there = new HashSet<>(all.select("[id]").eachAttr("id"));
        all.select("a[href^=#]").stream()
                .filter(link -> !there.contains(link.attr("href").substring(1)))
                .forEach(Element::unwrap);
        all.outputSettings().prettyPrint(false);
        return book.press.pdf(book.press.form("book"), all.outerHtml(), media).bytes();
    }

    /** What an output makes for the reader that it is for. */
    Map<String, byte[]> files(Output output) {
        return output.files(output.of(Audience.RENTERS) ? renters : staff, media, Output.Around.NOTHING);
    }
}
