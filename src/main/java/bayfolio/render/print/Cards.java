package bayfolio.render.print;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.render.Means;
import bayfolio.render.Media;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Cards of one side: danger and the first hour, what a helper asks for, what is looked at through the windshield. */
public final class Cards extends PaperOutput {
    /** In points, the largest first: a card is read by the light of a phone. */
    private static final double[] LETTERS = {24, 22, 20, 18, 17, 16, 15, 14.5, 14};

    private static final List<Printed> CARDS = List.of(Printed.NIGHT_CARD, Printed.PHONE_CARD, Printed.QUICK_CARD);

    private final Press.Form form;

    public Cards(Means means) {
        super(means, Audience.RENTERS);
        this.form = press.form("card");
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new TreeMap<>();
        for (Printed card : CARDS) {
            files.put(
                    card.path(handbook),
                    card(handbook, media, card, around.before().apply(card.path(handbook))));
        }
        return files;
    }

    @Override
    public Optional<Map<String, byte[]>> sources(Handbook handbook, Media media) {
        Map<String, byte[]> sources = new TreeMap<>();
        for (Printed card : CARDS) {
            sources.put(
                    card.path(handbook),
                    filled(form, handbook, media, card, LETTERS[0]).getBytes(StandardCharsets.UTF_8));
        }
        return Optional.of(sources);
    }

    private byte[] card(Handbook handbook, Media media, Printed card, Optional<byte[]> before) {
        for (double letters : LETTERS) {
            String filled = filled(form, handbook, media, card, letters);
            if (before.isPresent() && press.isOf(before.get(), filled, media)) {
                return before.get();
            }
        }
        Pdf laid = new Pdf(new byte[0], 0);
        for (double letters : LETTERS) {
            laid = press.pdf(form, filled(form, handbook, media, card, letters), media);
            if (laid.pages() == 1) {
                return laid.bytes();
            }
        }
        if (laid.pages() > 1) {
            press.complain(
                    form,
                    "the card `" + card.id() + "` of " + handbook.unit()
                            + " does not fit on one side; let fewer procedures be `on-card`, or say less in notices");
        }
        return laid.bytes();
    }
}
