package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.document.Section;
import bayfolio.model.Word;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Links the first use of a word of the glossary on a page to where it is explained, unless the writer has linked it
 * there already, or the word means other things, too. Hazards are left as they are, and so is what is read in danger.
 */
final class FirstUse {
    private final Map<String, Word> words = new HashMap<>();
    private final Pattern pattern;

    FirstUse(List<Word> glossary) {
        glossary.stream()
                .filter(word -> !word.facts().find(Word.MANY_MEANINGS).orElse(false))
                .forEach(word -> words.putIfAbsent(word.word().toLowerCase(Locale.ROOT), word));
        // By their first letters, since most places in a text are done with by that.
        Map<String, List<String>> byLetter = words.keySet().stream()
                // The longest first, so that `water heater` is not taken for `water`.
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .collect(Collectors.groupingBy(word -> word.substring(0, 1), TreeMap::new, Collectors.toList()));
        pattern = Pattern.compile(
                byLetter.isEmpty()
                        ? "(?!)"
                        : "(?=[" + Pattern.quote(String.join("", byLetter.keySet())) + "])(?<![\\w-])("
                                + byLetter.entrySet().stream()
                                        .map(each -> "(?=" + Pattern.quote(each.getKey()) + ")(?:"
                                                + each.getValue().stream()
                                                        .map(Pattern::quote)
                                                        .collect(Collectors.joining("|"))
                                                + ")")
                                        .collect(Collectors.joining("|"))
                                + ")(?:s)?(?![\\w-])",
                Pattern.CASE_INSENSITIVE);
    }

    Page linked(Page page) {
        if (page.urgent() || words.isEmpty()) {
            return page;
        }
        OnePage one = new OnePage();
        page.walk().forEach(one::seen);
        return new Page(
                page.stamp(),
                page.kind(),
                page.home(),
                page.title(),
                page.opening().stream().map(one::content).toList(),
                page.sections().stream()
                        .map(section -> new Section(
                                section.stamp(),
                                section.home(),
                                section.title(),
                                section.level(),
                                section.contents().stream().map(one::content).toList()))
                        .toList(),
                page.urgent());
    }

    /** What readers of one page were told. Staff read what renters do, and more. */
    private final class OnePage implements Content.Visitor<Content> {
        private final Set<Word> toldEverybody = new HashSet<>();
        private final Set<Word> toldStaff = new HashSet<>();
        private Audience reading = Audience.EVERYBODY;

        private void seen(Node node) {
            node.links().forEach(link -> {
                if (link.target() instanceof Target.OfWord word) {
                    words.values().stream()
                            .filter(it -> it.id().equals(word.id()))
                            .forEach(it -> told(it, node.stamp().audience()));
                }
            });
        }

        /** Whether it is news to one of those who read it. */
        private boolean told(Word word, Audience audience) {
            boolean news = toldStaff.add(word);
            return audience == Audience.STAFF ? news : toldEverybody.add(word);
        }

        private Content content(Content content) {
            reading = content.stamp().audience();
            return content.accept(this);
        }

        @Override
        public Content text(Content.Text content) {
            return new Content.Text(
                    content.stamp(), content.blocks().stream().map(this::block).toList());
        }

        @Override
        public Content steps(Content.Steps content) {
            return new Content.Steps(
                    content.stamp(),
                    content.ticked(),
                    content.parts().stream().map(this::part).toList());
        }

        @Override
        public Content mark(Content.Mark content) {
            return content;
        }

        @Override
        public Content notice(Content.Notice content) {
            return content;
        }

        @Override
        public Content facts(Content.FactTable content) {
            return content;
        }

        @Override
        public Content links(Content.LinkList content) {
            return content;
        }

        @Override
        public Content prints(Content.Prints content) {
            return content;
        }

        @Override
        public Content label(Content.Label content) {
            return content;
        }

        @Override
        public Content sendable(Content.Sendable content) {
            return content;
        }

        @Override
        public Content film(Content.Film content) {
            return content;
        }

        @Override
        public Content picture(Content.Picture content) {
            return content;
        }

        @Override
        public Content fold(Content.Fold content) {
            return content;
        }

        @Override
        public Content form(Content.Form content) {
            return content;
        }

        @Override
        public Content quote(Content.Quote content) {
            return content;
        }

        @Override
        public Content drawn(Content.Drawn content) {
            return content;
        }

        @Override
        public Content sketched(Content.Sketched content) {
            return content;
        }

        @Override
        public Content tiles(Content.Tiles content) {
            return content;
        }

        private Content.Steps.Part part(Content.Steps.Part part) {
            return new Content.Steps.Part(
                    part.stamp(),
                    part.title(),
                    part.steps().stream()
                            .map(step -> new Content.Steps.Step(
                                    step.stamp(),
                                    step.notices(),
                                    step.hazards(),
                                    step.act().stream().map(this::block).toList(),
                                    step.any(),
                                    step.where(),
                                    step.known(),
                                    step.answers().stream()
                                            .map(each -> new Content.Steps.Answer(
                                                    inlines(each.look()), inlines(each.then()), each.where()))
                                            .toList(),
                                    step.more().stream().map(this::block).toList(),
                                    step.readOut()))
                            .toList());
        }

        private Block block(Block block) {
            return block.accept(new Block.Visitor<>() {
                @Override
                public Block paragraph(Block.Paragraph paragraph) {
                    return new Block.Paragraph(inlines(paragraph.text()));
                }

                @Override
                public Block bullets(Block.Bullets bullets) {
                    return new Block.Bullets(
                            bullets.items().stream().map(OnePage.this::inlines).toList());
                }

                @Override
                public Block table(Block.Table table) {
                    return table;
                }

                @Override
                public Block handling(Block.Handling handling) {
                    return handling;
                }
            });
        }

        private List<Inline> inlines(List<Inline> inlines) {
            List<Inline> all = new ArrayList<>();
            for (Inline inline : inlines) {
                if (inline instanceof Inline.Text text) {
                    text(text.text(), all);
                } else {
                    all.add(inline);
                }
            }
            return all;
        }

        private void text(String text, List<Inline> all) {
            Matcher matcher = pattern.matcher(text);
            int from = 0;
            while (matcher.find()) {
                Word word = Objects.requireNonNull(words.get(matcher.group(1).toLowerCase(Locale.ROOT)));
                if (told(word, reading)) {
                    if (matcher.start() > from) {
                        all.add(new Inline.Text(text.substring(from, matcher.start())));
                    }
                    all.add(CoachView.link(
                            new Target.OfWord(word.id()),
                            matcher.group(),
                            word.facts().at()));
                    from = matcher.end();
                }
            }
            if (from < text.length()) {
                all.add(new Inline.Text(text.substring(from)));
            }
        }
    }
}
