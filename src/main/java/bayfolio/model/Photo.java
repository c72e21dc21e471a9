package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;

/** A picture of this coach. */
public record Photo(Facts facts) implements Thing {
    static final Range TAKEN = Range.of("model-year - 2 years", "as-of")
            .usual("as-of - 3 years", "as-of")
            .because(
                    "not after the as-of day, not before the coach was built; older than 3 years or than a refit: ask");
    private static final Shape.Draft<Photo> DRAFT = Shape.draft("photo", "A picture of this coach.");
    private static final Identity IDENTITY = Identity.declare(DRAFT, "photo", "What the picture is called.");
    public static final Key<String> FILE =
            DRAFT.required("file", Type.FILE_NAME, "Its file in the photos folder beside this description.");
    public static final Key<String> ALT =
            DRAFT.required("alt", Type.TEXT, "What it shows, for people who cannot see it.");
    public static final Key<List<Located<Pointer>>> POINTERS = DRAFT.optional(
            "pointers",
            Type.list(Type.nested(Pointer.SHAPE)),
            "Numbered marks on it, in the order in which one looks at them.");
    public static final Key<LocalDate> TAKEN_ON = DRAFT.optional("taken-on", Type.DAY, "When it was taken.", TAKEN);
    public static final Key<Boolean> STAFF_ONLY =
            DRAFT.optional("staff-only", Type.YES_NO, "Whether it is kept out of the renter's copy.");
    public static final Shape<Photo> SHAPE = DRAFT.done(Photo::new);

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

    /** Its path below the fleet folder: it lies beside the description that names it. */
    public String path() {
        return facts.at(FILE).file().folder() + "/photos/" + file();
    }

    public String alt() {
        return facts.get(ALT);
    }
}
