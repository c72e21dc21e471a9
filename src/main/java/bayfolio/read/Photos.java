package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Photo;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageInputStream;

/** Looks whether the photos that a description names are there and are pictures. */
final class Photos {
    /** More than cameras mostly take; all of them are held in memory, each in four bytes. */
    private static final long MOST_POINTS = 64_000_000;

    private Photos() {}

    /** Each lies beside the description that names it, the coach's own or its model's. */
    static void check(Folder folder, Unit unit, Consumer<Finding> findings) {
        unit.facts().ifRead(Unit.PHOTOS).stream()
                .flatMap(photos -> photos.value().stream())
                .flatMap(photo -> photo.value().facts().ifRead(Photo.FILE).stream())
                .forEach(file -> check(folder, file.at().file().folder() + "/photos", file, findings));
    }

    private static void check(Folder folder, String path, Located<String> file, Consumer<Finding> findings) {
        Path picture = folder.root().resolve(path).resolve(file.value());
        if (leadsOut(folder, picture)) {
            findings.accept(Finding.error(
                            "unreadable-photo",
                            file.at(),
                            "`" + file.value() + "` is a link that leads out of the fleet folder")
                    .mend("Put the picture itself there."));
            return;
        }
        if (!Files.isRegularFile(picture)) {
            List<String> there = folder.files(path, "");
            findings.accept(
                    Finding.error("missing-photo", file.at(), "there is no file `" + path + "/" + file.value() + "`")
                            .near(NearNames.to(file.value(), there))
                            .mend("Put the picture there, or take the photo out."));
            return;
        }
        Optional<Dimension> size = size(picture);
        if (size.isEmpty()) {
            findings.accept(Finding.error(
                            "unreadable-photo", file.at(), "`" + file.value() + "` is no picture that can be read")
                    .mend("Save it as JPEG or PNG."));
        } else if ((long) size.get().width * size.get().height > MOST_POINTS) {
            findings.accept(Finding.error(
                            "photo-too-large",
                            file.at(),
                            "`" + file.value() + "` has " + size.get().width + " x " + size.get().height
                                    + " points; the most that is read is " + MOST_POINTS / 1_000_000 + " million")
                    .mend("Save it smaller; a page shows no more than 1,280 points in a row."));
        } else if (tellsLocation(picture)) {
            findings.accept(Finding.error(
                            "photo-with-location",
                            file.at(),
                            "`" + file.value() + "` tells where it was taken, in data that no reader sees")
                    .mend("Save it again without the data of the camera."));
        }
    }

    /** Of a picture whose data cannot be read nobody else learns a place either. */
    private static boolean tellsLocation(Path picture) {
        try {
            Metadata metadata = ImageMetadataReader.readMetadata(picture.toFile());
            return metadata.getDirectoriesOfType(GpsDirectory.class).stream()
                            .anyMatch(it -> it.containsTag(GpsDirectory.TAG_LATITUDE))
                    || metadata.getDirectoriesOfType(XmpDirectory.class).stream()
                            .flatMap(it -> it.getXmpProperties().keySet().stream())
                            .anyMatch(name -> name.endsWith("GPSLatitude"));
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            return false;
        }
    }

    /** As the head of the file says, which alone is read; empty where no decoder takes it. */
    private static Optional<Dimension> size(Path picture) {
        try (ImageInputStream in = ImageIO.createImageInputStream(picture.toFile())) {
            if (in == null) {
                return Optional.empty();
            }
            var readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            var reader = readers.next();
            reader.setInput(in);
            return Optional.of(new Dimension(reader.getWidth(0), reader.getHeight(0)))
                    .filter(size -> size.width > 0 && size.height > 0);
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static boolean leadsOut(Folder folder, Path picture) {
        try {
            return Files.exists(picture) && !folder.holds(picture);
        } catch (IOException e) {
            return false;
        }
    }
}
