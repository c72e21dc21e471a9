package bayfolio.document;

import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.List;
import java.util.stream.Stream;

/** What stands in a part of a handbook, as plain text: all that it says itself, without the names of what it links to. */
public final class PlainText {
    private static final Content.Visitor<Stream<String>> CONTENTS = new Contents();
    private static final Block.Visitor<Stream<String>> BLOCKS = new Blocks();

    private PlainText() {}

    /** Its texts, piece by piece. */
    public static Stream<String> of(Page page) {
        return Stream.concat(
                all(page.opening()),
                page.sections().stream().flatMap(section -> Stream.concat(Stream.of(section.title()), of(section))));
    }

    /** Without its title. */
    public static Stream<String> of(Section section) {
        return all(section.contents());
    }

    public static Stream<String> of(Content content) {
        return content.accept(CONTENTS);
    }

    private static Stream<String> all(List<Content> contents) {
        return contents.stream().flatMap(PlainText::of);
    }

    private static Stream<String> blocks(List<Block> blocks) {
        return blocks.stream().flatMap(block -> block.accept(BLOCKS));
    }

    private static final class Contents implements Content.Visitor<Stream<String>> {
        @Override
        public Stream<String> text(Content.Text content) {
            return blocks(content.blocks());
        }

        @Override
        public Stream<String> mark(Content.Mark content) {
            return Stream.of(content.words());
        }

        @Override
        public Stream<String> notice(Content.Notice content) {
            return Stream.of(content.text());
        }

        @Override
        public Stream<String> facts(Content.FactTable content) {
            return content.rows().stream()
                    .flatMap(row -> Stream.concat(
                            Stream.of(row.label()), row.lines().stream().map(line -> Inline.plain(line.words()))));
        }

        @Override
        public Stream<String> links(Content.LinkList content) {
            return Stream.of();
        }

        @Override
        public Stream<String> steps(Content.Steps content) {
            return content.parts().stream()
                    .flatMap(part -> Stream.concat(
                            part.title().stream(), part.steps().stream().flatMap(Contents::step)));
        }

        private static Stream<String> step(Content.Steps.Step step) {
            return Stream.of(
                            step.notices().stream().map(Content.Notice::text),
                            step.hazards().stream().flatMap(hazard -> blocks(hazard.text())),
                            blocks(step.act()),
                            step.where().stream().flatMap(Contents::where),
                            step.known().stream().map(known -> Inline.plain(known.words())),
                            step.answers().stream()
                                    .flatMap(answer -> Stream.concat(
                                            Stream.of(Inline.plain(answer.look()), Inline.plain(answer.then())),
                                            answer.where().stream().flatMap(Contents::where))),
                            blocks(step.more()))
                    .flatMap(each -> each);
        }

        private static Stream<String> where(Content.Steps.Where where) {
            return Stream.concat(
                    Stream.of(where.thing().plain(), where.place()),
                    where.pieces().stream().map(Block.Piece::words));
        }

        @Override
        public Stream<String> picture(Content.Picture content) {
            return Stream.of(content.alt());
        }

        @Override
        public Stream<String> film(Content.Film content) {
            return Stream.concat(
                    Stream.of(content.name()), content.chapters().stream().map(Content.Film.Chapter::title));
        }

        @Override
        public Stream<String> fold(Content.Fold content) {
            return Stream.concat(Stream.of(content.title()), all(content.inside()));
        }

        @Override
        public Stream<String> form(Content.Form content) {
            return Stream.of(content.title());
        }

        @Override
        public Stream<String> quote(Content.Quote content) {
            return Stream.of();
        }

        @Override
        public Stream<String> tiles(Content.Tiles content) {
            return content.tiles().stream().map(Content.Tiles.Tile::note);
        }

        @Override
        public Stream<String> drawn(Content.Drawn content) {
            return Stream.of(content.title());
        }

        @Override
        public Stream<String> sketched(Content.Sketched content) {
            return Stream.of();
        }

        @Override
        public Stream<String> prints(Content.Prints content) {
            return Stream.of();
        }

        @Override
        public Stream<String> label(Content.Label content) {
            return Stream.concat(
                    Stream.of(content.code(), content.name(), content.accessWords()), content.warnings().stream());
        }

        @Override
        public Stream<String> sendable(Content.Sendable content) {
            return Stream.of(content.line());
        }
    }

    private static final class Blocks implements Block.Visitor<Stream<String>> {
        @Override
        public Stream<String> paragraph(Block.Paragraph block) {
            return Stream.of(Inline.plain(block.text()));
        }

        @Override
        public Stream<String> bullets(Block.Bullets block) {
            return block.items().stream().map(Inline::plain);
        }

        @Override
        public Stream<String> table(Block.Table block) {
            return Stream.concat(
                    block.head().stream().map(Inline::plain),
                    block.rows().stream().flatMap(row -> row.stream().map(Inline::plain)));
        }

        @Override
        public Stream<String> handling(Block.Handling block) {
            return block.switches().stream()
                    .flatMap(handled -> handled.pieces().stream().map(Block.Piece::words));
        }
    }
}
