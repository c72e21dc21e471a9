package bayfolio.cli;

import java.io.Console;
import java.util.Locale;
import picocli.CommandLine.Option;

/** Whether what was shown is to be written. */
final class Consent {
    @Option(names = "--yes", description = "Write it without asking.")
    private boolean yes;

    /** Asks where there is somebody to ask. */
    boolean given() {
        Console console = System.console();
        if (yes || console == null) {
            return yes;
        }
        String answer = console.readLine("Write this? (y/n) ");
        return answer != null && answer.strip().toLowerCase(Locale.ROOT).startsWith("y");
    }
}
