package bayfolio.cli;

import bayfolio.preview.Preview;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows the handbooks while they are written. */
@Command(
        name = "preview",
        description =
                "Serves the handbooks on this computer alone while you write them; each page loads again when a file"
                        + " changes, and shows what is wrong. Nothing is published. Stop it with Ctrl-C.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"1:it could not begin", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio preview --port 8480"})
final class PreviewCommand implements Callable<Integer> {
    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "8480",
            description = "The port on this computer; 0 for any that is free, ${DEFAULT-VALUE} where left out.")
    private int port;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        Preview.Reading reading = new Preview.Reading() {
            @Override
            public Theme theme() throws IOException, UnknownThemeException {
                return fleet.theme();
            }

            @Override
            public FleetReader.Reading fleet() throws IOException {
                return fleet.read();
            }
        };
        try (Preview preview = Preview.start(fleet.root, port, reading, line -> say(out, line))) {
            say(out, "The handbooks are at " + preview.origin() + "; stop with Ctrl-C.");
            new CountDownLatch(1).await();
        }
        return 0;
    }

    private static void say(PrintWriter out, String line) {
        out.println(line);
        out.flush();
    }
}
