package bayfolio.render.web;

import bayfolio.handbook.Copy;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import net.coobird.thumbnailator.Thumbnails;

/**
 * Photos of a coach as they go to the site: turned upright, no larger than a phone shows, and without what the camera
 * wrote into them, such as the place.
 */
public final class Pictures {
    private static final int WIDEST = 1280;

    private Pictures() {}

    /** Where a photo is, in the folder of its coach. */
    static String path(String photo) {
        return "photos/" + photo + ".jpg";
    }

    /** @param folder where the photos of the coach are */
    public static Map<String, byte[]> of(Unit unit, Path folder, Copy copy) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (Photo photo : unit.photos()) {
            if (copy == Copy.STAFF || !photo.forStaff()) {
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                BufferedImage picture = Thumbnails.of(
                                folder.resolve(photo.file()).toFile())
                        .scale(1)
                        .asBufferedImage();
                int longest = Math.max(picture.getWidth(), picture.getHeight());
                Thumbnails.of(picture)
                        .scale(Math.min(1.0, (double) WIDEST / longest))
                        .imageType(BufferedImage.TYPE_INT_RGB)
                        .outputFormat("jpg")
                        .outputQuality(0.8)
                        .toOutputStream(bytes);
                files.put(unit.id() + "/" + path(photo.id()), bytes.toByteArray());
            }
        }
        return files;
    }
}
