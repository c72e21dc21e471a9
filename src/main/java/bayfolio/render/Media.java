package bayfolio.render;

import bayfolio.document.Audience;
import bayfolio.model.Film;
import bayfolio.model.Photo;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.coobird.thumbnailator.Thumbnails;

/**
 * Photos and films of a coach as they are given out: photos turned upright, in the sizes that screens show, and without
 * what the camera wrote into them, such as the place; films as they are.
 *
 * @param photographs by the id of the photo
 * @param films by the id of the film
 */
public record Media(Map<String, Photograph> photographs, Map<String, Footage> films) {
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

    /** @param captions of what is said in it, as WebVTT */
    public record Footage(byte[] film, Optional<byte[]> captions) {}

    public Media {
        photographs = new TreeMap<>(photographs);
        films = new TreeMap<>(films);
    }

    /** @param root the fleet folder */
    public static Media of(Unit unit, Path root) throws IOException {
        Map<String, Photograph> photographs = new TreeMap<>();
        for (Photo photo : unit.photos()) {
            photographs.put(photo.id(), photograph(root.resolve(photo.path())));
        }
        Map<String, Footage> films = new TreeMap<>();
        for (Film film : unit.films()) {
            Optional<Path> captions = film.path(Film.CAPTIONS).map(root::resolve);
            films.put(
                    film.id(),
                    new Footage(
                            Files.readAllBytes(root.resolve(film.path(Film.FILE).orElseThrow())),
                            captions.isPresent() ? Optional.of(Files.readAllBytes(captions.get())) : Optional.empty()));
        }
        return new Media(photographs, films);
    }

    /** All files that they are made of. */
    public static List<Path> sources(Unit unit, Path root) {
        return Stream.concat(
                        unit.photos().stream().map(Photo::path),
                        unit.films().stream()
                                .flatMap(film ->
                                        Stream.of(Film.FILE, Film.CAPTIONS).flatMap(it -> film.path(it).stream())))
                .map(root::resolve)
                .toList();
    }

    /** Those that a reader gets of a coach. */
    public Media seenBy(Unit unit, Audience reader) {
        Media seen = new Media(photographs, films);
        seen.photographs.keySet().retainAll(ids(unit.photos(), reader));
        seen.films.keySet().retainAll(ids(unit.films(), reader));
        return seen;
    }

    private static List<String> ids(List<? extends Thing> all, Audience reader) {
        return all.stream()
                .filter(each -> reader == Audience.STAFF || !each.forStaff())
                .map(Thing::id)
                .toList();
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
                    .outputQuality(0.62)
                    .toOutputStream(bytes);
            sizes.put(wide, bytes.toByteArray());
        }
        int wide = sizes.lastKey();
        return new Photograph(
                wide, (int) Math.max(1, Math.round(picture.getHeight() * (wide / (double) picture.getWidth()))), sizes);
    }
}
