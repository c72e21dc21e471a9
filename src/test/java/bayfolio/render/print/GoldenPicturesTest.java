package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Five printed pages as they look, kept as pictures; {@code -Dgolden=write} draws them anew. Letters may be smoothed
 * otherwise elsewhere: a few dots may differ.
 */
class GoldenPicturesTest {
    private static final Path KEPT = Path.of("src/test/resources/bayfolio/print");
    private static final int DOTS = 50;

    /** Of all dots, those that may be lighter or darker by more than a quarter. */
    private static final double TOLERANCE = 0.004;

    @ParameterizedTest
    @CsvSource({"cover, 1", "emergency-card, 2", "steps, 12", "door-labels, 1", "damage-sheet, 1"})
    void itLooksAsItDid(String name, int page) throws Exception {
        DemoBook demo = DemoBook.of("whimbrel");
        byte[] pdf = switch (name) {
            case "door-labels" -> file(demo.files(new Labels(DemoBook.means())), "door-labels");
            case "damage-sheet" -> file(demo.files(new Sheets(DemoBook.means())), "damage");
            default -> demo.book(Paper.LETTER, Printed.CLEAR);
        };
        BufferedImage drawn;
        try (Read read = new Read(pdf)) {
            drawn = new PDFRenderer(read.document()).renderImageWithDPI(page - 1, DOTS, ImageType.GRAY);
        }
        Path file = KEPT.resolve(name + ".png");
        if (System.getProperty("golden", "").equals("write")) {
            Files.createDirectories(KEPT);
            ImageIO.write(drawn, "png", file.toFile());
        }

        assertThat(differing(ImageIO.read(file.toFile()), drawn)).isLessThan(TOLERANCE);
    }

    private static byte[] file(Map<String, byte[]> files, String name) {
        return Objects.requireNonNull(files.get("whimbrel/print/" + name + ".pdf"));
    }

    private static double differing(BufferedImage one, BufferedImage other) throws IOException {
        assertThat(other.getWidth()).isEqualTo(one.getWidth());
        assertThat(other.getHeight()).isEqualTo(one.getHeight());
        int differing = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int by = (one.getRGB(x, y) & 0xFF) - (other.getRGB(x, y) & 0xFF);
                differing += Math.abs(by) > 64 ? 1 : 0;
            }
        }
        return differing / (double) (one.getWidth() * one.getHeight());
    }

    /** Nothing that is printed says anything by color alone: there is none. */
    @ParameterizedTest
    @CsvSource({"1", "2", "12", "200"})
    void itIsBlackAndWhite(int page) throws Exception {
        try (Read read = new Read(DemoBook.of("whimbrel").book(Paper.LETTER, Printed.CLEAR))) {
            BufferedImage drawn = new PDFRenderer(read.document()).renderImageWithDPI(page - 1, DOTS);
            for (int y = 0; y < drawn.getHeight(); y++) {
                for (int x = 0; x < drawn.getWidth(); x++) {
                    int rgb = drawn.getRGB(x, y);
                    assertThat((rgb >> 16 & 0xFF) - (rgb & 0xFF)).isBetween(-6, 6);
                    assertThat((rgb >> 8 & 0xFF) - (rgb & 0xFF)).isBetween(-6, 6);
                }
            }
        }
    }
}
