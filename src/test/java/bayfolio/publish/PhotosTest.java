package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.model.Unit;
import bayfolio.render.Media;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos of a coach on its pages. */
final class PhotosTest {
    @TempDir
    private Path root;

    private Path web;

    @BeforeEach
    void publishACoachWithPhotos() throws Exception {
        Path unit = root.resolve("units/whimbrel");
        Files.createDirectories(unit.resolve("photos"));
        Files.copy(Path.of("units/fleet.yaml"), root.resolve("units/fleet.yaml"));
        String text = Files.readString(Path.of("units/whimbrel/unit.yaml"));
        Files.writeString(
                unit.resolve("unit.yaml"),
                text.replaceFirst("( +)make: rotary-disconnect\n", "$0$1photos: [switch-on]\n")
                        .replace("\nphotos:\n", """

                        photos:
                          - id: switch-on
                            name: Switch on
                            file: on.jpg
                            alt: The handle stands in line with the mark.
                            pointers:
                              - across: 25 %
                                down: 50 %
                                thing: black-dump-valve
                          - id: yard
                            name: Yard
                            file: yard.jpg
                            alt: Where the spare key hangs.
                            staff-only: yes
                        """));
        for (String side : List.of("left-side.jpg", "right-side.jpg")) {
            Files.copy(
                    Path.of("units/whimbrel/photos", side),
                    unit.resolve("photos").resolve(side));
        }
        Files.write(unit.resolve("photos/on.jpg"), withCameraData(jpeg(2000, 1500)));
        Files.write(unit.resolve("photos/yard.jpg"), jpeg(10, 10));

        DemoFleet.of(root).publish(root.resolve("out"));
        web = root.resolve("out/web/whimbrel");
    }

    @Test
    void aPhotoStandsWhereItsThingIsWithWordsForIt() throws IOException {
        assertThat(Jsoup.parse(Files.readString(web.resolve("compartment/chassis-switch-locker.html")))
                        .select("img[src=../photos/switch-on-640.jpg]")
                        .eachAttr("alt"))
                .containsExactly("The handle stands in line with the mark.");
    }

    @Test
    void aPhotoIsNoLargerThanAPhoneShows() throws IOException {
        BufferedImage picture = ImageIO.read(web.resolve("photos/switch-on.jpg").toFile());

        assertThat(picture.getWidth()).isEqualTo(1280);
        assertThat(picture.getHeight()).isEqualTo(960);
    }

    @Test
    void aScreenTakesTheSizeThatItShows() throws IOException {
        Element image = Objects.requireNonNull(
                Jsoup.parse(Files.readString(web.resolve("compartment/chassis-switch-locker.html")))
                        .selectFirst(".picture img"));

        assertThat(image.attr("srcset"))
                .isEqualTo("../photos/switch-on-320.jpg 320w, ../photos/switch-on-640.jpg 640w, "
                        + "../photos/switch-on.jpg 1280w");
        assertThat(image.attr("width") + " x " + image.attr("height")).isEqualTo("1280 x 960");
        assertThat(image.hasAttr("loading")).as("the first is wanted at once").isFalse();
        for (int wide : new int[] {320, 640}) {
            assertThat(ImageIO.read(web.resolve("photos/switch-on-" + wide + ".jpg")
                                    .toFile())
                            .getWidth())
                    .isEqualTo(wide);
        }
    }

    @Test
    void whatIsPointedAtIsNumberedAndNamed() throws IOException {
        Element picture = Objects.requireNonNull(
                Jsoup.parse(Files.readString(web.resolve("compartment/chassis-switch-locker.html")))
                        .selectFirst(".picture"));

        assertThat(picture.select("text").eachText()).containsExactly("1");
        assertThat(picture.select("circle").eachAttr("cx")).containsExactly("320");
        assertThat(picture.select(".pointers a").eachText()).containsExactly("Black tank valve");
    }

    /** A camera that was held upright writes the picture lying down, and says so (Exif 2.3, orientation 6). */
    @Test
    void aPictureStandsUpright() throws Exception {
        Path file = root.resolve("lying.jpg");
        BufferedImage lying = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
        lying.setRGB(0, 0, 0xffffff);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(lying, "jpg", bytes);
        Files.write(file, turned(bytes.toByteArray()));
        Unit unit = DemoFleet.of(root).check().units().get(0);
        Files.copy(file, root.resolve("units/whimbrel/photos/on.jpg"), StandardCopyOption.REPLACE_EXISTING);

        Media.Photograph upright =
                Objects.requireNonNull(Media.of(unit, root).photographs().get("switch-on"));

        assertThat(upright.width() + " x " + upright.height()).isEqualTo("100 x 200");
        assertThat(upright.sizes()).as("never larger than it was taken").containsOnlyKeys(100);
    }

    @Test
    void anotherPictureIsAnotherEdition() throws Exception {
        String before = Files.readString(web.resolve("worker.js"));
        BufferedImage other = new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB);
        other.createGraphics().fillRect(100, 100, 500, 500);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(other, "jpg", bytes);
        Files.write(root.resolve("units/whimbrel/photos/on.jpg"), bytes.toByteArray());

        DemoFleet.of(root).publish(root.resolve("out"));

        assertThat(before).contains("\"photos/switch-on-640.jpg\"").doesNotContain("photos/switch-on.jpg");
        assertThat(Files.readString(root.resolve("out/web/whimbrel/worker.js"))).isNotEqualTo(before);
    }

    /** With an Exif segment of one entry, as the standard has it: tag 0x0112, a short, 6. */
    private static byte[] turned(byte[] jpeg) {
        return withSegment(jpeg, new byte[] {
            'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0,
            0
        });
    }

    @Test
    void whatTheCameraWroteIsGone() throws IOException {
        String bytes = Files.readString(web.resolve("photos/switch-on.jpg"), StandardCharsets.ISO_8859_1);

        assertThat(bytes).doesNotContain("Exif").doesNotContain("PLACE");
    }

    @Test
    void whatIsForStaffIsNotThere() throws IOException {
        assertThat(web.resolve("photos/yard.jpg")).doesNotExist();
        assertThat(Files.readString(web.resolve("on-board.html"))).doesNotContain("spare key");
    }

    private static byte[] jpeg(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
        return bytes.toByteArray();
    }

    private static byte[] withCameraData(byte[] jpeg) {
        return withSegment(jpeg, "Exif\0\0PLACE 43.5 N 70.2 W".getBytes(StandardCharsets.ISO_8859_1));
    }

    /** An APP1 segment after the first two bytes of a JPEG file, as cameras write it. */
    private static byte[] withSegment(byte[] jpeg, byte[] data) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, 2);
        bytes.write(0xFF);
        bytes.write(0xE1);
        bytes.write((data.length + 2) >> 8);
        bytes.write(data.length + 2);
        bytes.write(data, 0, data.length);
        bytes.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }
}
