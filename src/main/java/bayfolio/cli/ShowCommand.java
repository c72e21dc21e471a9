package bayfolio.cli;

import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Difference;
import bayfolio.read.Folder;
import bayfolio.read.Shown;
import bayfolio.source.Hidden;
import bayfolio.source.Place;
import bayfolio.source.Steps;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a coach as it is, with the file and the line that each fact comes from. */
@Command(
        name = "show",
        description = {
            "Prints the description of a coach as it is once it is laid over its model, each line with the place that it comes from.",
            "What is printed is a whole description itself."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:printed", "1:it could not be read", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio show whimbrel gray-tank", "Example: bayfolio show sanderling --changed"})
final class ShowCommand implements Callable<Integer> {
    /** Where the places begin, so that most lines have room beside them. */
    private static final int PLACES = 64;

    @Mixin
    private OneCoach coach = new OneCoach();

    @Parameters(
            index = "1",
            paramLabel = "THING",
            arity = "0..1",
            description = "The id of a thing, or a key such as `generator`; all of the coach where left out.")
    private Optional<String> thing = Optional.empty();

    @Option(names = "--changed", description = "Only what differs from the model, and what the model says instead.")
    private boolean changed;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() {
        Folder folder = coach.folder();
        List<Finding> findings = new ArrayList<>();
        Optional<Shown> shown = Shown.of(folder, coach.known(), findings::add);
        PrintWriter out = spec.commandLine().getOut();
        spec.commandLine().getErr().print(TextReport.of(Findings.of(findings), false));
        spec.commandLine().getErr().flush();
        if (shown.isEmpty()) {
            return 1;
        }
        if (changed) {
            changed(shown.get(), out);
        } else {
            lines(shown.get()).forEach(line -> out.println(Hidden.visible(line(line.text(), line.at()))));
        }
        out.flush();
        return 0;
    }

    private List<Shown.Line> lines(Shown shown) {
        List<Shown.Line> lines = thing.map(shown::lines).orElseGet(shown::lines);
        if (lines.isEmpty() && thing.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "The coach has no thing and no key `" + thing.get() + "`." + near(shown));
        }
        return lines;
    }

    private String near(Shown shown) {
        List<String> near = shown.near(thing.orElse(""));
        return near.isEmpty() ? "" : " Did you mean `" + String.join("` or `", near) + "`?";
    }

    private void changed(Shown shown, PrintWriter out) {
        if (shown.difference().isEmpty()) {
            out.println("This coach has no model.");
            return;
        }
        Difference difference = shown.difference().get();
        for (Difference.Override each : difference.overrides()) {
            if (asked(each.way())) {
                out.println(Hidden.visible(line(
                        each.way() + ": " + each.own().value(),
                        Optional.of(each.own().at()))));
                out.println(Hidden.visible(line(
                        "  the model: " + each.below().value(),
                        Optional.of(each.below().at()))));
            }
        }
        for (Difference.Added each : difference.added()) {
            if (asked(each.way())) {
                out.println(Hidden.visible(line(
                        "added: " + each.way() + ": " + each.own().value(),
                        Optional.of(each.own().at()))));
            }
        }
        for (Difference.LeftOut each : difference.leftOut()) {
            if (asked(each.way())) {
                out.println(Hidden.visible(
                        line("left out: " + each.way(), Optional.of(each.at().at()))));
                out.println(Hidden.visible(line(
                        "  the model: " + each.below().value(),
                        Optional.of(each.below().at()))));
            }
        }
    }

    private boolean asked(Steps way) {
        return thing.isEmpty()
                || way.all().stream().anyMatch(step -> step.toString().equals(thing.get()));
    }

    private static String line(String text, Optional<Place> at) {
        return at.map(place -> text
                        + " ".repeat(Math.max(2, PLACES - text.codePointCount(0, text.length())))
                        + "# " + place.file().path() + ":" + place.line())
                .orElse(text);
    }
}
