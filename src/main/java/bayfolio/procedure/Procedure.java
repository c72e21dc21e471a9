package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What to do on one coach, with its own names and numbers filled in; or what to look at when something is wrong.
 *
 * @param opening where to stand, and why
 * @param parts at least one; only the first may be without a title
 *
 * @param linked every link in it, in reading order
 * @param read whether it is known what it says on this coach; who asks for the text of one that is not gets an {@link
 *     UnreadException}
 */
public record Procedure(
        Form form,
        Head head,
        List<Block> opening,
        List<Part> parts,
        List<Ending> endings,
        List<Inline.Link> linked,
        boolean read) {
    /**
     * What stands below the steps.
     *
     * @param title as its form has it: {@code Done when}
     */
    public record Ending(String title, List<Block> text) {
        public Ending {
            text = List.copyOf(text);
        }
    }

    /**
     * Steps under a heading of their own, such as inside and outside.
     *
     * @param anchor by which the page is named that begins with it
     * @param name stable within its procedure: the anchor, or what its first step is called, whichever thing that is of
     * @param rest what is safe after its last step, so that a reader may stop there; empty where the page goes on
     */
    public record Part(
            Optional<String> title, Optional<String> anchor, String name, List<Step> steps, List<Block> rest) {
        public Part {
            steps = List.copyOf(steps);
            rest = List.copyOf(rest);
        }
    }

    public Procedure {
        opening = List.copyOf(opening);
        parts = List.copyOf(parts);
        endings = List.copyOf(endings);
        linked = List.copyOf(linked);
    }

    Procedure(Form form, Head head, List<Block> opening, List<Part> parts, List<Ending> endings) {
        this(form, head, opening, parts, endings, linked(opening, parts, endings), true);
    }

    static Procedure unread(Form form, Head head) {
        return new Procedure(form, head, List.of(), List.of(), List.of(), List.of(), false);
    }

    @Override
    public List<Block> opening() {
        return known(opening);
    }

    @Override
    public List<Part> parts() {
        return known(parts);
    }

    @Override
    public List<Ending> endings() {
        return known(endings);
    }

    @Override
    public List<Inline.Link> linked() {
        return known(linked);
    }

    private <T> T known(T text) {
        if (!read) {
            throw new UnreadException(form.called() + " " + id() + " could not be filled in");
        }
        return text;
    }

    /** Its parts, page by page: each page but the last ends where it is safe to stop. */
    public List<List<Part>> pages() {
        List<List<Part>> pages = new ArrayList<>(List.of(new ArrayList<>()));
        for (Part part : parts()) {
            List<Part> page = pages.get(pages.size() - 1);
            if (!page.isEmpty() && !page.get(page.size() - 1).rest().isEmpty()) {
                page = new ArrayList<>();
                pages.add(page);
            }
            page.add(part);
        }
        return pages.stream().map(List::copyOf).toList();
    }

    public String id() {
        return head.id();
    }

    public Stream<Step> steps() {
        return parts().stream().flatMap(part -> part.steps().stream());
    }

    /** All its text, in reading order. */
    public Stream<Block> blocks() {
        return Stream.of(
                        opening.stream(),
                        parts().stream().flatMap(Procedure::blocks),
                        endings.stream().flatMap(ending -> ending.text().stream()))
                .flatMap(Function.identity());
    }

    /** All the text of a part, in reading order. */
    public static Stream<Block> blocks(Part part) {
        return Stream.concat(
                part.steps().stream()
                        .flatMap(step -> Stream.concat(
                                step.hazards().stream().flatMap(hazard -> hazard.text().stream()),
                                step.text().stream())),
                part.rest().stream());
    }

    /** Every switch that it wants in a state, in reading order. */
    public Stream<Block.Handled> handled() {
        return blocks().flatMap(
                        block -> block instanceof Block.Handling handling ? handling.switches().stream() : Stream.of());
    }

    /** Every link in it, in reading order. */
    public Stream<Inline.Link> links() {
        return linked().stream();
    }

    /** Found once, as many rules ask for them. */
    private static List<Inline.Link> linked(List<Block> opening, List<Part> parts, List<Ending> endings) {
        List<Inline.Link> linked = new ArrayList<>();
        opening.forEach(block -> block.links(linked::add));
        for (Part part : parts) {
            blocks(part).forEach(block -> block.links(linked::add));
        }
        endings.forEach(ending -> ending.text().forEach(block -> block.links(linked::add)));
        return linked;
    }
}
