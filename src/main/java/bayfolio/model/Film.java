package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A film of this coach. */
public record Film(Facts facts) implements Thing {
    private static final Shape.Draft<Film> DRAFT = Shape.draft("film", "A film of this coach.");
    private static final Identity IDENTITY = Identity.declare(DRAFT, "film", "What the film is called.");
    public static final Key<String> FILE = DRAFT.required(
            "file", Type.FILE_NAME, "Its file in the films folder beside this description, MP4 or WebM.");
    public static final Key<List<Located<Chapter>>> CHAPTERS = DRAFT.required(
            "chapters",
            Type.cues(Chapter.SHAPE),
            "Its chapters, each naming what is seen, so that the page of that leads to its moment.");
    public static final Key<String> CAPTIONS = DRAFT.optional(
            "captions",
            Type.FILE_NAME,
            "What is said in it: a WebVTT file in the films folder beside this description.");
    public static final Key<Boolean> SILENT = DRAFT.optional("silent", Type.YES_NO, "Whether nothing is said in it.");
    public static final Key<String> POSTER =
            DRAFT.optional("poster", Type.reference("photo"), "The picture that stands for it until it runs.");
    public static final Key<LocalDate> TAKEN_ON =
            DRAFT.optional("taken-on", Type.DAY, "When it was taken.", Photo.TAKEN);
    public static final Key<Boolean> STAFF_ONLY =
            DRAFT.optional("staff-only", Type.YES_NO, "Whether it is kept out of the renter's copy.");
    public static final Shape<Film> SHAPE = DRAFT.done(Film::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public boolean forStaff() {
        return facts.find(STAFF_ONLY).orElse(false);
    }

    public String file() {
        return facts.get(FILE);
    }

    /** The paths of its file and of its captions below the fleet folder: they lie beside the description that names them. */
    public Optional<String> path(Key<String> file) {
        return facts.located(file).map(name -> name.at().file().folder() + "/films/" + name.value());
    }

    public List<Chapter> chapters() {
        return facts.all(CHAPTERS);
    }
}
