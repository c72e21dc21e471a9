package bayfolio.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A paragraph, list or table as a writer wrote it. */
public sealed interface Block {
    interface Visitor<R> {
        R paragraph(Paragraph block);

        R bullets(Bullets block);

        R table(Table block);
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
}
