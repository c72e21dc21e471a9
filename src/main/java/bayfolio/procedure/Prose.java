package bayfolio.procedure;

import bayfolio.finding.Finding;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.source.Place;
import bayfolio.template.Output;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns parsed Markdown into blocks and inlines, with its references resolved for one coach. */
final class Prose {
    private static final Pattern TARGET = Pattern.compile("\\s*<?([^\\s<>)]*)");

    private final Output output;
    private final References references;
    private final Consumer<Finding> findings;

    Prose(Output output, References references, Consumer<Finding> findings) {
        this.output = output;
        this.references = references;
        this.findings = findings;
    }

    /**
     * One block, and behind it how the switches are worked that it asks a state of; none, and told, where it is something
     * that a procedure has no use for.
     */
    List<Block> blocks(Node node) {
        Set<Block.Handled> handled = new LinkedHashSet<>();
        Optional<Block> block = block(node, handled);
        return handled.isEmpty()
                ? block.stream().toList()
                : Stream.concat(block.stream(), Stream.of(new Block.Handling(List.copyOf(handled))))
                        .toList();
    }

    private Optional<Block> block(Node node, Set<Block.Handled> handled) {
        if (node instanceof Paragraph) {
            return Optional.of(new Block.Paragraph(inlines(node, handled)));
        }
        if (node instanceof BulletList) {
            List<List<Inline>> items = new ArrayList<>();
            for (Node item = node.getFirstChild(); item != null; item = item.getNext()) {
                items.add(item(item, handled));
            }
            return Optional.of(new Block.Bullets(items));
        }
        if (node instanceof TableBlock) {
            return Optional.of(table(node, handled));
        }
        unknown(node);
        return Optional.empty();
    }

    private List<Inline> item(Node item, Set<Block.Handled> handled) {
        List<Inline> all = new ArrayList<>();
        for (Node node = item.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Paragraph) {
                if (!all.isEmpty()) {
                    all.add(new Inline.Text(" "));
                }
                all.addAll(inlines(node, handled));
            } else {
                unknown(node);
            }
        }
        return all;
    }

    private Block.Table table(Node table, Set<Block.Handled> handled) {
        List<List<Inline>> head = new ArrayList<>();
        List<List<List<Inline>>> rows = new ArrayList<>();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                List<List<Inline>> cells = new ArrayList<>();
                for (Node cell = row.getFirstChild(); cell instanceof TableCell; cell = cell.getNext()) {
                    cells.add(inlines(cell, handled));
                }
                if (part instanceof TableHead) {
                    head.addAll(cells);
                } else {
                    rows.add(cells);
                }
            }
        }
        return new Block.Table(head, rows);
    }

    /** Of a heading, which asks no state of anything. */
    List<Inline> inlines(Node parent) {
        return inlines(parent, new LinkedHashSet<>());
    }

    private List<Inline> inlines(Node parent, Set<Block.Handled> handled) {
        List<Inline> all = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text text) {
                all.add(new Inline.Text(text.getLiteral()));
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                all.add(new Inline.Text(" "));
            } else if (node instanceof StrongEmphasis) {
                all.add(new Inline.Strong(inlines(node, handled)));
            } else if (node instanceof Emphasis) {
                all.add(new Inline.Emphasis(inlines(node, handled)));
            } else if (node instanceof Code code) {
                all.add(new Inline.Code(code.getLiteral()));
            } else if (node instanceof Link link) {
                List<Inline> given = inlines(link, handled);
                String words = Inline.plain(given);
                boolean empty = words.isBlank() || words.equals(link.getDestination());
                String written = link.getDestination();
                Wish wish = link.getTitle() == null
                        ? Wish.NONE
                        : Wish.of(link.getTitle(), References.scheme(written), title(link), findings);
                all.addAll(references.resolve(written, wish, empty ? List.of() : given, target(link), findings));
                wish.state().ifPresent(state -> handled.addAll(references.handled(written, state)));
            } else {
                unknown(node);
            }
        }
        return all;
    }

    /** The place of what stands in the round brackets, which is what findings are about. */
    private Place target(Link link) {
        List<SourceSpan> spans = link.getSourceSpans();
        SourceSpan first = spans.get(0);
        SourceSpan last = spans.get(spans.size() - 1);
        String text = output.text();
        int end = last.getInputIndex() + last.getLength();
        // Within the link: without a bracket in it, all text before would be gone through for each.
        int within = text.substring(first.getInputIndex(), end).lastIndexOf("](");
        int bracket = first.getInputIndex() + within;
        if (within < 0) {
            return output.place(first.getInputIndex(), first.getLength());
        }
        Matcher target = TARGET.matcher(text).region(bracket + 2, end);
        return target.lookingAt()
                ? output.place(target.start(1), Math.max(1, target.end(1) - target.start(1)))
                : output.place(bracket + 2, 1);
    }

    /** The place of the title, without its marks. */
    private Place title(Link link) {
        List<SourceSpan> spans = link.getSourceSpans();
        SourceSpan last = spans.get(spans.size() - 1);
        int end = last.getInputIndex() + last.getLength();
        int start = output.text().lastIndexOf(link.getTitle(), end);
        return start < spans.get(0).getInputIndex()
                ? target(link)
                : output.place(start, Math.max(1, link.getTitle().length()));
    }

    private void unknown(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        if (!spans.isEmpty()) {
            String what = node.getClass()
                    .getSimpleName()
                    .replaceAll("([a-z])([A-Z])", "$1 $2")
                    .toLowerCase(java.util.Locale.ROOT)
                    .replace("html", "HTML");
            findings.accept(Finding.error(
                            "unexpected-markup",
                            output.place(
                                    spans.get(0).getInputIndex(), spans.get(0).getLength()),
                            "a procedure has no use for this " + what)
                    .mend("Use paragraphs, lists, tables, emphasis, `code` and references."));
        }
    }
}
