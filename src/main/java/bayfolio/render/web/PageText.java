package bayfolio.render.web;

import bayfolio.document.Content;
import bayfolio.document.Page;
import bayfolio.document.PlainText;
import bayfolio.document.Section;
import bayfolio.prose.Inline;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A page as plain text, a line for each thing that it tells: to be pasted into a message, or read out. */
final class PageText {
    private PageText() {}

    static String of(Page page) {
        String text = page.title() + "\n" + lines(page.opening().stream())
                + page.sections().stream().map(PageText::of).collect(Collectors.joining());
        // What holds a figure and its unit together on a page is a sign that not every field takes.
        return text.replace('\u00A0', ' ').replace('\u202F', ' ');
    }

    private static String of(Section section) {
        return "\n" + section.title() + "\n" + lines(section.contents().stream());
    }

    private static String lines(Stream<Content> contents) {
        return contents.flatMap(PageText::of)
                .filter(line -> !line.isBlank())
                .map(line -> line.strip() + "\n")
                .collect(Collectors.joining());
    }

    private static Stream<String> of(Content content) {
        if (content instanceof Content.FactTable facts) {
            return facts.rows().stream()
                    .map(row -> row.label() + ": "
                            + row.lines().stream()
                                    .map(line -> Inline.plain(line.words()))
                                    .collect(Collectors.joining("; ")));
        }
        if (content instanceof Content.LinkList links) {
            return links.entries().stream()
                    .map(entry -> entry.link().plain() + (entry.note().isEmpty() ? "" : ": " + entry.note()));
        }
        return PlainText.of(content);
    }
}
