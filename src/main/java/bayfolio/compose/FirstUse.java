package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Word;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Step;
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
        // The longest first, so that `water heater` is not taken for `water`.
        pattern = Pattern.compile(
                "(?<![\\w-])("
                        + words.keySet().stream()
                                .sorted(Comparator.comparing(String::length)
                                        .reversed()
                                        .thenComparing(Comparator.naturalOrder()))
                                .map(Pattern::quote)
                                .collect(Collectors.joining("|"))
                        + ")(?:s)?(?![\\w-])",
                Pattern.CASE_INSENSITIVE);
    }

    Page linked(Page page) {
        if (page.urgent() || words.isEmpty()) {
            return page;
        }
        OnePage one = new OnePage();
        page.opening().stream().flatMap(Content::linked).forEach(one::seen);
        page.sections().stream()
                .flatMap(section -> section.contents().stream())
                .flatMap(Content::linked)
                .forEach(one::seen);
        return new Page(
                page.home(),
                page.path(),
                page.title(),
                page.opening().stream().map(one::content).toList(),
                page.sections().stream()
                        .map(section -> new Section(
                                section.anchor(),
                                section.home(),
                                section.title(),
                                section.level(),
                                section.contents().stream().map(one::content).toList()))
                        .toList(),
                page.urgent());
    }

    private final class OnePage {
        private final Set<Word> told = new HashSet<>();

        private void seen(Inline.Link link) {
            if (link.target() instanceof Target.OfWord word) {
                words.values().stream().filter(it -> it.id().equals(word.id())).forEach(told::add);
            }
        }

        private Content content(Content content) {
            if (content instanceof Content.Text text) {
                return new Content.Text(block(text.block()));
            }
            if (content instanceof Content.Steps steps) {
                return new Content.Steps(steps.parts().stream().map(this::part).toList());
            }
            return content;
        }

        private Procedure.Part part(Procedure.Part part) {
            return new Procedure.Part(
                    part.title(),
                    part.steps().stream()
                            .map(step -> new Step(
                                    step.id(),
                                    step.hazards(),
                                    step.text().stream().map(this::block).toList(),
                                    step.at()))
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
                if (told.add(word)) {
                    if (matcher.start() > from) {
                        all.add(new Inline.Text(text.substring(from, matcher.start())));
                    }
                    all.add(Draft.link(
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
