package bayfolio.fact;

import java.util.List;

/**
 * Keys that say something of the facts beside them and are none themselves. They may stand in every record of a coach.
 *
 * @param name as written
 * @param meaning one sentence for the writer
 */
public record Aside(String name, String meaning) {
    /** Whose values nobody has looked up yet on this coach. */
    public static final Aside TO_CONFIRM = new Aside(
            "to-confirm",
            "Keys of this record that somebody has still to look up on the coach; until then nothing of them is shown.");

    /** What the model has and the coach has not. */
    public static final Aside LEAVES_OUT = new Aside(
            "leaves-out",
            "What the model says here and this coach has not: names of keys of this record, ids of things in its lists."
                    + " What is said anew beside it replaces it whole.");

    /** What the model said when it was overridden. */
    public static final Aside MODEL_SAID = new Aside(
            "model-said",
            "Of each key that says otherwise than the model: the digest of what the model said then. `bayfolio confirm` writes it.");

    public static final List<Aside> ALL = List.of(TO_CONFIRM, LEAVES_OUT, MODEL_SAID);

    /** Whether a key is one of them. */
    public static boolean is(String name) {
        return ALL.stream().anyMatch(aside -> aside.name.equals(name));
    }
}
