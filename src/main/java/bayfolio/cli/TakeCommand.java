package bayfolio.cli;

import bayfolio.read.FleetReader;
import bayfolio.source.Hidden;
import bayfolio.survey.Take;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings what was entered at a coach into the files of the fleet. */
@Command(
        name = "take",
        description = {
            "Merges the file that the page of a survey gave out into the description of its coach, with comments, order and line"
                    + " ends kept, after showing what would change.",
            "What says something else by now than when it was looked at stays as it is, and is told."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all of it was taken, or is so already",
            "1:something was not taken, or nothing was written since nobody said yes",
            "2:the words of the call are wrong"
        },
        footer = {"", "Example: bayfolio take survey-whimbrel.json --yes"})
final class TakeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The file that the page of a survey gave out.")
    private Path file = Path.of("");

    @Mixin
    private FleetRoot fleet = new FleetRoot();

    @Mixin
    private Consent consent = new Consent();

    @Option(names = "--list-photos", description = "List its pictures under `photos` of the coach, too.")
    private boolean listed;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        FleetReader.Reading reading = FleetReader.read(fleet.folder());
        Take take = Take.of(file, reading.fleet(), fleet.root, listed);
        out.print(Hidden.visible(take.difference()));
        out.flush();
        if (take.older()) {
            err.println("The description has changed since the page was made; each fact was compared by itself.");
        }
        take.told().forEach(each -> err.println(Hidden.visible(each.toString())));
        int whole = take.told().isEmpty() ? 0 : 1;
        if (take.isNothing()) {
            out.println(take.already() == 0 ? "There is nothing to take." : "All that could be taken is so already.");
            return whole;
        }
        if (!consent.given()) {
            err.println("Nothing was written.");
            return 1;
        }
        take.make();
        out.println("Taken: " + take.taken() + (take.already() == 0 ? "" : "; so already: " + take.already()) + ".");
        return whole;
    }
}
