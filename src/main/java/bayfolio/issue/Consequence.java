package bayfolio.issue;

import bayfolio.edition.Change;
import java.util.List;
import java.util.StringJoiner;

/** Something that a change makes somebody do, or look at, beside reading a page; one record a kind. */
public sealed interface Consequence {
    /** What is asked by everything that treats each kind in its own way. */
    interface Visitor<R> {
        R label(Label label);

        R printed(Printed printed);

        R picture(Picture picture);

        R scene(Scene scene);

        R lookUp(LookUp lookUp);

        R translation(Translation translation);

        R reading(Reading reading);

        R link(Link link);
    }

    <R> R accept(Visitor<R> visitor);

    /** What is done with a label. */
    enum Act {
        SCRAPE_OFF,
        STICK_ON,
        PRINT_ANEW
    }

    /**
     * A label on a door or beside a switch.
     *
     * @param thing with the name that is on it
     * @param place where it is or has to be, in the writer's words; may be empty
     */
    record Label(Act act, Change.Thing thing, String place) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.label(this);
        }
    }

    /**
     * Pages of a book as it was printed.
     *
     * @param size of its paper: {@code a4}
     * @param pages their numbers, in order
     */
    record Numbers(String size, List<Integer> pages) {
        public Numbers {
            pages = List.copyOf(pages);
        }

        /** In short: {@code 9, 57-58}. */
        String words() {
            StringJoiner words = new StringJoiner(", ");
            for (int i = 0; i < pages.size(); i++) {
                int first = pages.get(i);
                while (i + 1 < pages.size() && pages.get(i + 1) == pages.get(i) + 1) {
                    i++;
                }
                int last = pages.get(i);
                words.add(first == last ? String.valueOf(first) : first + "-" + last);
            }
            return words.toString();
        }
    }

    /**
     * What is on paper and reads otherwise.
     *
     * @param on pages of the book of the earlier edition, for each size of paper; empty where they are not known
     */
    record Printed(Paper paper, List<Numbers> on) implements Consequence {
        public Printed {
            on = List.copyOf(on);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.printed(this);
        }
    }

    /** What is to be done with a picture. */
    enum Redo {
        /** It was taken before. */
        TAKE_AGAIN,
        /** Whether what is new can be seen on it, only somebody who looks at it can tell. */
        LOOK_AT
    }

    /**
     * A photo of what has changed.
     *
     * @param photo its id
     * @param thing that is seen on it
     */
    record Picture(String photo, Change.Thing thing, Redo redo) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.picture(this);
        }
    }

    /**
     * A chapter of a film about what has changed.
     *
     * @param film its id
     * @param from when the chapter begins, as it is written
     */
    record Scene(String film, String from, Change.Thing thing, Redo redo) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.scene(this);
        }
    }

    /**
     * Something of which nobody knows whether it is still so.
     *
     * @param of the thing, as in {@code circuit lights}, or {@code coach}
     * @param why what is to be looked for there, or why, in a clause
     */
    record LookUp(String of, String why) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.lookUp(this);
        }
    }

    /**
     * A text whose translation is of an older one, or that has none.
     *
     * @param of the fact or script, as translations name it: {@code switch/pump-switch/on-look}
     */
    record Translation(String language, String of) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.translation(this);
        }
    }

    /** A procedure or a guide that sends to what has changed, or uses it. */
    record Reading(String page) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.reading(this);
        }
    }

    /**
     * A page that renters may have been sent to, or may be sent to by now.
     *
     * @param gone whether it was there and is no longer; else it is new
     */
    record Link(String page, boolean gone) implements Consequence {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.link(this);
        }
    }
}
