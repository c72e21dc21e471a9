package bayfolio.render.print;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.html.Words;
import bayfolio.template.TemplateProblem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Cards of one side: danger and the first hour, what a helper asks for, what is looked at through the windshield. */
public final class Cards implements Output {
    /** In points, the largest first: a card is read by the light of a phone. */
    private static final double[] LETTERS = {24, 22, 20, 18, 17, 16, 15, 14.5, 14};

    private static final List<Printed> CARDS = List.of(Printed.NIGHT_CARD, Printed.PHONE_CARD, Printed.QUICK_CARD);

    private final Means means;
    private final Press press;
    private final Words words = new Words();
    private final Press.Form form;

    public Cards(Means means) {
        this.means = means;
        this.press = new Press(means);
        this.form = press.form("card");
    }

    @Override
    public List<TemplateProblem> complaints() {
        return press.complaints();
    }

    @Override
    public boolean of(Audience reader) {
        return reader == Audience.RENTERS;
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
                    filled(handbook, media, card, LETTERS[0]).getBytes(StandardCharsets.UTF_8));
        }
        return Optional.of(sources);
    }

    private String filled(Handbook handbook, Media media, Printed card, double letters) {
        return press.filled(
                form, PaperView.alone(means, handbook, media, words).alone(Printed.at(handbook), letters, card.page()));
    }

    private byte[] card(Handbook handbook, Media media, Printed card, Optional<byte[]> before) {
        for (double letters : LETTERS) {
            String filled = filled(handbook, media, card, letters);
            if (before.isPresent() && press.isOf(before.get(), filled, media)) {
                return before.get();
            }
        }
        Pdf laid = new Pdf(new byte[0], 0);
        for (double letters : LETTERS) {
            laid = press.pdf(form, filled(handbook, media, card, letters), media);
            if (laid.pages() == 1) {
                return laid.bytes();
            }
        }
        if (laid.pages() > 1) {
            press.complain(
                    form,
                    "the card `" + card.id() + "` of " + handbook.unit()
                            + " does not fit on one side; let fewer procedures be `on-card`");
        }
        return laid.bytes();
    }
}
