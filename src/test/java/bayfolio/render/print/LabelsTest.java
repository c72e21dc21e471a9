package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.render.Printing;
import bayfolio.render.web.WebSite;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.ChecksumException;
import com.google.zxing.DecodeHintType;
import com.google.zxing.FormatException;
import com.google.zxing.LuminanceSource;
import com.google.zxing.NotFoundException;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

/** Labels as they come out of a printer: their codes are read by another library than the one that drew them. */
class LabelsTest {
    private static final int DOTS = 300;
    private static final double MILLIMETER = DOTS / 25.4;

    private static final Map<String, UnaryOperator<BufferedImage>> HARM = new TreeMap<>(Map.of(
            "as it is", it -> it,
            "blurred", LabelsTest::blurred,
            "turned", LabelsTest::turned,
            "blotted in its middle", it -> blotted(it, 0.34, 0.34),
            "blotted at its left", it -> blotted(it, 0.02, 0.34),
            "blotted above", it -> blotted(it, 0.34, 0.02)));

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#looked")
    void eachCodeLeadsToTheThingBesideIt(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        Set<String> expected = new TreeSet<>();
        demo.staff()
                .walk()
                .filter(Content.Label.class::isInstance)
                .map(Content.Label.class::cast)
                .filter(label -> label.thing().target().written().startsWith("compartment:"))
                .forEach(label -> expected.add(label.address()));
        Stock stock = Stock.on(Printed.at(demo.staff()));

        Map<String, String> codes = codes(demo, new Labels(DemoBook.means()), Printed.DOOR_LABELS, stock, 1);

        assertThat(new TreeSet<>(codes.values())).isEqualTo(expected);
        assertThat(codes.values()).allMatch(address -> address.matches("HTTPS://[A-Z.]+/L/[A-Z]+/[A-Z0-9-]+"));
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#looked")
    void switchesHaveLabelsWithBothStates(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        Labels labels = new Labels(DemoBook.means());
        String folder = unit + "/print/switch-labels/";

        Map<String, String> codes = codes(demo, labels, Printed.SWITCH_LABELS, Stock.on(Printed.at(demo.staff())), 1);

        Map<String, byte[]> drawings = new TreeMap<>(demo.files(labels));
        drawings.keySet().removeIf(path -> !path.startsWith(folder));
        assertThat(codes.values()).hasSizeGreaterThan(15);
        if (unit.equals("redpoll")) {
            assertThat(codes.values()).contains("HTTPS://HANDBOOK.HOLLINBAY.EXAMPLE/L/REDPOLL/HOUSE-BATTERY-SWITCH");
        }
        // Each that is drawn is on a sheet, and has both of its states.
        assertThat(codes.values().stream().map(address -> folder + address.replaceFirst(".*/", "") + ".svg"))
                .containsExactlyInAnyOrderElementsOf(drawings.keySet());
        drawings.forEach((path, bytes) -> assertThat(new String(bytes, StandardCharsets.UTF_8))
                .as(path)
                .containsPattern(">(ON|OPEN)<")
                .containsPattern(">(OFF|SHUT)<")
                .contains("role=\"group\""));
    }

    /** The label in each cell that a sheet has, by the number of the cell; each is read in six ways, harmed in five. */
    private static Map<String, String> codes(DemoBook demo, Labels labels, Printed print, Stock stock, int start)
            throws Exception {
        byte[] pdf = Objects.requireNonNull(demo.files(labels).get(print.path(demo.staff())), print.id());
        assertThat(labels.complaints()).isEmpty();
        Map<String, String> codes = new TreeMap<>();
        try (Read sheets = new Read(pdf)) {
            PDFRenderer renderer = new PDFRenderer(sheets.document());
            for (int sheet = 0; sheet < sheets.pages(); sheet++) {
                BufferedImage page = renderer.renderImageWithDPI(sheet, DOTS);
                offTheEdges(page, stock);
                for (int cell = 0; cell < stock.cells(); cell++) {
                    BufferedImage label = cut(page, stock.cell(cell), stock);
                    String name = sheet + "." + (cell + 1);
                    if (sheet == 0 && cell < start - 1) {
                        assertThat(dark(label)).as(name).isFalse();
                    } else if (dark(label)) {
                        Set<String> read = new TreeSet<>();
                        HARM.forEach((harm, done) -> read.add(decoded(done.apply(code(label)))
                                .orElseThrow(() -> new AssertionError(name + " " + harm + " is not read"))));
                        assertThat(read).as(name).hasSize(1);
                        codes.put(
                                String.format("%03d.%02d", sheet, cell),
                                read.iterator().next());
                    }
                }
            }
        }
        return codes;
    }

    /** Nothing leaves its cell; nothing is nearer to its edge than a sheet slips in a printer. */
    private static void offTheEdges(BufferedImage page, Stock stock) {
        BufferedImage rest = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = rest.createGraphics();
        pen.drawImage(page, 0, 0, null);
        pen.setColor(Color.WHITE);
        for (int cell = 0; cell < stock.cells(); cell++) {
            Stock.Cell at = stock.cell(cell);
            pen.fillRect(
                    (int) ((at.left() + 1) * MILLIMETER),
                    (int) ((at.top() + 1) * MILLIMETER),
                    (int) ((stock.width() - 2) * MILLIMETER),
                    (int) ((stock.height() - 2) * MILLIMETER));
        }
        pen.dispose();
        assertThat(dark(rest)).isFalse();
    }

    private static boolean dark(BufferedImage image) {
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                if ((image.getRGB(x, y) & 0xFF) < 0x80) {
                    return true;
                }
            }
        }
        return false;
    }

    private static BufferedImage cut(BufferedImage page, Stock.Cell at, Stock stock) {
        int x = (int) (at.left() * MILLIMETER);
        int y = (int) (at.top() * MILLIMETER);
        return page.getSubimage(
                x,
                y,
                Math.min(page.getWidth() - x, (int) (stock.width() * MILLIMETER)),
                Math.min(page.getHeight() - y, (int) (stock.height() * MILLIMETER)));
    }

    /** The code with what stands around it, as a phone is held over it. */
    private static BufferedImage code(BufferedImage label) {
        int side = Math.min(label.getHeight(), (int) (48 * MILLIMETER));
        return label.getSubimage(label.getWidth() - side, 0, side, side);
    }

    private static Optional<String> decoded(BufferedImage image) {
        LuminanceSource source = new BufferedImageLuminanceSource(image);
        Map<DecodeHintType, Object> hints = new EnumMap<>(DecodeHintType.class);
        hints.put(DecodeHintType.TRY_HARDER, true);
        hints.put(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE));
        try {
            Result result = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints);
            Object level =
                    Objects.requireNonNull(result.getResultMetadata()).get(ResultMetadataType.ERROR_CORRECTION_LEVEL);
            assertThat(level).isIn("Q", "H");
            return Optional.of(result.getText());
        } catch (NotFoundException | ChecksumException | FormatException e) {
            return Optional.empty();
        }
    }

    /** By half a module. */
    private static BufferedImage blurred(BufferedImage image) {
        int size = (int) Math.round(0.8 / 2 * MILLIMETER) | 1;
        float[] weights = new float[size * size];
        Arrays.fill(weights, 1f / weights.length);
        BufferedImage plain = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        plain.createGraphics().drawImage(image, 0, 0, null);
        return new ConvolveOp(new Kernel(size, size, weights)).filter(plain, null);
    }

    /** By 15 degrees, as a label sticks that was put on in a hurry. */
    private static BufferedImage turned(BufferedImage image) {
        int side = image.getWidth() + image.getHeight();
        BufferedImage turned = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = turned.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, side, side);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(15), side / 2.0, side / 2.0);
        pen.drawImage(image, (side - image.getWidth()) / 2, (side - image.getHeight()) / 2, null);
        pen.dispose();
        return turned;
    }

    /**
     * A tenth of the code.
     *
     * @param x of its left edge, of the width of the code
     */
    private static BufferedImage blotted(BufferedImage image, double x, double y) {
        BufferedImage blotted = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = blotted.createGraphics();
        pen.drawImage(image, 0, 0, null);
        // The code is at the upper right, 30 mm wide within its quiet zone.
        double side = 30;
        double left = image.getWidth() / MILLIMETER - 3 - 3.64 - side;
        double edge = Math.sqrt(0.10) * side;
        pen.setColor(new Color(0x30, 0x28, 0x20));
        pen.fillRect(
                (int) ((left + side * x) * MILLIMETER),
                (int) ((3 + 3.64 + side * y) * MILLIMETER),
                (int) (edge * MILLIMETER),
                (int) (edge * MILLIMETER));
        pen.dispose();
        return blotted;
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4-4", "a4-8", "letter-6", "roll-4x6"})
    void everyStockIsFilledFromTheCellThatIsStillFree(String name) throws Exception {
        Stock stock = Stock.named(name);
        int start = Math.min(3, stock.cells());
        DemoBook demo = DemoBook.of("dunlin");
        Labels labels = new Labels(DemoBook.means(new Printing(Optional.empty(), Optional.of(name), start)));

        Map<String, String> codes = codes(demo, labels, Printed.DOOR_LABELS, stock, start);

        assertThat(codes.keySet().iterator().next()).isEqualTo(String.format("000.%02d", start - 1));
    }

    /** What has no room on a label is told, with the label, and nothing is given out. */
    @Test
    void aLabelThatIsTooSmallIsTold() {
        DemoBook demo = DemoBook.of("dunlin");
        Labels labels = new Labels(DemoBook.means(new Printing(Optional.empty(), Optional.of("letter-30"), 1)));

        demo.files(labels);

        assertThat(labels.complaints())
                .isNotEmpty()
                .allMatch(it ->
                        it.message().contains("`letter-30`") && it.message().contains("--label-stock"));
    }

    /** Geometry is data: nothing of it lies outside of its sheet, no two cells lie over each other. */
    @Test
    void theSheetsAreLaidOutAsTheyAreSold() {
        for (String name : Stock.names()) {
            Stock stock = Stock.named(name);
            Stock.Cell last = stock.cell(stock.cells() - 1);
            assertThat(last.left() + stock.width()).as(name).isLessThanOrEqualTo(stock.pageWidth() + 0.01);
            assertThat(last.top() + stock.height()).as(name).isLessThanOrEqualTo(stock.pageHeight() + 0.01);
            assertThat(stock.across()).as(name).isGreaterThanOrEqualTo(stock.width());
            assertThat(stock.down()).as(name).isGreaterThanOrEqualTo(stock.height());
            // What is left at both ends is the same, as on every sheet that may lie in a tray either way.
            assertThat(stock.pageWidth() - last.left() - stock.width())
                    .as(name)
                    .isBetween(stock.left() - 0.7, stock.left() + 0.7);
            assertThat(stock.pageHeight() - last.top() - stock.height())
                    .as(name)
                    .isBetween(stock.top() - 0.7, stock.top() + 0.7);
        }
    }

    @Test
    void eachAddressOnALabelIsAPageThatLeadsOn(@TempDir Path out) throws Exception {
        DemoFleet.of(Path.of("")).publish(out, "whimbrel");
        Path web = out.resolve("web");
        Handbook handbook = DemoBook.of("whimbrel").renters();
        List<Content.Label> labels = handbook.walk()
                .filter(Content.Label.class::isInstance)
                .map(Content.Label.class::cast)
                .toList();

        assertThat(labels).hasSizeGreaterThan(40);
        Set<String> addresses = new TreeSet<>();
        for (Content.Label label : labels) {
            String path = label.address().replace("HTTPS://HANDBOOK.HOLLINBAY.EXAMPLE/", "");
            assertThat(path).startsWith(WebSite.shortAddresses("whimbrel"));
            assertThat(addresses.add(path)).as(path).isTrue();
            Path led = web.resolve(path).resolve("index.html");
            String href = Objects.requireNonNull(
                            Jsoup.parse(Files.readString(led)).selectFirst("main a"))
                    .attr("href");
            Path target = Objects.requireNonNull(led.getParent())
                    .resolve(href.replaceFirst("#.*", ""))
                    .normalize();
            assertThat(target).exists();
            assertThat(Jsoup.parse(Files.readString(target)).text())
                    .contains(label.thing().plain());
        }
    }

    /** A drawing by itself is read by any program: it is XML, in millimeters, with its words for those who cannot see it. */
    @Test
    void eachLabelIsADrawingByItself() throws Exception {
        DemoBook demo = DemoBook.of("whimbrel");
        List<String> drawings = new ArrayList<>();
        for (Map.Entry<String, byte[]> file :
                demo.files(new Labels(DemoBook.means())).entrySet()) {
            if (file.getKey().endsWith(".svg")) {
                org.w3c.dom.Element svg = DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(new String(file.getValue(), StandardCharsets.UTF_8))))
                        .getDocumentElement();
                assertThat(svg.getAttribute("width")).endsWith("mm");
                assertThat(svg.getAttribute("aria-label")).contains("HTTPS://");
                drawings.add(file.getKey());
            }
        }
        assertThat(drawings).contains("whimbrel/print/door-labels/L6.svg").hasSizeGreaterThan(30);
    }
}
