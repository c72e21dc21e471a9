package bayfolio.model;

import java.util.Locale;
import java.util.regex.Pattern;

/** What a text says of a state, as far as its first words are clear. */
public final class States {
    private static final Pattern OPEN = Pattern.compile("^(?:open|opened|on)\\b");
    private static final Pattern SHUT = Pattern.compile("^(?:shut|closed|off)\\b");
    private static final Pattern OUT = Pattern.compile("^(?:out|extended|down and out|up)\\b");

    private States() {}

    public static boolean open(String state) {
        return OPEN.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }

    public static boolean shut(String state) {
        return SHUT.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }

    public static boolean out(String state) {
        return OUT.matcher(state.strip().toLowerCase(Locale.ROOT)).find();
    }

    /** Whether one is clearly open or on, and the other shut or off. */
    public static boolean opposed(String one, String other) {
        return open(one) && shut(other) || shut(one) && open(other);
    }
}
