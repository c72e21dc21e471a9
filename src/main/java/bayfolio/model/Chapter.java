package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;
import java.util.Optional;

/** A stretch of a film in which one thing is seen. */
public record Chapter(Facts facts) implements Described {
    private static final Range WITHIN = Range.of("0 s", "2 h")
            .usual("0 s", "30 min")
            .because("a renter stands at the door with the phone in his hand");
    private static final Shape.Draft<Chapter> DRAFT =
            Shape.draft("chapter", "A stretch of a film in which one thing is seen: a cue of its WebVTT file.");
    public static final Key<Seconds> FROM =
            DRAFT.required("from", Type.measured(Seconds.SCALE), "When it begins.", WITHIN);
    public static final Key<Seconds> TO = DRAFT.required("to", Type.measured(Seconds.SCALE), "When it ends.", WITHIN);
    public static final Key<String> THING =
            DRAFT.required("thing", Pointer.THINGS, "What is seen: its id, on the line above the time.");
    public static final Key<String> TITLE =
            DRAFT.optional("title", Type.TEXT, "What is told of it, on the lines below the time.");
    public static final Shape<Chapter> SHAPE = DRAFT.done(Chapter::new);

    /** What is seen, if that is on the coach. */
    public Optional<Thing> on(Coach coach) {
        return coach.referred(Pointer.THINGS, facts.get(THING));
    }
}
