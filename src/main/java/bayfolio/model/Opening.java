package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;

/** Days of the week on which somebody is at the depot, and from when until when. */
public record Opening(Facts facts) implements Described {
    private static final Type<String> TIME =
            new Type.Text("time", "^([01][0-9]|2[0-3]):[0-5][0-9]$", "a time of day in 24 hours, such as `08:00`");

    private static final Shape.Draft<Opening> DRAFT =
            Shape.draft("opening", "Days on which somebody is at the depot, and from when until when.");
    public static final Key<List<Located<DayOfWeek>>> DAYS =
            DRAFT.required("days", Type.list(Type.choice(DayOfWeek.class)), "Days of the week: `[monday, tuesday]`.");
    public static final Key<String> OPENS = DRAFT.required("opens", TIME, "When somebody comes, in local time.");
    public static final Key<String> CLOSES = DRAFT.required(
            "closes", TIME, "When the last one leaves. Who comes at this time finds nobody who hands a coach over.");
    public static final Shape<Opening> SHAPE = DRAFT.done(Opening::new);

    /** Whether somebody is there who has time: at the time of closing nobody has. */
    public boolean holds(LocalDateTime at) {
        LocalTime time = at.toLocalTime();
        return facts.all(DAYS).contains(at.getDayOfWeek())
                && !time.isBefore(LocalTime.parse(facts.get(OPENS)))
                && time.isBefore(LocalTime.parse(facts.get(CLOSES)));
    }
}
