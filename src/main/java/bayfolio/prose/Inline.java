package bayfolio.prose;

import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A stretch of text within a line. */
public sealed interface Inline {
    interface Visitor<R> {
        R text(Text inline);

        R strong(Strong inline);

        R emphasis(Emphasis inline);

        R code(Code inline);

        R link(Link inline);
    }

    <R> R accept(Visitor<R> visitor);

    /** The words alone. */
    String plain();

    /** Takes the links in it, itself where it is one. */
    default void links(Consumer<Link> each) {}

    /** All links in a line, in reading order. */
    static Stream<Link> links(List<Inline> inlines) {
        List<Link> links = new ArrayList<>();
        inlines.forEach(inline -> inline.links(links::add));
        return links.stream();
    }

    static String plain(List<Inline> inlines) {
        if (inlines.size() == 1) {
            return inlines.get(0).plain();
        }
        StringBuilder words = new StringBuilder();
        inlines.forEach(inline -> words.append(inline.plain()));
        return words.toString();
    }

    record Text(String text) implements Inline {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }

        @Override
        public String plain() {
            return text;
        }
    }

    record Strong(List<Inline> inside) implements Inline {
        public Strong {
            inside = List.copyOf(inside);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.strong(this);
        }

        @Override
        public void links(Consumer<Link> each) {
            inside.forEach(inline -> inline.links(each));
        }

        @Override
        public String plain() {
            return Inline.plain(inside);
        }
    }

    record Emphasis(List<Inline> inside) implements Inline {
        public Emphasis {
            inside = List.copyOf(inside);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.emphasis(this);
        }

        @Override
        public void links(Consumer<Link> each) {
            inside.forEach(inline -> inline.links(each));
        }

        @Override
        public String plain() {
            return Inline.plain(inside);
        }
    }

    /** Words exactly as printed on a plate. */
    record Code(String text) implements Inline {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.code(this);
        }

        @Override
        public String plain() {
            return text;
        }
    }

    /**
     * @param at where the reference is written, for findings about what it names
     */
    record Link(Target target, List<Inline> inside, Place at) implements Inline {
        public Link {
            inside = List.copyOf(inside);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.link(this);
        }

        @Override
        public void links(Consumer<Link> each) {
            each.accept(this);
        }

        @Override
        public String plain() {
            return Inline.plain(inside);
        }
    }
}
