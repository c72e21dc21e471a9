package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The book of each demo coach, read by another program than the one that laid it out. */
class BookTest {
    private static final Pattern SEE = Pattern.compile("\\(page (\\d+)\\)");

    /** What stands in every book that has such a page. */
    private static final Set<PageKind> PRINTED = EnumSet.of(
            PageKind.PROCEDURE,
            PageKind.GUIDE,
            PageKind.COMPARTMENT,
            PageKind.TRAY,
            PageKind.SWITCH,
            PageKind.GAUGE,
            PageKind.CONNECTION,
            PageKind.QUESTION);

    /** Parts of a step that no page holds. */
    private static final int LONG = 60;

    /** A fifth of a millimeter: letters hang over their place by as much. */
    private static final double SLIGHT = 0.2;

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#everyOther")
    void aReaderFindsHisWayOnPaper(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        try (Read book = new Read(demo.book(Paper.A4, Printed.CLEAR))) {
            List<String> texts = book.texts();

            // Each page says which coach, which edition, and where one is.
            for (int page = 1; page <= book.pages(); page++) {
                assertThat(texts.get(page - 1).replaceAll("\\s+", " "))
                        .contains(demo.unit().name())
                        .contains("Edition " + demo.renters().edition())
                        .contains("page " + page + " of " + book.pages());
            }

            // No mark of a writer is printed.
            assertThat(String.join(" ", texts))
                    .doesNotContain("{#")
                    .doesNotContain("{{")
                    .doesNotContain("](");

            // Every number of a page that is told is that of the page it leads to.
            int told = 0;
            for (Read.Leads link : book.links()) {
                Matcher see = SEE.matcher(link.words());
                while (see.find()) {
                    told++;
                    assertThat(Integer.parseInt(see.group(1)))
                            .as(link.toString())
                            .isEqualTo(link.to());
                }
            }
            int said = 0;
            for (String text : texts) {
                said += (int)
                        SEE.matcher(text.replaceAll("\\s+", " ")).results().count();
            }
            // Of a reference that is broken into two lines the number may stand apart from the words.
            assertThat(told).isGreaterThan(500).isGreaterThan(said * 9 / 10);

            // Bookmarks lead to each chapter and each page, and the contents say the same numbers.
            List<String> bookmarks = new ArrayList<>();
            bookmarks(book.document().getDocumentCatalog().getDocumentOutline(), bookmarks);
            Set<String> titles = new TreeSet<>();
            for (Page page : demo.renters().pages()) {
                if (PRINTED.contains(page.kind()) && !Leaves.goesOn(page)) {
                    titles.add(page.title());
                }
            }
            assertThat(bookmarks).containsAll(titles);
            System.out.println(unit + ": " + book.pages() + " pages, " + told + " references, " + bookmarks.size()
                    + " bookmarks, " + titles.size() + " titles");
        }
    }

    private static void bookmarks(PDOutlineNode node, List<String> to) {
        for (PDOutlineItem item : node.children()) {
            to.add(item.getTitle());
            bookmarks(item, to);
        }
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#everyOther")
    void nothingThatBelongsTogetherIsTornApart(String unit) throws Exception {
        try (Read book = new Read(DemoBook.of(unit).book(Paper.A4, Printed.CLEAR))) {
            List<String> torn = new ArrayList<>();
            List<Read.Tag> inOrder = new ArrayList<>();
            int[] items = {0};
            book.tags().walk(tag -> {
                if (tag.kind().equals("LI") || tag.kind().equals("Figure")) {
                    items[0]++;
                    // One that is longer than a page, as a list of all breakers is, goes on for as long as it must.
                    int[] parts = {0};
                    tag.walk(part -> parts[0]++);
                    if (tag.pages().size() > 1 && parts[0] < LONG) {
                        torn.add(tag.kind() + " on " + tag.pages());
                    }
                }
                if (tag.parts().isEmpty() && !tag.pages().isEmpty()
                        || tag.kind().matches("H[1-4]")) {
                    inOrder.add(tag);
                }
            });
            assertThat(torn).isEmpty();
            assertThat(items[0]).isGreaterThan(800);

            // A heading is never the last on its page.
            List<String> last = new ArrayList<>();
            for (int i = 0; i < inOrder.size(); i++) {
                Read.Tag heading = inOrder.get(i);
                if (heading.kind().matches("H[1-4]")) {
                    int next = i + 1;
                    while (next < inOrder.size() && heading.parts().contains(inOrder.get(next))) {
                        next++;
                    }
                    if (next < inOrder.size()
                            && !inOrder.get(next).pages().isEmpty()
                            && !heading.pages().isEmpty()
                            // On the card a heading stands in the line of its text.
                            && heading.pages().get(0) != 2
                            && inOrder.get(next).pages().get(0)
                                    > heading.pages().get(0)) {
                        last.add(heading.kind() + " on " + heading.pages());
                    }
                }
            }
            assertThat(last).isEmpty();
        }
    }

    /** What is read aloud comes in the order in which it is seen, from the top of each page to its end. */
    @ParameterizedTest
    @ValueSource(strings = {"redpoll", "whimbrel"})
    void itIsReadAloudInItsOrder(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        List<byte[]> all = new ArrayList<>(List.of(demo.book(Paper.A4, Printed.CLEAR)));
        all.addAll(demo.files(new Cards(DemoBook.means())).values());
        all.addAll(demo.files(new Sheets(DemoBook.means())).values());
        for (byte[] each : all) {
            try (Read read = new Read(each)) {
                List<String> outOfOrder = new ArrayList<>();
                Read.Tag[] last = new Read.Tag[1];
                int[] blocks = {0};
                read.tags().walk(tag -> {
                    if (tag.kind().matches("P|H[1-4]|LBody") && tag.at() >= 0) {
                        blocks[0]++;
                        if (last[0] != null && tag.at() < last[0].at() - 6) {
                            outOfOrder.add("`" + last[0].text() + "` before `" + tag.text() + "`");
                        }
                        last[0] = tag;
                    }
                });
                assertThat(outOfOrder).isEmpty();
                assertThat(blocks[0]).isGreaterThan(2);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = "redpoll")
    void lettersAreLargeAndStayOffTheBinding(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        for (double size : List.of(Printed.CLEAR, Printed.LARGE)) {
            Paper paper = size == Printed.CLEAR ? Paper.LETTER : Paper.A4;
            try (Read book = new Read(demo.book(paper, size))) {
                long small = 0;
                List<Read.Letter> letters = book.letters();
                for (Read.Letter letter : letters) {
                    boolean right = letter.page() % 2 == 1;
                    assertThat(letter.left()).as(letter.toString()).isGreaterThanOrEqualTo((right ? 25 : 15) - SLIGHT);
                    assertThat(paper.width() - letter.right())
                            .as(letter.toString())
                            .isGreaterThanOrEqualTo((right ? 15 : 25) - SLIGHT);
                    assertThat(letter.size()).as(letter.toString()).isGreaterThanOrEqualTo(9.9);
                    boolean run = letter.top() < 22 || letter.bottom() > paper.height() - 20;
                    if (size == Printed.LARGE && !run) {
                        assertThat(letter.size()).as(letter.toString()).isGreaterThanOrEqualTo(17.9);
                    }
                    small += letter.size() < 11.9 ? 1 : 0;
                }
                // What is looked up, in tables and lists, is smaller than what is read.
                assertThat(small).isLessThan(letters.size() / 2);
            }
        }
    }

    @Test
    void theEmergencyCardIsOnePage() throws Exception {
        for (DemoBook demo : DemoBook.all().values()) {
            // A sister's book is laid out for this alone.
            boolean whole = DemoFleet.fewest().contains(demo.unit().id());
            try (Read book =
                    new Read(whole ? demo.book(Paper.A4, Printed.CLEAR) : demo.third(0, Paper.A4, Printed.CLEAR))) {
                assertThat(book.texts().get(1)).contains("Ways out and help on board");
                assertThat(book.texts().get(2)).contains("Contents");
            }
        }
    }

    @Test
    void theSameIsPrintedWhereverItIsLaidOut() {
        DemoBook demo = DemoBook.of("redpoll");
        String here = new Book(DemoBook.means()).filled(demo.renters(), demo.media(), Paper.A4, Printed.CLEAR);
        byte[] laid = demo.third(1, Paper.A4, Printed.CLEAR);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String away : List.of("ar-EG", "tr-TR", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(away));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));

                assertThat(new Book(DemoBook.means()).filled(demo.renters(), demo.media(), Paper.A4, Printed.CLEAR))
                        .isEqualTo(here);
                assertThat(demo.third(1, Paper.A4, Printed.CLEAR)).isEqualTo(laid);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    /** Libraries beside the program bring writers of XML of their own, which set spaces otherwise. */
    @Test
    void theSameIsPrintedWhateverWritesXml() {
        String key = "javax.xml.transform.TransformerFactory";
        DemoBook demo = DemoBook.of("redpoll");
        Map<String, byte[]> first = demo.files(new Cards(DemoBook.means()));
        String before = System.getProperty(key);
        try {
            for (String writer : List.of(
                    "com.sun.org.apache.xalan.internal.xsltc.trax.TransformerFactoryImpl",
                    "net.sf.saxon.TransformerFactoryImpl")) {
                System.setProperty(key, writer);

                demo.files(new Cards(DemoBook.means()))
                        .forEach((path, bytes) ->
                                assertThat(bytes).as(path + " by " + writer).isEqualTo(first.get(path)));
            }
        } finally {
            if (before == null) {
                System.clearProperty(key);
            } else {
                System.setProperty(key, before);
            }
        }
    }

    /** A thing that is quoted on many pages is printed once: no long sentence stands in a book twice by quoting. */
    @Test
    void whatIsQuotedIsPrintedOnce() throws Exception {
        DemoBook demo = DemoBook.of("whimbrel");
        try (Read book = new Read(demo.book(Paper.A4, Printed.CLEAR))) {
            String all = String.join(" ", book.texts()).replaceAll("\\s+", " ");
            Set<String> twice = new HashSet<>();
            for (Page page : demo.renters().pages()) {
                if (page.kind() == PageKind.QUESTION) {
                    String answer = PlainText.of(page).findFirst().orElse("");
                    if (answer.length() > 40 && all.indexOf(answer) != all.lastIndexOf(answer)) {
                        twice.add(answer);
                    }
                }
            }
            assertThat(twice).isEmpty();
        }
    }
}
