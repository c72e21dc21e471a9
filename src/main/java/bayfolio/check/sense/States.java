package bayfolio.check.sense;

import java.util.Locale;
import java.util.regex.Pattern;

/** What a text says of a state, as far as its first words are clear. */
final class States {
    private static final Pattern OPEN = Pattern.compile("^(?:open|opened|on)\\b");
    private static final Pattern SHUT = Pattern.compile("^(?:shut|closed|off)\\b");
    private static final Pattern OUT = Pattern.compile("^(?:out|extended|down and out|up)\\b");

    private States() {}

    static boolean open(String state) {
        return OPEN.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }

    static boolean shut(String state) {
        return SHUT.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }

    static boolean out(String state) {
        return OUT.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }
}
