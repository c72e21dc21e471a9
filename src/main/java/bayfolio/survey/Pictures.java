package bayfolio.survey;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;

/** Pictures from a phone, made anew: upright, and without what the camera wrote into them, such as the place. */
final class Pictures {
    /** A file of a few bytes may claim to be so large that it fills all memory. */
    private static final int MOST_POINTS = 40_000_000;

    private static final int LONGEST = 2048;

    private Pictures() {}

    /** As a JPEG file; empty where it is no picture, or one that is too large. */
    static Optional<byte[]> clean(byte[] picture) {
        try {
            if (points(picture) > MOST_POINTS) {
                return Optional.empty();
            }
            BufferedImage upright =
                    Thumbnails.of(new ByteArrayInputStream(picture)).scale(1).asBufferedImage();
            double scale = Math.min(1, LONGEST / (double) Math.max(upright.getWidth(), upright.getHeight()));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Thumbnails.of(upright)
                    .scale(scale)
                    .imageType(BufferedImage.TYPE_INT_RGB)
                    .outputFormat("jpg")
                    .outputQuality(0.85)
                    .toOutputStream(bytes);
            return Optional.of(bytes.toByteArray());
        } catch (IOException | IllegalArgumentException notAPicture) {
            return Optional.empty();
        }
    }

    private static long points(byte[] picture) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(picture))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("no picture");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                return (long) reader.getWidth(0) * reader.getHeight(0);
            } finally {
                reader.dispose();
            }
        }
    }
}
