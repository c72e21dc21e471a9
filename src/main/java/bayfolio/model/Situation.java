package bayfolio.model;

import bayfolio.fact.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a coach may be about, in which its equipment has to stand in a certain way; and the work of bringing it there. */
public enum Situation {
    DRIVING,
    /** On a recovery truck. */
    CARRIED,
    REFUELING,
    /** On a ship, or in a tunnel with a rule of its own. */
    FERRY,
    ASLEEP,
    UNATTENDED,
    WIND,
    FROST,
    PICKUP,
    RETURN,
    STANDING,
    SETTING_UP,
    BREAKING_CAMP,
    /** At the last stop, while there is still somewhere to empty and to clean. */
    BEFORE_RETURN,
    /** Laid up by staff. */
    WINTER;

    /** Those in which a thing has a state, not those in which it is brought into one. */
    public static final List<Situation> WITH_STATE =
            Arrays.stream(values()).filter(it -> it.compareTo(SETTING_UP) < 0).toList();

    /** Those of them in which a renter has the coach. */
    public static final List<Situation> OF_RENTERS =
            List.of(DRIVING, CARRIED, REFUELING, FERRY, ASLEEP, UNATTENDED, WIND, FROST, RETURN);

    /** As names write it: {@code setting-up}. */
    public String word() {
        return Type.word(this);
    }

    /** As headings write it, with blanks and in whatever letters. */
    public static Optional<Situation> named(String words) {
        String word = words.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
        return Arrays.stream(values()).filter(it -> it.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Situation::word).toList();
    }
}
