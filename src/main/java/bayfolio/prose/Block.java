package bayfolio.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A paragraph, list or table as a writer wrote it, or what the coach adds to one. */
public sealed interface Block {
    interface Visitor<R> {
        R paragraph(Paragraph block);

        R bullets(Bullets block);

        R table(Table block);

        R handling(Handling block);
    }

    <R> R accept(Visitor<R> visitor);

    /** Takes all links in it, in reading order. */
    void links(Consumer<Inline.Link> each);

    /** All links in it, in reading order. */
    default Stream<Inline.Link> links() {
        List<Inline.Link> links = new ArrayList<>();
        links(links::add);
        return links.stream();
    }

    record Paragraph(List<Inline> text) implements Block {
        public Paragraph {
            text = List.copyOf(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.paragraph(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            text.forEach(inline -> inline.links(each));
        }
    }

    record Bullets(List<List<Inline>> items) implements Block {
        public Bullets {
            items = items.stream().map(List::copyOf).toList();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.bullets(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            items.forEach(item -> item.forEach(inline -> inline.links(each)));
        }
    }

    /**
     * @param rows each with as many cells as the head
     */
    record Table(List<List<Inline>> head, List<List<List<Inline>>> rows) implements Block {
        public Table {
            head = head.stream().map(List::copyOf).toList();
            rows = rows.stream()
                    .map(row -> row.stream().map(List::copyOf).toList())
                    .toList();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.table(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {
            head.forEach(cell -> cell.forEach(inline -> inline.links(each)));
            rows.forEach(row -> row.forEach(cell -> cell.forEach(inline -> inline.links(each))));
        }
    }

    /**
     * How the switches that the block before it names come into the state that it asks for. They are
     * linked there.
     */
    record Handling(List<Handled> switches) implements Block {
        public Handling {
            switches = List.copyOf(switches);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.handling(this);
        }

        @Override
        public void links(Consumer<Inline.Link> each) {}
    }

    /**
     * One switch and what the coach says of it, piece by piece.
     *
     * @param state that is wanted, as the writer asks for it: {@code open}
     * @param pieces in reading order; empty where the description says nothing
     * @param unsaid names of the keys of what the description leaves out
     */
    record Handled(Target.OfThing target, String name, String state, List<Piece> pieces, List<String> unsaid) {
        public Handled {
            pieces = List.copyOf(pieces);
            unsaid = List.copyOf(unsaid);
        }
    }

    /**
     * One thing that is said of how a switch is worked or looks.
     *
     * @param state which one it looks like so, or how it stands at a moment; empty for the others
     * @param words a sentence, the words of a plate, or a measure
     */
    record Piece(Sort sort, String state, String words) {}

    /** What a piece tells. */
    enum Sort {
        /** How it stands at a moment: at pickup, on the road. */
        STATE,
        PLATE,
        ACT,
        HOLD,
        /** The look of the state that is wanted. */
        LOOK,
        /** The look of the other one. */
        WRONG,
        /** How long until the look is seen. */
        AFTER
    }
}
