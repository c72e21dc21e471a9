package bayfolio.render.mail;

import bayfolio.source.Digest;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Date;
import java.util.Properties;

/**
 * A letter as a file of mail, to be opened by a mail program and sent by a person: it has no address of a renter. The same
 * letter gives the same bytes.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc5322">RFC 5322</a>
 * @see <a href="https://www.rfc-editor.org/rfc/rfc2046">RFC 2046</a>
 */
public final class MailFile {
    private static final String UTF_8 = StandardCharsets.UTF_8.name();

    /** No server is named: nothing is ever sent. */
    private static final Session SESSION = Session.getInstance(new Properties());

    /** For who tells no address of its own: a name that never is one (RFC 2606). */
    private static final String NOBODY = "desk@fleet.invalid";

    private MailFile() {}

    public static byte[] of(Letter letter, LetterForm form) {
        try {
            Parts both = new Parts("alternative", letter);
            both.addBodyPart(text(form.text(letter), "plain"));
            both.addBodyPart(text(form.html(letter), "html"));
            MimeBodyPart body = new MimeBodyPart();
            body.setContent(both);
            Parts all = new Parts("mixed", letter);
            all.addBodyPart(body);
            for (Letter.Attached file : letter.attached()) {
                MimeBodyPart part = new MimeBodyPart();
                part.setText(file.text(), UTF_8, file.kind().substring("text/".length()));
                part.setFileName(file.name());
                all.addBodyPart(part);
            }
            Message message = new Message(letter);
            message.setFrom(new InternetAddress(letter.from().orElse(NOBODY), line(letter.sender()), UTF_8));
            message.setSubject(line(letter.subject()), UTF_8);
            message.setSentDate(Date.from(letter.sent()));
            message.setHeader("Content-Language", letter.language());
            message.setContent(all);
            message.saveChanges();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            message.writeTo(bytes);
            return bytes.toByteArray();
        } catch (MessagingException e) {
            throw new IllegalStateException("no mail can be made of " + letter.id(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MimeBodyPart text(String words, String kind) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setText(words, UTF_8, kind);
        return part;
    }

    /** What breaks a header would begin another one. */
    private static String line(String words) {
        return words.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ").strip();
    }

    /** Its boundary is that of the letter, and not of the moment. */
    private static final class Parts extends MimeMultipart {
        Parts(String kind, Letter letter) throws MessagingException {
            super(kind);
            ContentType type = new ContentType(getContentType());
            type.setParameter("boundary", "----" + Digest.of(kind + " " + letter.id()));
            this.contentType = type.toString();
        }
    }

    private static final class Message extends MimeMessage {
        private final Letter letter;

        Message(Letter letter) {
            super(SESSION);
            this.letter = letter;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            String host = letter.from().orElse(NOBODY).replaceFirst(".*@", "");
            setHeader("Message-ID", "<" + Digest.of(letter.id() + " " + letter.sent()) + "@" + host + ">");
        }
    }
}
