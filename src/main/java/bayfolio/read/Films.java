package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Chapter;
import bayfolio.model.Film;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.mov.metadata.QuickTimeMetadataDirectory;
import com.drew.metadata.mp4.Mp4Directory;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The films folder of a coach: its chapters, and whether the films that a description names are there and can be given out.
 *
 * @param path of the folder, below the fleet folder
 */
record Films(Folder folder, String path) {
    /** How a WebM file begins, and what it calls itself in its first bytes: RFC 8794, 11.2; WebM container guidelines. */
    private static final byte[] EBML = {0x1A, 0x45, (byte) 0xDF, (byte) 0xA3};

    /** More than anybody loads beside a coach by the night. */
    private static final long MOST_BYTES = 64_000_000;

    /** What the clocks of two programs make of one moment. */
    private static final double SAME = 0.25;

    /** The chapters in a file; empty where it is not there. */
    <E extends Described> Optional<List<Located<E>>> chapters(
            String file, Place at, Shape<E> shape, Consumer<Finding> findings) {
        return text(file, at, findings).map(it -> Cues.chapters(it, shape, findings));
    }

    private Optional<SourceFile> text(String file, Place at, Consumer<Finding> findings) {
        return there(new Located<>(file, at), true, findings)
                ? folder.text(path + "/" + file, findings)
                : Optional.empty();
    }

    /** What is written in the folder, by the names of the files. */
    Map<String, String> cues() {
        Map<String, String> cues = new TreeMap<>();
        for (String file : folder.files(path, ".vtt")) {
            folder.text(path + "/" + file, finding -> {}).ifPresent(it -> cues.put(file, it.text()));
        }
        return cues;
    }

    void check(Unit unit, Consumer<Finding> findings) {
        unit.facts().ifRead(Unit.FILMS).stream()
                .flatMap(films -> films.value().stream())
                .map(Located::value)
                .forEach(film -> check(film, findings));
    }

    private void check(Film film, Consumer<Finding> findings) {
        of(film, Film.CAPTIONS)
                .flatMap(file -> text(file.value(), file.at(), findings))
                .ifPresent(file -> Cues.of(file, findings));
        of(film, Film.FILE).filter(file -> there(file, false, findings)).ifPresent(file -> check(film, file, findings));
    }

    private static Optional<Located<String>> of(Film film, Key<String> key) {
        return film.facts().ifRead(key);
    }

    /** @param cues whether it holds cues, and no film */
    private boolean there(Located<String> file, boolean cues, Consumer<Finding> findings) {
        Path there = folder.root().resolve(path).resolve(file.value());
        if (Files.isRegularFile(there)) {
            return true;
        }
        List<String> alike = folder.files(path, "").stream()
                .filter(name -> name.endsWith(".vtt") == cues)
                .toList();
        findings.accept(Finding.error("missing-film", file.at(), "there is no file `" + path + "/" + file.value() + "`")
                .near(NearNames.to(file.value(), alike))
                .mend("Put it there, or take the film out."));
        return false;
    }

    private void check(Film film, Located<String> file, Consumer<Finding> findings) {
        Path there = folder.root().resolve(path).resolve(file.value());
        String name = "`" + file.value() + "`";
        try {
            if (!folder.holds(there)) {
                findings.accept(Finding.error(
                                "unreadable-film", file.at(), name + " is a link that leads out of the fleet folder")
                        .mend("Put the film itself there."));
            } else if (!shown(there)) {
                findings.accept(Finding.error("unreadable-film", file.at(), name + " is no film that phones show")
                        .mend("Save it as MP4 or WebM."));
            } else if (Files.size(there) > MOST_BYTES) {
                findings.accept(Finding.error(
                                "film-too-large",
                                file.at(),
                                name + " has " + Files.size(there) / 1_000_000
                                        + " million bytes; the most that is given out is " + MOST_BYTES / 1_000_000
                                        + " million")
                        .mend("Save it smaller, 720 lines high; a phone shows no more."));
            } else {
                Optional<Metadata> told = metadata(there);
                if (told.filter(Films::tellsLocation).isPresent()) {
                    findings.accept(Finding.error(
                                    "film-with-location",
                                    file.at(),
                                    name + " tells where it was taken, in data that no reader sees")
                            .mend("Save it again without the data of the camera."));
                }
                told.map(Films::seconds)
                        .filter(OptionalDouble::isPresent)
                        .ifPresent(seconds -> within(film, seconds.getAsDouble(), findings));
            }
        } catch (IOException e) {
            findings.accept(Finding.error("unreadable-film", file.at(), name + " cannot be read")
                    .mend("Save it as MP4 or WebM."));
        }
    }

    /** A film that was cut shorter leaves chapters behind. */
    private static void within(Film film, double seconds, Consumer<Finding> findings) {
        film.facts().ifRead(Film.CHAPTERS).stream()
                .flatMap(chapters -> chapters.value().stream())
                .flatMap(chapter -> chapter.value().facts().ifRead(Chapter.FROM).stream())
                .filter(from -> from.value().value() > seconds - SAME)
                .forEach(from -> findings.accept(Finding.error(
                                "cue-beyond-film",
                                from.at(),
                                "this cue begins when the film is over, after " + Math.round(seconds) + " s")
                        .mend("Write when it begins in the film as it is now, or take the cue out.")));
    }

    /** Whether phones show it without another program. */
    private static boolean shown(Path film) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(film)) {
            head = in.readNBytes(64);
        }
        if (Arrays.mismatch(head, EBML) == EBML.length) {
            return new String(head, StandardCharsets.ISO_8859_1).contains("webm");
        }
        return head.length == 64
                && FileTypeDetector.detectFileType(new BufferedInputStream(new ByteArrayInputStream(head)))
                        == FileType.Mp4;
    }

    private static Optional<Metadata> metadata(Path film) throws IOException {
        try {
            return Optional.of(ImageMetadataReader.readMetadata(film.toFile()));
        } catch (ImageProcessingException e) {
            return Optional.empty();
        }
    }

    private static boolean tellsLocation(Metadata told) {
        return told.getDirectoriesOfType(Mp4Directory.class).stream()
                        .anyMatch(it -> it.containsTag(Mp4Directory.TAG_LATITUDE))
                || told.getDirectoriesOfType(QuickTimeMetadataDirectory.class).stream()
                        .anyMatch(it -> it.containsTag(QuickTimeMetadataDirectory.TAG_LOCATION_ISO6709));
    }

    /** Of a film that does not say how long it is nothing is known. */
    private static OptionalDouble seconds(Metadata told) {
        return told.getDirectoriesOfType(Mp4Directory.class).stream()
                .filter(it -> it.containsTag(Mp4Directory.TAG_DURATION_SECONDS))
                .map(it -> it.getDoubleObject(Mp4Directory.TAG_DURATION_SECONDS))
                .filter(it -> it != null && it > 0)
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }
}
