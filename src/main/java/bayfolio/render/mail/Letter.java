package bayfolio.render.mail;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A message to a renter, before it is put into the form of mail. It is the same in HTML and as plain text.
 *
 * @param id its name, one of a kind: {@code B-1042.day-before}
 * @param from address of the desk; nothing where the fleet tells none
 * @param sender name of the fleet
 * @param sent when it is to be sent
 * @param language that its words are in
 * @param opening paragraphs before the links
 * @param closing paragraphs behind them: whom to call
 * @param attached files, each with its name and kind
 */
public record Letter(
        String id,
        Optional<String> from,
        String sender,
        Instant sent,
        String language,
        String subject,
        List<String> opening,
        List<Link> links,
        List<Paragraph> closing,
        List<Attached> attached) {
    public Letter {
        opening = List.copyOf(opening);
        links = List.copyOf(links);
        closing = List.copyOf(closing);
        attached = List.copyOf(attached);
    }

    /** @param line what the page is for; may be empty */
    public record Link(String title, String line, String address) {}

    /** @param phone number that is dialed from it, as it is written; empty where none is */
    public record Paragraph(String words, String phone) {}

    /** @param kind as mail names it: {@code text/calendar} */
    public record Attached(String name, String kind, String text) {}
}
