package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Message;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.document.Section;
import bayfolio.document.SentPage;
import bayfolio.document.SentWhen;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What staff send links to, in the order in which messages are sent. Only what renters may read is among it. */
final class LinkDesk {
    private final CoachView view;
    private final Map<String, Page> pages = new HashMap<>();

    /** @param pages all others of the handbook */
    LinkDesk(CoachView view, List<Page> pages) {
        this.view = view;
        pages.stream()
                .filter(page -> page.stamp().audience().includes(Audience.RENTERS))
                .forEach(page -> this.pages.put(page.address(), page));
    }

    Page page() {
        Stamp page = view.stamp(PageKind.LINKS);
        Map<Message, List<Content>> sent = new EnumMap<>(Message.class);
        for (Message message : Message.values()) {
            sent.put(message, new ArrayList<>());
        }
        for (SentPage own : SentPage.ALL) {
            Page of = pages.get(own.page().page());
            if (of != null) {
                for (Message message : own.with()) {
                    of(sent, message)
                            .add(sendable(
                                    section(page, message),
                                    of,
                                    own.id(),
                                    message,
                                    view.word("links.line." + own.id()),
                                    own.when(),
                                    own.id()));
                }
            }
        }
        for (Procedure procedure : view.procedures()) {
            PageKind kind = procedure.form() == Form.TROUBLE ? PageKind.GUIDE : PageKind.PROCEDURE;
            Page of = pages.get(kind.node(procedure.id()).page());
            if (of != null) {
                for (Message message : messages(procedure)) {
                    of(sent, message)
                            .add(sendable(
                                    section(page, message),
                                    of,
                                    kind.id() + "-" + procedure.id(),
                                    message,
                                    procedure.head().facts().find(Head.LINE).orElseGet(() -> firstSentence(of)),
                                    procedure.head().facts().find(Head.SENT_WHEN),
                                    procedure.head().spoken()));
                }
            }
        }
        List<Section> sections = new ArrayList<>();
        sent.forEach((message, links) -> {
            if (!links.isEmpty()) {
                sections.add(Section.of(section(page, message), view.word("message." + Type.word(message)), links));
            }
        });
        return new Page(
                page,
                PageKind.LINKS,
                PageKind.LINKS.target(),
                view.word("page.links"),
                List.of(view.paragraph(page.child("note"), "page.links.note")),
                sections,
                false);
    }

    private static List<Content> of(Map<Message, List<Content>> sent, Message message) {
        return sent.computeIfAbsent(message, it -> new ArrayList<>());
    }

    private static Stamp section(Stamp page, Message message) {
        return page.child(Type.word(message));
    }

    private static List<Message> messages(Procedure procedure) {
        if (procedure.form() == Form.TROUBLE) {
            return List.of(Message.FAULT);
        }
        List<Message> said = procedure.head().facts().find(Head.SENT_WITH).orElse(List.of()).stream()
                .map(Located::value)
                .distinct()
                .toList();
        return said.isEmpty() ? List.of(Message.ASKED) : said;
    }

    private Content.Sendable sendable(
            Stamp section,
            Page page,
            String name,
            Message message,
            String line,
            Optional<SentWhen> when,
            String spoken) {
        return new Content.Sendable(
                section.child(name).in(page.stamp().language()),
                view.link(page.home(), page.title()),
                message,
                when,
                line,
                spoken.toUpperCase(Locale.ROOT),
                view.coach().fleet().address() + view.unit().id() + "/" + file(page),
                view.coach().fleet().address() + ShortAddress.below(view.unit(), spoken));
    }

    private static String file(Page page) {
        return page.kind() == PageKind.HOME ? "" : page.address() + ".html";
    }

    private static String firstSentence(Page page) {
        return page.opening().stream()
                .filter(Content.Text.class::isInstance)
                .map(text -> PlainText.of(text).findFirst().orElse(""))
                .filter(text -> !text.isBlank())
                .findFirst()
                .map(text -> text.replaceFirst("(?<=[.!?]) .*", ""))
                .orElse("");
    }
}
