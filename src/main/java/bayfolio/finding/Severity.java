package bayfolio.finding;

import java.util.Locale;

/** How much a finding weighs: only an {@link #ERROR} keeps a handbook from being published. */
public enum Severity {
    ERROR,
    WARNING,
    NOTE;

    /** The word printed in messages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
