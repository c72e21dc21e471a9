package bayfolio.document;

import bayfolio.drawing.Drawing;
import bayfolio.explain.Begin;
import bayfolio.explain.Calculator;
import bayfolio.measure.Quantity;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.StepLabel;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A block of a section: the one family of what can stand in a handbook. */
public sealed interface Content extends Node {
    interface Visitor<R> {
        R text(Text content);

        R mark(Mark content);

        R notice(Notice content);

        R facts(FactTable content);

        R links(LinkList content);

        R steps(Steps content);

        R picture(Picture content);

        R film(Film content);

        R fold(Fold content);

        R form(Form content);

        R quote(Quote content);

        R tiles(Tiles content);

        R drawn(Drawn content);

        R sketched(Sketched content);

        R prints(Prints content);

        R label(Label content);

        R sendable(Sendable content);
    }

    <R> R accept(Visitor<R> visitor);

    /** Without what a reader does not see; nothing where all that was in it is gone. */
    default Optional<Content> seenBy(Audience reader) {
        return Optional.of(this);
    }

    /** Paragraphs, lists and tables that belong together, as they were written. */
    record Text(Stamp stamp, List<Block> blocks) implements Content {
        public Text {
            blocks = List.copyOf(blocks);
        }

        public static Text of(Stamp stamp, Inline... words) {
            return new Text(stamp, List.of(new Block.Paragraph(List.of(words))));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            blocks.forEach(block -> block.links(each));
        }
    }

    /**
     * A word that must be seen at once, such as who may open a door.
     *
     * @param kind for the look: {@code access-free}
     */
    record Mark(Stamp stamp, String kind, String words) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.mark(this);
        }
    }

    /**
     * What is wrong meanwhile, or to be done: it stands before all else.
     *
     * @param label that it is for now, and for whom
     * @param days since when it is so and until when; may be empty
     * @param about what it is about, where that is not what it stands with
     */
    record Notice(Stamp stamp, String label, String text, String days, List<Inline.Link> about) implements Content {
        public Notice {
            about = List.copyOf(about);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.notice(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            about.forEach(each);
        }
    }

    /** Facts by their labels, in the order of the declaration. */
    record FactTable(Stamp stamp, List<Row> rows) implements Content {
        /** One fact: a line for a single value, one each for a list. */
        public record Row(Stamp stamp, String label, List<Line> lines) implements Node {
            public Row {
                lines = List.copyOf(lines);
            }

            /** A fact of one line. */
            public static Row of(Stamp stamp, String label, String words) {
                return new Row(stamp, label, List.of(new Line(Audience.EVERYBODY, List.of(new Inline.Text(words)))));
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                lines.forEach(line -> line.words().forEach(words -> words.links(each)));
            }

            private Optional<Row> seenBy(Audience reader) {
                List<Line> seen = lines.stream()
                        .filter(line -> line.audience().includes(reader))
                        .toList();
                if (seen.isEmpty()) {
                    return Optional.empty();
                }
                return Optional.of(seen.size() == lines.size() ? this : new Row(stamp, label, seen));
            }
        }

        /**
         * One value of a fact; of a list of them one has no name of its own.
         *
         * @param measured what the words tell, where that is a figure with a unit
         */
        public record Line(Audience audience, List<Inline> words, Optional<Quantity> measured) {
            public Line {
                words = List.copyOf(words);
            }

            public Line(Audience audience, List<Inline> words) {
                this(audience, words, Optional.empty());
            }
        }

        public FactTable {
            rows = List.copyOf(rows);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.facts(this);
        }

        @Override
        public List<Row> parts() {
            return rows;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Row> seen = Node.seen(rows, reader, Row::seenBy);
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Node.isSame(seen, rows) ? this : new FactTable(stamp, seen));
        }
    }

    /** A list of links under a heading of its own. */
    record LinkList(Stamp stamp, Optional<String> heading, List<Entry> entries) implements Content {
        /**
         * @param note says more about what is behind the link; empty where the name says it all
         * @param formerly the place on this page where once stood what now has a page of its own: old addresses lead on
         */
        public record Entry(Stamp stamp, Inline.Link link, String note, Optional<String> formerly) implements Node {
            public Entry(Stamp stamp, Inline.Link link, String note) {
                this(stamp, link, note, Optional.empty());
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                each.accept(link);
            }
        }

        public LinkList {
            entries = List.copyOf(entries);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.links(this);
        }

        @Override
        public List<Entry> parts() {
            return entries;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Entry> seen = Node.seen(entries, reader, (entry, it) -> Optional.of(entry));
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Node.isSame(seen, entries) ? this : new LinkList(stamp, heading, seen));
        }
    }

    /**
     * The steps of a procedure, or those of one of its pages.
     *
     * @param ticked whether each has a box to be ticked
     */
    record Steps(Stamp stamp, boolean ticked, List<Part> parts) implements Content {
        /** Steps under a heading of their own, such as inside and outside. */
        public record Part(Stamp stamp, Optional<String> title, List<Step> steps) implements Node {
            public Part {
                steps = List.copyOf(steps);
            }

            @Override
            public List<Step> parts() {
                return steps;
            }

            private Optional<Part> seenBy(Audience reader) {
                List<Step> seen = Node.seen(steps, reader, Step::seenBy);
                return Optional.of(Node.isSame(seen, steps) ? this : new Part(stamp, title, seen));
            }
        }

        /**
         * One action.
         *
         * @param notices what is to be known meanwhile of what it is done to
         * @param hazards that it is guarded by
         * @param act what is done; names and no places
         * @param any whether one of the things is enough
         * @param where the things that it is done to
         * @param known what follows from it, and what the coach has to say of it, each under a label: {@code Good}, 12.5 V
         *     or more
         * @param answers what one may see, and what to do then: of a look in a trouble guide each; otherwise the way back
         *     when it did not work, two at most
         * @param more whatever else belongs to it
         * @param readOut what staff read out to a renter who is at this step
         */
        public record Step(
                Stamp stamp,
                List<Notice> notices,
                List<Hazard> hazards,
                List<Block> act,
                boolean any,
                List<Where> where,
                List<Labeled> known,
                List<Answer> answers,
                List<Block> more,
                List<ReadOut> readOut)
                implements Node {
            public Step {
                notices = List.copyOf(notices);
                hazards = List.copyOf(hazards);
                act = List.copyOf(act);
                where = List.copyOf(where);
                known = List.copyOf(known);
                answers = List.copyOf(answers);
                more = List.copyOf(more);
                readOut = List.copyOf(readOut);
            }

            /** One to which nothing is read out. */
            public Step(
                    Stamp stamp,
                    List<Notice> notices,
                    List<Hazard> hazards,
                    List<Block> act,
                    boolean any,
                    List<Where> where,
                    List<Labeled> known,
                    List<Answer> answers,
                    List<Block> more) {
                this(stamp, notices, hazards, act, any, where, known, answers, more, List.of());
            }

            /** The same with what is to be known meanwhile. */
            public Step with(List<Notice> meanwhile) {
                return new Step(stamp, meanwhile, hazards, act, any, where, known, answers, more, readOut);
            }

            private Optional<Step> seenBy(Audience reader) {
                List<Notice> seen = Node.seen(notices, reader, (notice, it) -> Optional.of(notice));
                List<ReadOut> read = Node.seen(readOut, reader, (words, it) -> Optional.of(words));
                return Optional.of(
                        Node.isSame(seen, notices) && Node.isSame(read, readOut)
                                ? this
                                : new Step(stamp, seen, hazards, act, any, where, known, answers, more, read));
            }

            @Override
            public List<Node> parts() {
                List<Node> parts = new ArrayList<>(notices);
                parts.addAll(hazards);
                parts.addAll(where);
                answers.forEach(answer -> parts.addAll(answer.where()));
                parts.addAll(readOut);
                return parts;
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                act.forEach(block -> block.links(each));
                more.forEach(block -> block.links(each));
                known.forEach(it -> it.words().forEach(words -> words.links(each)));
                answers.forEach(answer -> answer.links(each));
            }
        }

        /**
         * What one may see, and what to do then: {@code **It is off:** turn it on.}
         *
         * @param look with its colon
         * @param where the things that it is done to, and the procedures, guides and pages that it goes on with; none where
         *     one stays with these steps
         */
        public record Answer(List<Inline> look, List<Inline> then, List<Where> where) {
            public Answer {
                look = List.copyOf(look);
                then = List.copyOf(then);
                where = List.copyOf(where);
            }

            /** Takes all links in its own words. */
            public void links(Consumer<Inline.Link> each) {
                look.forEach(words -> words.links(each));
                then.forEach(words -> words.links(each));
            }
        }

        /**
         * What a writer put under a label: {@code **Good:** {{normal}}}.
         *
         * @param label as the writer has it, of a fact; the others have the words of the handbook's language
         */
        public record Labeled(StepLabel sort, String label, List<Inline> words) {
            public Labeled {
                words = List.copyOf(words);
            }
        }

        /**
         * A fact that staff have before them, and a renter hears on the phone.
         *
         * @param label with the thing that it is of, where the coach has several such things
         */
        public record ReadOut(Stamp stamp, String label, String words) implements Node {}

        /**
         * A thing that a step is done to.
         *
         * @param place where one finds it; empty where nothing is said of it
         * @param pieces how it is worked and how it looks then, where the step asks for a state of it
         */
        public record Where(Stamp stamp, Inline.Link thing, String place, List<Block.Piece> pieces) implements Node {
            public Where {
                pieces = List.copyOf(pieces);
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                each.accept(thing);
            }
        }

        /** What a step can do to you, and how it does not. */
        public record Hazard(Stamp stamp, Signal signal, List<Block> text) implements Node {
            public Hazard {
                text = List.copyOf(text);
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                text.forEach(block -> block.links(each));
            }
        }

        public Steps {
            parts = List.copyOf(parts);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.steps(this);
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Part> seen = Node.seen(parts, reader, Part::seenBy);
            return Optional.of(Node.isSame(seen, parts) ? this : new Steps(stamp, ticked, seen));
        }
    }

    /**
     * A picture of the coach.
     *
     * @param photo id of the photo; its file on the site is named after it
     * @param alt what it shows, for people who cannot see it
     * @param pointers numbered marks on it, in their order
     */
    record Picture(Stamp stamp, String photo, String alt, List<Pointer> pointers) implements Content {
        /**
         * @param across how far from the left edge, in hundredths of the width
         * @param down how far from the upper edge, in hundredths of the height
         */
        public record Pointer(Stamp stamp, int across, int down, Inline.Link thing) implements Node {
            @Override
            public void links(Consumer<Inline.Link> each) {
                each.accept(thing);
            }
        }

        public Picture {
            pointers = List.copyOf(pointers);
        }

        @Override
        public List<Pointer> parts() {
            return pointers;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Pointer> seen = Node.seen(pointers, reader, (pointer, it) -> Optional.of(pointer));
            return Optional.of(Node.isSame(seen, pointers) ? this : new Picture(stamp, photo, alt, seen));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.picture(this);
        }
    }

    /**
     * A film with what is seen in it when.
     *
     * @param file its name as it is given out
     * @param poster the photo that stands for it until it runs
     * @param captioned whether there are captions of what is said
     */
    record Film(
            Stamp stamp,
            String film,
            String name,
            String file,
            Optional<String> poster,
            boolean captioned,
            List<Chapter> chapters)
            implements Content {
        /**
         * @param home by what others link to this moment
         * @param from when it begins, in thousandths of a second
         * @param to when it ends
         * @param title what is told; may be empty
         */
        public record Chapter(Stamp stamp, Target home, int from, int to, String title, Inline.Link thing)
                implements Node {
            @Override
            public void links(Consumer<Inline.Link> each) {
                each.accept(thing);
            }
        }

        /**
         * As clocks of films show a moment: {@code 1:05}.
         *
         * @param moment in thousandths of a second
         */
        public static String clock(int moment) {
            int seconds = moment / 1000 % 60;
            return moment / 60_000 + (seconds < 10 ? ":0" : ":") + seconds;
        }

        public Film {
            chapters = List.copyOf(chapters);
        }

        @Override
        public List<Chapter> parts() {
            return chapters;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Chapter> seen = Node.seen(chapters, reader, (chapter, it) -> Optional.of(chapter));
            return Optional.of(
                    Node.isSame(seen, chapters) ? this : new Film(stamp, film, name, file, poster, captioned, seen));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.film(this);
        }
    }

    /** What is there for those who want to know more, folded under its title. */
    record Fold(Stamp stamp, String title, List<Content> inside) implements Content {
        public Fold {
            inside = List.copyOf(inside);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.fold(this);
        }

        @Override
        public List<Content> parts() {
            return inside;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Content> seen = Node.seen(inside, reader, Content::seenBy);
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Node.isSame(seen, inside) ? this : new Fold(stamp, title, seen));
        }
    }

    /** Fields in which a reader varies a question; it stands for nothing where there is no script. */
    record Form(Stamp stamp, String title, Calculator calculator) implements Content {
        /** Whether a reader gets the same: a calculator is what it gives its script. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Form form
                    && stamp.equals(form.stamp)
                    && title.equals(form.title)
                    && calculator.question().equals(form.calculator.question())
                    && CalculatorFields.of(calculator).equals(CalculatorFields.of(form.calculator))
                    && Stream.of(Begin.values())
                            .allMatch(begin -> calculator.fields(begin).equals(form.calculator.fields(begin)));
        }

        @Override
        public int hashCode() {
            return Objects.hash(stamp, title, calculator.question());
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.form(this);
        }
    }

    /**
     * A drawing of the coach.
     *
     * @param title what is seen, and from where
     * @param things that are drawn in it; their ids are in its marks, {@code compartment:l3}
     */
    record Drawn(Stamp stamp, String title, Drawing drawing, List<Inline.Link> things) implements Content {
        public Drawn {
            things = List.copyOf(things);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.drawn(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            things.forEach(each);
        }
    }

    /** The small drawings of a thing: where it is, and how it looks. */
    record Sketched(Stamp stamp, Target thing) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sketched(this);
        }
    }

    /** What can be printed is offered here, to whom this is for; an output that gives out none leaves it out. */
    record Prints(Stamp stamp) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.prints(this);
        }
    }

    /**
     * What is stuck on a door, or beside a switch.
     *
     * @param code as drawings have it; may be empty
     * @param warnings what counts most first; the first that there is room for is printed
     * @param access for the look, {@code access-free}, and in words
     * @param address by which a phone finds the page of the thing
     */
    record Label(
            Stamp stamp,
            Inline.Link thing,
            String code,
            String name,
            List<String> warnings,
            String access,
            String accessWords,
            String address)
            implements Content {
        /** The folder of short addresses, below the public root. */
        public static final String SHORT = "L";

        public Label {
            warnings = List.copyOf(warnings);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.label(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            each.accept(thing);
        }
    }

    /**
     * A page that staff send a link to.
     *
     * @param message with which it is sent
     * @param when what must be so of the booking; nothing where it is always sent
     * @param line what the page is for, in a line
     * @param code by which its short address ends
     * @param address of the page
     * @param shortAddress that can be told over the phone
     */
    record Sendable(
            Stamp stamp,
            Inline.Link link,
            Message message,
            Optional<SentWhen> when,
            String line,
            String code,
            String address,
            String shortAddress)
            implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sendable(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            each.accept(link);
        }
    }

    /** Large fields to be tapped, each for one way to go on. */
    record Tiles(Stamp stamp, List<Tile> tiles) implements Content {
        /**
         * @param note says more; may be empty
         * @param symbol what the theme draws on it
         * @param formerly the place on this page where once stood what now has a page of its own: old addresses lead on
         */
        public record Tile(Stamp stamp, Inline.Link link, String note, String symbol, Optional<String> formerly)
                implements Node {
            public Tile(Stamp stamp, Inline.Link link, String note, String symbol) {
                this(stamp, link, note, symbol, Optional.empty());
            }

            @Override
            public void links(Consumer<Inline.Link> each) {
                each.accept(link);
            }
        }

        public Tiles {
            tiles = List.copyOf(tiles);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.tiles(this);
        }

        @Override
        public List<Tile> parts() {
            return tiles;
        }

        @Override
        public Optional<Content> seenBy(Audience reader) {
            List<Tile> seen = Node.seen(tiles, reader, (tile, it) -> Optional.of(tile));
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Node.isSame(seen, tiles) ? this : new Tiles(stamp, seen));
        }
    }

    /**
     * What stands on a page of its own, shown here, too: the opening of that page.
     *
     * @param begin the case with which its forms begin here
     */
    record Quote(Stamp stamp, NodeId page, Begin begin) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.quote(this);
        }
    }
}
