package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.render.Media;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What no fleet should write and one does: it is laid out, and nothing of it is cut off. */
class BadInputOnPaperTest {
    private static final DemoBook DEMO = DemoBook.small();

    /** Of a page of A4, in millimeters, without the margins. */
    private static final double RIGHT = 210 - 16;

    @Test
    void aTitleOfTwoHundredLettersIsWrapped() throws Exception {
        String title = "Empty the tanks of the coach with the long name in the yard behind the ferry "
                        .repeat(3)
                        .substring(0, 199)
                + "!";

        try (Read book = book(title, List.of())) {
            assertThat(text(book)).contains(title);
            inside(book);
        }
    }

    @Test
    void aWordOfTwoHundredLettersIsBroken() throws Exception {
        String word = "Abwassertankentleerungsventil".repeat(7).substring(0, 200);

        try (Read book = book(word, List.of())) {
            assertThat(text(book).replace(" ", "")).contains(word);
            inside(book);
        }
    }

    @Test
    void aTableOfThreeHundredRowsHasItsHeadOnEachPage() throws Exception {
        List<List<List<Inline>>> rows = IntStream.range(0, 300)
                .mapToObj(row -> List.of(words("Row " + row), words("What stands in it"), words(row + " lb")))
                .toList();
        Block table = new Block.Table(List.of(words("Headmost"), words("What"), words("Weight")), rows);

        try (Read book = book("A long table", List.of(table))) {
            List<String> texts = book.texts();
            int pages = 0;
            for (String text : texts) {
                if (text.contains("What stands in it")) {
                    pages++;
                    assertThat(text.indexOf("Headmost")).isBetween(0, text.indexOf("What stands in it"));
                }
            }
            assertThat(pages).isGreaterThan(5);
            for (int row = 0; row < 300; row++) {
                String one = "Row " + row + " ";
                assertThat(texts.stream()
                                .filter(text -> text.replaceAll("\\s+", " ").contains(one)))
                        .as(one)
                        .hasSize(1);
            }
            inside(book);
        }
    }

    @Test
    void aStepThatIsLongerThanAPageGoesOn() throws Exception {
        List<Block> act = IntStream.range(0, 120)
                .<Block>mapToObj(number -> new Block.Paragraph(words("Line " + number + " of a step without an end.")))
                .toList();

        try (Read book = steps(act)) {
            String all = text(book);
            for (int number = 0; number < 120; number++) {
                assertThat(all).contains("Line " + number + " of a step");
            }
            inside(book);
        }
    }

    @Test
    void textFromRightToLeftStandsInItsOrder() throws Exception {
        String hebrew = "\u05e1\u05d2\u05e8\u05d5 \u05d0\u05ea \u05d4\u05d1\u05e8\u05d6";
        String arabic = "\u0623\u063a\u0644\u0642 \u0627\u0644\u0635\u0645\u0627\u0645";

        try (Read book = book(
                "Two languages",
                List.of(
                        new Block.Paragraph(words("The plate says " + hebrew + " 12 V.")),
                        new Block.Paragraph(words("Or it says " + arabic + "."))))) {
            // The first letter stands at the right of the last one.
            List<Read.Letter> letters = book.letters();
            double first = left(letters, "\u05e1");
            double last = left(letters, "\u05d6");
            assertThat(first).isGreaterThan(last);
            assertThat(letters.stream().map(Read.Letter::letter).collect(Collectors.joining()))
                    .contains("12V");
            // Letters of Arabic are joined: they have forms of their own in their places.
            assertThat(letters).anyMatch(letter -> letter.letter().codePointAt(0) >= 0x600);
            inside(book);
        }
    }

    private static double left(List<Read.Letter> letters, String letter) {
        return letters.stream()
                .filter(each -> each.letter().equals(letter))
                .findFirst()
                .orElseThrow()
                .left();
    }

    @Test
    void aPhotoThatIsWiderThanThePageIsMadeSmaller() throws Exception {
        BufferedImage wide = new BufferedImage(6000, 900, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = wide.createGraphics();
        pen.setColor(Color.GRAY);
        pen.fillRect(0, 0, 6000, 900);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(wide, "jpg", bytes);
        Media media = new Media(
                Map.of("wide", new Media.Photograph(6000, 900, new TreeMap<>(Map.of(6000, bytes.toByteArray())))),
                Map.of());
        Page page = procedure();
        Stamp stamp = page.stamp().child("wide");

        byte[] pdf = laid(
                with(page, List.of(new Content.Picture(stamp, "wide", "A wide yard", List.of())), page.sections()),
                media);

        try (Read book = new Read(pdf)) {
            int[] seen = {0};
            book.drawn((number, left, right) -> {
                assertThat(left).isGreaterThanOrEqualTo(15.5);
                assertThat(right).isLessThanOrEqualTo(RIGHT + 0.5);
                seen[0] += right - left > 165 ? 1 : 0;
            });
            assertThat(seen[0]).isPositive();
        }
    }

    /** A letter that is not there is told; nothing else stands in its place. */
    @Test
    void aLetterThatNoFaceHasIsTold() {
        Book book = new Book(DemoBook.means());
        Page page = procedure();

        Pdf pdf =
                book.laid(replaced(page, titled(page, "Fill \ud83d\udeb0 up")), DEMO.media(), Paper.A4, Printed.CLEAR);

        assertThat(pdf.pages()).isZero();
        assertThat(book.complaints()).hasSize(1);
        assertThat(book.complaints().get(0).message()).contains("U+1F6B0");
    }

    private static Read book(String title, List<Block> blocks) throws Exception {
        Page page = procedure();
        Stamp stamp = page.stamp().child("bad");
        List<Content> opening = blocks.isEmpty() ? page.opening() : List.of(new Content.Text(stamp, blocks));
        return new Read(laid(with(titled(page, title), opening, page.sections()), DEMO.media()));
    }

    private static Read steps(List<Block> act) throws Exception {
        Page page = procedure();
        Stamp section = page.stamp().child("long");
        Stamp list = section.child("list");
        Content.Steps.Step step = new Content.Steps.Step(
                list.child("step"), List.of(), List.of(), act, false, List.of(), List.of(), List.of(), List.of());
        Content steps = new Content.Steps(
                list, false, List.of(new Content.Steps.Part(list.child("part"), Optional.empty(), List.of(step))));
        return new Read(laid(
                with(page, page.opening(), List.of(Section.of(section, "Long", List.of(steps)))), DEMO.media()));
    }

    private static byte[] laid(Page instead, Media media) {
        Book book = new Book(DemoBook.means());
        byte[] pdf = book.laid(replaced(procedure(), instead), all(media), Paper.A4, Printed.CLEAR)
                .bytes();
        assertThat(book.complaints()).isEmpty();
        return pdf;
    }

    private static Media all(Media media) {
        Map<String, Media.Photograph> photographs = new TreeMap<>(DEMO.media().photographs());
        photographs.putAll(media.photographs());
        return new Media(photographs, DEMO.media().films());
    }

    private static Page procedure() {
        return DEMO.renters().pages().stream()
                .filter(page -> page.kind() == PageKind.PROCEDURE)
                .findFirst()
                .orElseThrow();
    }

    private static Page titled(Page page, String title) {
        return new Page(page.stamp(), page.kind(), page.home(), title, page.opening(), page.sections(), page.urgent());
    }

    private static Page with(Page page, List<Content> opening, List<Section> sections) {
        return new Page(page.stamp(), page.kind(), page.home(), page.title(), opening, sections, page.urgent());
    }

    /** The handbook with another page in its place, and no more of it than is quickly laid out. */
    private static Handbook replaced(Page page, Page other) {
        Handbook whole = DEMO.renters();
        return new Handbook(
                whole.unit(),
                whole.cover(),
                whole.language(),
                whole.parts().stream()
                        .map(part -> new Handbook.Part(
                                part.id(),
                                part.pages().stream()
                                        .map(each -> each.id().equals(page.id()) ? other : each)
                                        .toList()))
                        .toList(),
                whole.sketches()
                        .collect(Collectors.groupingBy(
                                it -> DEMO.renters().pages().get(0).home())),
                Map.of());
    }

    private static List<Inline> words(String text) {
        return List.of(new Inline.Text(text));
    }

    private static String text(Read book) throws Exception {
        return String.join(" ", book.texts()).replaceAll("\\s+", " ");
    }

    /** No letter stands beyond the margins of its page. */
    private static void inside(Read book) throws Exception {
        List<String> outside = new ArrayList<>();
        for (Read.Letter letter : book.letters()) {
            if (letter.left() < 15 || letter.right() > RIGHT + 10.5 || letter.top() < 8 || letter.bottom() > 292) {
                outside.add(letter.toString());
            }
        }
        assertThat(outside).isEmpty();
    }
}
