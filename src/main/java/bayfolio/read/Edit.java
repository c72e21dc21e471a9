package bayfolio.read;

import bayfolio.source.Steps;

/** A change of one fact in a file of a writer. */
public sealed interface Edit {
    /** The fact; of what is added, the list. */
    Steps at();

    /** Says something in the place of what is said there, or anew; records and things on the way there are made where they are missing. */
    record Put(Steps at, Value value) implements Edit {}

    /** Adds to a list, which is made where there is none; a text that it has stays as it is. */
    record Add(Steps at, Value element) implements Edit {}

    /** Takes out a fact, a thing, or an element of a list. A list or a record that is left with nothing goes with it. */
    record Remove(Steps at) implements Edit {}

    /** Gives a key another name, with what stands behind it as it is. */
    record Rename(Steps at, String name) implements Edit {}
}
