package bayfolio.render.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.select.Elements;

/**
 * How long a book of some forty pages takes, and a whole one, once the program is warm. Run on demand with the heap that it
 * must do with; see DEVELOPERS.md for the line to type and for figures.
 */
final class BookBenchmark {
    private static final int WARM_UP = 25;
    private static final int RUNS = 15;

    private BookBenchmark() {}

    public static void main(String[] arguments) {
        System.out.printf(
                Locale.ROOT,
                "Java %s, %d cores, heap of at most %d MB%n",
                Runtime.version(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        DemoBook demo = DemoBook.small();
        String whole = new Book(DemoBook.means()).filled(demo.renters(), demo.media(), Paper.A4, Printed.CLEAR);
        report("some chapters", demo, some(whole, 9), WARM_UP);
        report("a whole book of the small coach", demo, whole, WARM_UP);
        if (arguments.length > 0) {
            DemoBook large = DemoBook.of(arguments[0]);
            report(
                    "a whole book of " + arguments[0],
                    large,
                    new Book(DemoBook.means()).filled(large.renters(), large.media(), Paper.A4, Printed.CLEAR),
                    5);
        }
    }

    /** A book without its last chapters, and without what leads to them. */
    private static String some(String book, int chapters) {
        Document page = Jsoup.parse(book, Parser.xmlParser());
        page.outputSettings().prettyPrint(false);
        Elements all = page.select("div.chapter");
        all.subList(chapters, all.size()).forEach(Element::remove);
        for (Element link : page.select("a[href^=#]")) {
            if (page.getElementById(link.attr("href").substring(1)) == null) {
                link.unwrap();
            }
        }
        return page.outerHtml();
    }

    private static void report(String what, DemoBook demo, String book, int warmUp) {
        Press press = new Press(DemoBook.means());
        Press.Form form = press.form("book");
        int pages = 0;
        for (int run = 0; run < warmUp; run++) {
            pages = press.pdf(form, book, demo.media()).pages();
        }
        List<Double> seconds = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            long begun = System.nanoTime();
            press.pdf(form, book, demo.media());
            seconds.add((System.nanoTime() - begun) / 1e9);
        }
        seconds.sort(null);
        System.out.printf(
                Locale.ROOT,
                "%s: %d pages, %.2f s (median of %d; %.2f to %.2f)%n",
                what,
                pages,
                seconds.get(RUNS / 2),
                RUNS,
                seconds.get(0),
                seconds.get(RUNS - 1));
    }
}
