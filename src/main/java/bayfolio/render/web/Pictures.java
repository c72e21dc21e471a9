package bayfolio.render.web;

import bayfolio.document.Audience;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** The paths of the photos that a reader gets. */
    public static Set<String> paths(Unit unit, Audience reader) {
        return photos(unit, reader).map(photo -> path(unit, photo)).collect(Collectors.toSet());
    }

    private static Stream<Photo> photos(Unit unit, Audience reader) {
        return unit.photos().stream().filter(photo -> reader == Audience.STAFF || !photo.forStaff());
    }

    private static String path(Unit unit, Photo photo) {
        return path(unit, photo.id());
    }

    /** The path of a photo below the root. */
    public static String path(Unit unit, String photo) {
        return unit.id() + "/" + path(photo);
    }

    /** @param folder where the photos of the coach are */
    public static Map<String, byte[]> of(Unit unit, Path folder, Audience reader) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (Photo photo : photos(unit, reader).toList()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            BufferedImage picture = Thumbnails.of(folder.resolve(photo.file()).toFile())
                    .scale(1)
                    .asBufferedImage();
            int longest = Math.max(picture.getWidth(), picture.getHeight());
            Thumbnails.of(picture)
                    .scale(Math.min(1.0, (double) WIDEST / longest))
                    .imageType(BufferedImage.TYPE_INT_RGB)
                    .outputFormat("jpg")
                    .outputQuality(0.8)
                    .toOutputStream(bytes);
            files.put(path(unit, photo), bytes.toByteArray());
        }
        return files;
    }
}
