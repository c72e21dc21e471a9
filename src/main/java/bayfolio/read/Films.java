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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The films folder of a coach: its chapters, and whether the films that a description names are there and can be given out.
 *
 * @param path of the folder, below the fleet folder
 */
record Films(Folder folder, String path) {
    /** More than anybody loads beside a coach by the night. */
    private static final long MOST_BYTES = 64_000_000;

    /** What the clocks of two programs make of one moment. */
    private static final double SAME = 0.25;

    /** Those of the description in a file. */
    static Films beside(Folder folder, SourceFile description) {
        return new Films(folder, description.folder() + "/films");
    }

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

    /** Each film lies beside the description that names it, the coach's own or its model's. */
    static void check(Folder folder, Unit unit, Consumer<Finding> findings) {
        unit.facts().ifRead(Unit.FILMS).stream()
                .flatMap(films -> films.value().stream())
                .map(Located::value)
                .forEach(film -> check(folder, film, findings));
    }

    private static void check(Folder folder, Film film, Consumer<Finding> findings) {
        of(film, Film.CAPTIONS)
                .flatMap(file -> beside(folder, file.at().file()).text(file.value(), file.at(), findings))
                .ifPresent(file -> Cues.of(file, findings));
        of(film, Film.FILE).ifPresent(file -> {
            Films films = beside(folder, file.at().file());
            if (films.there(file, false, findings)) {
                films.check(film, file, findings);
            }
        });
    }

    private static Optional<Located<String>> of(Film film, Key<String> key) {
        return film.facts().ifRead(key);
    }

    /** @param cues whether it holds cues, and no film */
    private boolean there(Located<String> file, boolean cues, Consumer<Finding> findings) {
        List<String> all = folder.files(path, "");
        if (all.contains(file.value())) {
            return true;
        }
        List<String> alike =
                all.stream().filter(name -> name.endsWith(".vtt") == cues).toList();
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
            } else if (Files.size(there) > MOST_BYTES) {
                findings.accept(Finding.error(
                                "film-too-large",
                                file.at(),
                                name + " has " + Files.size(there) / 1_000_000
                                        + " million bytes; the most that is given out is " + MOST_BYTES / 1_000_000
                                        + " million")
                        .mend("Save it smaller, 720 lines high; a phone shows no more."));
            } else if (!file.value().matches(".*\\.(mp4|webm)")) {
                findings.accept(unreadable(file, name + " has neither of the endings that phones know"));
            } else {
                FilmHead head = FilmHead.of(there, file.value().endsWith(".webm"));
                if (head.located()) {
                    findings.accept(Finding.error(
                                    "film-with-location",
                                    file.at(),
                                    name + " tells where it was taken, in data that no reader sees")
                            .mend("Save it again without the data of the camera."));
                }
                head.seconds().ifPresent(seconds -> within(film, seconds, findings));
            }
        } catch (IOException e) {
            findings.accept(unreadable(file, name + " is no film that phones show"));
        }
    }

    private static Finding unreadable(Located<String> file, String message) {
        return Finding.error("unreadable-film", file.at(), message)
                .mend("Save it as MP4 or WebM, with the ending `.mp4` or `.webm`.");
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
}
