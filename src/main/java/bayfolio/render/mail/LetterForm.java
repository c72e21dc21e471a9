package bayfolio.render.mail;

import bayfolio.prose.Target;
import bayfolio.render.html.View;
import bayfolio.render.theme.Theme;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import java.util.ArrayList;
import java.util.List;

/** How messages look: the template of the theme for HTML, and the same as plain text. */
public final class LetterForm {
    /** Longer lines are broken by some mail programs on their way (RFC 5322, 2.1.1). */
    private static final int WIDTH = 78;

    private final Template html;
    private final List<TemplateProblem> complaints = new ArrayList<>();

    public LetterForm(Theme theme) {
        SourceFile file = theme.template("mail/message")
                .orElseThrow(() -> new IllegalArgumentException("the theme has no template `mail/message.mustache`"));
        this.html = Template.compile(file, Template.Escape.HTML, theme::template, complaints::add);
    }

    /** What is wrong with the template. */
    public List<TemplateProblem> complaints() {
        return complaints.stream().distinct().toList();
    }

    String html(Letter letter) {
        View view = new View()
                .with("language", letter.language())
                .with("subject", letter.subject())
                .with("sender", letter.sender())
                .with(
                        "opening",
                        letter.opening().stream()
                                .map(it -> new View().with("words", it))
                                .toList())
                .with(
                        "links",
                        letter.links().stream()
                                .map(it -> new View()
                                        .with("title", it.title())
                                        .with("line", it.line())
                                        .with("href", it.address()))
                                .toList())
                .with(
                        "closing",
                        letter.closing().stream()
                                .map(it -> new View()
                                        .with("words", it.words())
                                        .with("dialed", !it.phone().isEmpty())
                                        .with("phone", it.phone())
                                        .with(
                                                "href",
                                                it.phone().isEmpty()
                                                        ? ""
                                                        : new Target.OfPhone("desk", it.phone()).dialed()))
                                .toList());
        return html.fill(view.names(), complaints::add).text();
    }

    String text(Letter letter) {
        StringBuilder text = new StringBuilder();
        letter.opening().forEach(it -> wrapped(text, it).append('\n'));
        for (Letter.Link link : letter.links()) {
            wrapped(text, link.title());
            if (!link.line().isEmpty()) {
                wrapped(text, link.line());
            }
            // An address is never broken.
            text.append(link.address()).append("\n\n");
        }
        for (Letter.Paragraph paragraph : letter.closing()) {
            wrapped(text, paragraph.words());
            if (!paragraph.phone().isEmpty()) {
                text.append(paragraph.phone()).append('\n');
            }
            text.append('\n');
        }
        return text.append(letter.sender()).append('\n').toString();
    }

    private static StringBuilder wrapped(StringBuilder text, String words) {
        int length = 0;
        for (String word : words.strip().split("\\s+")) {
            if (length > 0 && length + 1 + word.length() > WIDTH) {
                text.append('\n');
                length = 0;
            }
            if (length > 0) {
                text.append(' ');
                length++;
            }
            text.append(word);
            length += word.length();
        }
        return text.append('\n');
    }
}
