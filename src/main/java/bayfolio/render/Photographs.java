package bayfolio.render;

import bayfolio.document.Audience;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import net.coobird.thumbnailator.Thumbnails;

/**
 * Photos of a coach as they are given out: turned upright, in the sizes that screens show, and without what the camera
 * wrote into them, such as the place.
 *
 * @param all by the id of the photo
 */
public record Photographs(Map<String, Photograph> all) {
    /** So wide that a phone of one, two or four dots to the pixel has a point for each dot. */
    private static final int[] WIDTHS = {320, 640, 1280};

    /**
     * @param width of the largest, in points
     * @param height of the largest
     * @param sizes JPEG files by their width; the largest is the last
     */
    public record Photograph(int width, int height, SortedMap<Integer, byte[]> sizes) {
        /** The file name of a size; the largest has the plain name. */
        public String file(String photo, int size) {
            return photo + (size == width ? "" : "-" + size) + ".jpg";
        }

        /** The size that a phone keeps: one point to a dot on most of them. */
        public int kept() {
            return sizes.headMap(641).isEmpty() ? width : sizes.headMap(641).lastKey();
        }
    }

    public Photographs {
        all = new TreeMap<>(all);
    }

    /** @param root the fleet folder */
    public static Photographs of(Unit unit, Path root) throws IOException {
        Map<String, Photograph> all = new TreeMap<>();
        for (Photo photo : unit.photos()) {
            all.put(photo.id(), photograph(file(unit, photo, root)));
        }
        return new Photographs(all);
    }

    /** Where a photo is as it was taken. */
    public static Path file(Unit unit, Photo photo, Path root) {
        return root.resolve(unit.folder()).resolve("photos").resolve(photo.file());
    }

    /** Those that a reader gets of a coach. */
    public Photographs seenBy(Unit unit, Audience reader) {
        Map<String, Photograph> seen = new TreeMap<>(all);
        seen.keySet()
                .retainAll(unit.photos().stream()
                        .filter(photo -> reader == Audience.STAFF || !photo.forStaff())
                        .map(Photo::id)
                        .toList());
        return new Photographs(seen);
    }

    private static Photograph photograph(Path file) throws IOException {
        BufferedImage picture = Thumbnails.of(file.toFile()).scale(1).asBufferedImage();
        SortedMap<Integer, byte[]> sizes = new TreeMap<>();
        double longest = Math.max(picture.getWidth(), picture.getHeight());
        for (int width : WIDTHS) {
            // A tall picture is no taller than a wide one is wide.
            double scale = Math.min(1.0, width / longest);
            int wide = (int) Math.max(1, Math.round(picture.getWidth() * scale));
            int high = (int) Math.max(1, Math.round(picture.getHeight() * scale));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Thumbnails.of(picture)
                    .forceSize(wide, high)
                    .imageType(BufferedImage.TYPE_INT_RGB)
                    .outputFormat("jpg")
                    .outputQuality(0.78)
                    .toOutputStream(bytes);
            sizes.put(wide, bytes.toByteArray());
        }
        int wide = sizes.lastKey();
        return new Photograph(
                wide, (int) Math.max(1, Math.round(picture.getHeight() * (wide / (double) picture.getWidth()))), sizes);
    }
}
