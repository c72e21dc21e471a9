package bayfolio.handbook;

import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.reckon.Calculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A piece of a section. */
public sealed interface Content {
    interface Visitor<R> {
        R text(Text content);

        R mark(Mark content);

        R facts(FactTable content);

        R links(LinkList content);

        R steps(Steps content);

        R picture(Picture content);

        R fold(Fold content);

        R form(Form content);
    }

    <R> R accept(Visitor<R> visitor);

    /** All links in it. */
    Stream<Inline.Link> linked();

    /** A paragraph, list or table. */
    record Text(Block block) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return block.links();
        }
    }

    /**
     * A word that must be seen at once, such as who may open a door.
     *
     * @param kind for the look: {@code access-free}
     */
    record Mark(String kind, String words) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.mark(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return Stream.of();
        }
    }

    /** Facts by their labels, in the order of the declaration. */
    record FactTable(List<Row> rows) implements Content {
        /**
         * One fact.
         *
         * @param lines one for a single value, one each for a list; never empty
         */
        public record Row(String label, List<List<Inline>> lines) {
            public Row {
                lines = lines.stream().map(List::copyOf).toList();
            }

            /** A fact of one line. */
            public static Row of(String label, String words) {
                return new Row(label, List.of(List.of(new Inline.Text(words))));
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
        public Stream<Inline.Link> linked() {
            List<Inline.Link> linked = new ArrayList<>();
            rows.forEach(row -> row.lines().forEach(line -> line.forEach(inline -> inline.links(linked::add))));
            return linked.stream();
        }
    }

    /** A list of links under a heading of its own. */
    record LinkList(Optional<String> heading, List<Entry> entries) implements Content {
        /**
         * @param note says more about what is behind the link; empty where the name says it all
         */
        public record Entry(Inline.Link link, String note) {}

        public LinkList {
            entries = List.copyOf(entries);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.links(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return entries.stream().map(Entry::link);
        }
    }

    /** The steps of a procedure, each with an anchor of its own. */
    record Steps(List<Procedure.Part> parts) implements Content {
        public Steps {
            parts = List.copyOf(parts);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.steps(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return parts.stream()
                    .flatMap(part -> part.steps().stream())
                    .flatMap(step -> Stream.concat(
                            step.hazards().stream().flatMap(hazard -> hazard.text().stream()), step.text().stream()))
                    .flatMap(Block::links);
        }
    }

    /**
     * A picture of the coach.
     *
     * @param photo id of the photo; its file on the site is named after it
     * @param alt what it shows, for people who cannot see it
     */
    record Picture(String photo, String alt) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.picture(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return Stream.of();
        }
    }

    /** What is there for those who want to know more, folded under its title. */
    record Fold(String title, List<Content> inside) implements Content {
        public Fold {
            inside = List.copyOf(inside);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.fold(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return inside.stream().flatMap(Content::linked);
        }
    }

    /** Fields in which a reader varies a question; it stands for nothing where there is no script. */
    record Form(String title, Calculator calculator) implements Content {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.form(this);
        }

        @Override
        public Stream<Inline.Link> linked() {
            return Stream.of();
        }
    }
}
