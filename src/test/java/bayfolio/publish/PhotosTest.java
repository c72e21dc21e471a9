package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
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
                text.replaceFirst("( +)make: rotary-disconnect\n", "$0$1photos: [switch-on]\n") + """
                        photos:
                          - id: switch-on
                            name: Switch on
                            file: on.jpg
                            alt: The handle stands in line with the mark.
                          - id: yard
                            name: Yard
                            file: yard.jpg
                            alt: Where the spare key hangs.
                            staff-only: yes
                        """);
        Files.write(unit.resolve("photos/on.jpg"), withCameraData(jpeg(2000, 1500)));
        Files.write(unit.resolve("photos/yard.jpg"), jpeg(10, 10));

        DemoFleet.of(root).publish(root.resolve("out"));
        web = root.resolve("out/web/whimbrel");
    }

    @Test
    void aPhotoStandsWhereItsThingIsWithWordsForIt() throws IOException {
        assertThat(Jsoup.parse(Files.readString(web.resolve("compartment/chassis-switch-locker.html")))
                        .select("img[src=../photos/switch-on.jpg]")
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

    /** An APP1 segment after the first two bytes of a JPEG file, as cameras write it. */
    private static byte[] withCameraData(byte[] jpeg) {
        byte[] data = "Exif\0\0PLACE 43.5 N 70.2 W".getBytes(StandardCharsets.ISO_8859_1);
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
