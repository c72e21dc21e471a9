package bayfolio.document;

import bayfolio.reckon.Question;
import java.util.List;
import java.util.Optional;

/**
 * A page that the program makes itself, and staff send; what somebody wrote says so itself.
 *
 * @param id by which its short address ends
 * @param with messages that it goes with
 * @param when what must be so of the booking; nothing where it is always sent
 */
public record SentPage(NodeId page, String id, List<Message> with, Optional<SentWhen> when) {
    public static final List<SentPage> ALL = List.of(
            of(PageKind.HOME, Message.CONFIRMATION),
            of(PageKind.NUMBERS, Message.OFFER),
            of(PageKind.WORKED_OUT, Message.WEEK_BEFORE),
            new SentPage(
                    PageKind.QUESTION.node(Question.WATER_DAYS.id()),
                    Question.WATER_DAYS.id(),
                    List.of(Message.WEEK_BEFORE),
                    Optional.of(SentWhen.MANY_PEOPLE)),
            of(PageKind.NIGHT_CARD, Message.DAY_BEFORE, Message.AFTER_HOURS),
            of(PageKind.PHONE_CARD, Message.FAULT),
            of(PageKind.TROUBLE_LIST, Message.FAULT));

    public SentPage {
        with = List.copyOf(with);
    }

    private static SentPage of(PageKind kind, Message... with) {
        return new SentPage(kind.node(), kind.id(), List.of(with), Optional.empty());
    }
}
