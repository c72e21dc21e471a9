package bayfolio.prose;

import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

        R things(Things inline);
    }

    <R> R accept(Visitor<R> visitor);

    /** The words alone. */
    String plain();

    /** Of bold words that end in a colon, those: what comes next stands under them. */
    default Optional<String> label() {
        return Optional.empty();
    }

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
        public Optional<String> label() {
            String words = plain();
            return words.endsWith(":") ? Optional.of(words.substring(0, words.length() - 1)) : Optional.empty();
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
     * The things that a reference names, each with its place, where a writer left it to the coach to say so.
     *
     * @param any whether one of them is enough; else all are meant
     * @param state that is asked of them; empty where none is
     */
    record Things(List<One> each, boolean any, String state) implements Inline {
        /**
         * @param before what stands between it and the one before
         * @param place where it is, in words; empty where nothing is said of it
         */
        public record One(String before, Link link, String place) {}

        public Things {
            each = List.copyOf(each);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.things(this);
        }

        @Override
        public void links(Consumer<Link> to) {
            each.forEach(one -> to.accept(one.link()));
        }

        @Override
        public String plain() {
            StringBuilder words = new StringBuilder();
            for (One one : each) {
                words.append(one.before()).append(one.link().plain());
                words.append(one.place().isEmpty() ? "" : " (" + one.place() + ")");
            }
            return words.toString();
        }

        /** Their names alone, each leading to it. */
        public List<Inline> names() {
            List<Inline> names = new ArrayList<>();
            for (One one : each) {
                if (!names.isEmpty()) {
                    names.add(new Text(one.before()));
                }
                names.add(one.link());
            }
            return names;
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
