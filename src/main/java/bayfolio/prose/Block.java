package bayfolio.prose;

import java.util.List;
import java.util.stream.Stream;

/** A paragraph, list or table as a writer wrote it. */
public sealed interface Block {
    interface Visitor<R> {
        R paragraph(Paragraph block);

        R bullets(Bullets block);

        R table(Table block);
    }

    <R> R accept(Visitor<R> visitor);

    /** All links in it, in reading order. */
    Stream<Inline.Link> links();

    record Paragraph(List<Inline> text) implements Block {
        public Paragraph {
            text = List.copyOf(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.paragraph(this);
        }

        @Override
        public Stream<Inline.Link> links() {
            return linksOf(text);
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
        public Stream<Inline.Link> links() {
            return items.stream().flatMap(Block::linksOf);
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
        public Stream<Inline.Link> links() {
            return Stream.concat(
                    head.stream().flatMap(Block::linksOf),
                    rows.stream().flatMap(List::stream).flatMap(Block::linksOf));
        }
    }

    static Stream<Inline.Link> linksOf(List<Inline> inlines) {
        return inlines.stream()
                .flatMap(inline -> inline.accept(new Inline.Visitor<Stream<Inline.Link>>() {
                    @Override
                    public Stream<Inline.Link> text(Inline.Text text) {
                        return Stream.of();
                    }

                    @Override
                    public Stream<Inline.Link> strong(Inline.Strong strong) {
                        return linksOf(strong.inside());
                    }

                    @Override
                    public Stream<Inline.Link> emphasis(Inline.Emphasis emphasis) {
                        return linksOf(emphasis.inside());
                    }

                    @Override
                    public Stream<Inline.Link> code(Inline.Code code) {
                        return Stream.of();
                    }

                    @Override
                    public Stream<Inline.Link> link(Inline.Link link) {
                        return Stream.of(link);
                    }
                }));
    }
}
