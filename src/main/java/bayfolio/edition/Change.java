package bayfolio.edition;

import java.util.List;

/** Something that is otherwise in one state of a handbook than in another one; one record a kind of change. */
public sealed interface Change {
    /**
     * A thing of the coach.
     *
     * @param kind as references have it: {@code switch}
     * @param id empty for what there is one of at most: {@code generator}
     */
    record Thing(String kind, String id, String name) {
        /** Whether it is the same one, whatever it is called. */
        public boolean is(Thing other) {
            return kind.equals(other.kind) && id.equals(other.id);
        }

        @Override
        public String toString() {
            return id.isEmpty() ? kind : kind + " " + id;
        }
    }

    /** What is asked by everything that treats each kind in its own way. */
    interface Visitor<R> {
        R added(Added change);

        R removed(Removed change);

        R renamed(Renamed change);

        R moved(Moved change);

        R relabelled(Relabelled change);

        R atPickup(AtPickup change);

        R fact(ValueChanged change);

        R page(PageAdded change);

        R page(PageRemoved change);

        R step(StepAdded change);

        R step(StepRemoved change);

        R steps(StepsReordered change);

        R parts(PartsReordered change);

        R hazard(HazardAdded change);

        R hazard(HazardRemoved change);

        R number(NumberChanged change);

        R text(TextChanged change);
    }

    <R> R accept(Visitor<R> visitor);

    /**
     * A thing that was not there.
     *
     * @param values all that is stated of it
     */
    record Added(Thing thing, List<Value> values) implements Change {
        public Added {
            values = List.copyOf(values);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.added(this);
        }
    }

    /** A thing that is no longer there. */
    record Removed(Thing thing, List<Value> values) implements Change {
        public Removed {
            values = List.copyOf(values);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.removed(this);
        }
    }

    /** By what one knows that a thing under another id is the same. */
    enum By {
        FORMERLY,
        ROLE
    }

    /**
     * The same thing has another id.
     *
     * @param was its id before
     */
    record Renamed(Thing thing, String was, By by) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.renamed(this);
        }
    }

    /** A thing is in another place: another compartment, side, distance, or other words for it. */
    record Moved(Thing thing, List<Value> values) implements Change {
        public Moved {
            values = List.copyOf(values);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.moved(this);
        }
    }

    /**
     * A fact before and after.
     *
     * @param way to it
     * @param before in the writer's words, of a list all with commas between; empty where it was not stated
     * @param after empty where it is no longer stated
     */
    record Value(String way, String before, String after) {}

    /** A thing is called otherwise, or other words stand on it. */
    record Relabelled(Thing thing, Value value) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.relabelled(this);
        }
    }

    /** A renter finds it in another state. */
    record AtPickup(Thing thing, Value value) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.atPickup(this);
        }
    }

    /**
     * Another fact is otherwise.
     *
     * @param of what it is of: a thing as in {@code tank gray}, or a record
     */
    record ValueChanged(String of, Value value) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.fact(this);
        }
    }

    /** A page that was not there, such as a procedure that holds for the coach now. */
    record PageAdded(String page, String title) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.page(this);
        }
    }

    record PageRemoved(String page, String title) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.page(this);
        }
    }

    /** A step on a page that was there. */
    record StepAdded(String step, String text) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.step(this);
        }
    }

    record StepRemoved(String step, String text) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.step(this);
        }
    }

    /**
     * Steps that stay come in another order.
     *
     * @param list the part of the page that they are in
     * @param before their ids
     */
    record StepsReordered(String list, List<String> before, List<String> after) implements Change {
        public StepsReordered {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.steps(this);
        }
    }

    /**
     * Parts that stay, other than steps, come in another order: what leads to other pages, or what stands on one.
     *
     * @param list the part of the page that they are in
     * @param before their ids
     */
    record PartsReordered(String list, List<String> before, List<String> after) implements Change {
        public PartsReordered {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.parts(this);
        }
    }

    record HazardAdded(String hazard, String text) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.hazard(this);
        }
    }

    record HazardRemoved(String hazard, String text) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.hazard(this);
        }
    }

    /**
     * A figure that is worked out.
     *
     * @param question as addresses have it: {@code a-night}
     * @param before what is otherwise of the answer, in its words
     * @param because the ways to the facts that are otherwise and that it hangs on; none where the program works it out
     *     otherwise
     */
    record NumberChanged(String question, String before, String after, List<String> because) implements Change {
        public NumberChanged {
            because = List.copyOf(because);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.number(this);
        }
    }

    /** Words of a page are otherwise. */
    record TextChanged(String part, String before, String after) implements Change {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }
}
