package bayfolio.cli;

import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Difference;
import bayfolio.read.Confirmation;
import bayfolio.read.Folder;
import bayfolio.read.RewriteException;
import bayfolio.read.Shown;
import bayfolio.source.Hidden;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a writer's word that what a coach says otherwise than its model is still so. */
@Command(
        name = "confirm",
        description = {
            "Says that what a coach states otherwise than its model is still so: keeps, beside each of it, the digest of what the model"
                    + " says now, so that you are asked again when that changes.",
            "Also renews the schema by which editors offer the ids of the model."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:kept", "1:something could not be read or written", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio confirm avocet gray-tank"})
final class ConfirmCommand implements Callable<Integer> {
    @Mixin
    private OneCoach coach = new OneCoach();

    @Parameters(
            index = "1..*",
            paramLabel = "THING",
            arity = "0..*",
            description = "Ids of things, or keys, that it is about; all where none is named.")
    private List<String> things = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Folder folder = coach.folder();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<Finding> findings = new ArrayList<>();
        Optional<Shown> shown = Shown.of(folder, coach.known(), findings::add);
        err.print(TextReport.of(Findings.of(findings), false));
        if (shown.isEmpty() || findings.stream().anyMatch(Finding::isError)) {
            err.println("Nothing was written.");
            return 1;
        }
        if (shown.get().difference().isEmpty()) {
            out.println("This coach has no model.");
            return 0;
        }
        try {
            Confirmation confirmation = Confirmation.of(folder, coach.known(), shown.get(), things);
            for (Difference.Override each : confirmation.still()) {
                out.println(Hidden.visible(each.way() + ": " + each.own().value()));
                out.println(Hidden.visible("  the model: " + each.below().value()));
            }
            confirmation.write(folder);
            int count = confirmation.still().size();
            out.println(
                    count == 0
                            ? "Nothing was to be confirmed."
                            : "Confirmed: " + count + (count == 1 ? " fact." : " facts."));
            return 0;
        } catch (RewriteException e) {
            err.println(Hidden.visible(e.getMessage() + "; nothing was written."));
            return 1;
        }
    }
}
