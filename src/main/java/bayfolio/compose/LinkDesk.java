package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Message;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.document.Section;
import bayfolio.document.SentWhen;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.FleetFacts;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.reckon.Question;
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
    private static final NodeId WATER = PageKind.QUESTION.node(Question.WATER_DAYS.id());

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
        for (PageKind kind : PageKind.sent()) {
            for (Message message : kind.sentWith()) {
                page(kind)
                        .map(own -> sendable(
                                section(page, message),
                                own,
                                kind.id(),
                                message,
                                view.word("links.line." + kind.id()),
                                Optional.empty(),
                                kind.id()))
                        .ifPresent(of(sent, message)::add);
            }
        }
        Optional.ofNullable(pages.get(WATER.page()))
                .map(water -> sendable(
                        section(page, Message.WEEK_BEFORE),
                        water,
                        Question.WATER_DAYS.id(),
                        Message.WEEK_BEFORE,
                        view.word("links.line." + Question.WATER_DAYS.id()),
                        Optional.of(SentWhen.MANY_PEOPLE),
                        Question.WATER_DAYS.id()))
                .ifPresent(of(sent, Message.WEEK_BEFORE)::add);
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
                                    procedure.head().facts().find(Head.SPOKEN).orElse(procedure.id())));
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

    private Optional<Page> page(PageKind kind) {
        return Optional.ofNullable(pages.get(kind.node().page()));
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
                base() + view.unit().id() + "/" + file(page),
                base() + ShortAddress.below(view.unit(), spoken));
    }

    private String base() {
        return view.coach().fleet().facts().facts().get(FleetFacts.BASE_ADDRESS).replaceFirst("/*$", "/");
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
