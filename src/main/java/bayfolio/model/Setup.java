package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** The order in which this coach is set up at a site, and left again. */
public record Setup(Facts facts) implements Described {
    /** What has its turn when a coach is set up, in the order that most coaches want. */
    public enum Turn {
        /** What the coach tows comes off, on level ground. */
        TOW,
        RAMPS,
        PLUG,
        JACKS,
        SLIDE_OUTS,
        STEP,
        WATER,
        GAS,
        SEWER,
        AWNING
    }

    private static final Shape.Draft<Setup> DRAFT =
            Shape.draft("setup", "The order in which this coach is set up; it is left again from the end.");
    public static final Key<List<Located<Turn>>> ORDER = DRAFT.optional(
            "order",
            Type.list(Type.choice(Turn.class)),
            "What goes before what, where this coach wants another order than most. Name only what changes places: "
                    + "`[jacks, plug]` levels the coach before it is plugged in, and all else stays.");
    public static final Key<String> WHY = DRAFT.optional("why", Type.TEXT, "Why this coach wants that order.");
    public static final Shape<Setup> SHAPE = DRAFT.done(Setup::new);

    /** Every turn there is, as this coach is set up: what it names shares the places that they have in most coaches. */
    public static List<Turn> there(Unit unit) {
        List<Turn> named = unit.facts().find(Unit.SETUP).stream()
                .flatMap(setup -> setup.facts().all(ORDER).stream())
                .distinct()
                .toList();
        List<Turn> order = new ArrayList<>();
        int next = 0;
        for (Turn turn : Turn.values()) {
            order.add(named.contains(turn) ? named.get(next++) : turn);
        }
        return List.copyOf(order);
    }

    /** The same from its end; but clean hands come before dirty ones on both ways: water, then sewer. */
    public static List<Turn> back(Unit unit) {
        List<Turn> order = new ArrayList<>(there(unit));
        Collections.reverse(order);
        if (order.indexOf(Turn.SEWER) < order.indexOf(Turn.WATER)) {
            order.remove(Turn.WATER);
            order.add(order.indexOf(Turn.SEWER), Turn.WATER);
        }
        return List.copyOf(order);
    }

    /** As descriptions write them. */
    public static List<String> turns() {
        return Arrays.stream(Turn.values()).map(Type::word).toList();
    }
}
