package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.edition.Edition;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.issue.ChangeReport;
import bayfolio.issue.Consequences;
import bayfolio.issue.Issue;
import bayfolio.model.Unit;
import bayfolio.source.Hidden;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Issues an edition of coaches. */
@Command(
        name = "issue",
        description = {
            "Freezes the handbook of a coach as an edition, a file in its folder `editions`, to be kept with the rest of the fleet.",
            "Nothing is written where the check finds an error in one of the coaches, or where nothing has changed."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:issued",
            "1:nothing was issued: errors were found, or nothing has changed",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio issue whimbrel --note \"Lithium house batteries\"",
            "Example: bayfolio issue --model bay-24 --note \"New fridge\" --date 2026-04-18"
        })
final class IssueCommand implements Callable<Integer> {
    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--note",
            paramLabel = "TEXT",
            required = true,
            description = "What is new, in a sentence that renters read.")
    private String note = "";

    @Option(names = "--model", paramLabel = "MODEL", description = "All coaches of a model, those that have changed.")
    private Optional<String> model = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "The day of the edition, such as 2026-04-18; the day of the fleet where left out.")
    private Optional<LocalDate> date = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (fleet.units.isEmpty() == model.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Name the coaches, or their model with --model.");
        }
        if (note.isBlank()) {
            throw new ParameterException(spec.commandLine(), "`--note` is empty; say what is new in a sentence.");
        }
        Check check = fleet.checkOnly(fleet.theme(), this::wanted);
        List<Unit> units = check.fleet().units().stream().filter(this::wanted).toList();
        if (units.isEmpty() && model.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "No coach has the model `" + Hidden.visible(model.get()) + "`.");
        }
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<String> asked = model.isPresent() ? units.stream().map(Unit::id).toList() : fleet.units;
        List<Finding> stopping = asked.stream()
                .flatMap(coach -> check.findings().stopping(coach, fleet.strict).stream())
                .distinct()
                .toList();
        if (!stopping.isEmpty()) {
            err.print(fleet.report(Findings.of(stopping)));
            err.println("Nothing was issued.");
            return 1;
        }
        LocalDate day = date.or(() -> check.fleet().asOf())
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "No file of the fleet speaks of a day; give one with --date."));
        List<Finding> findings = new ArrayList<>();
        Issue issue = Issue.of(check, fleet.folder(), units, day, note.strip(), findings::add);
        if (!findings.isEmpty()) {
            err.print(TextReport.of(Findings.of(findings), false));
            err.println("Nothing was issued.");
            return 1;
        }
        if (issue.editions().isEmpty()) {
            err.println("Nothing has changed since the last edition of "
                    + Hidden.visible(String.join(", ", issue.unchanged())) + "; nothing was issued.");
            return 1;
        }
        issue.write(fleet.root);
        for (Edition edition : issue.editions()) {
            out.print(Hidden.visible(told(edition, issue)));
        }
        if (!issue.unchanged().isEmpty()) {
            out.println(Hidden.visible(issue.unchanged().stream()
                    .collect(Collectors.joining(", ", "Nothing has changed in ", ", which keeps its edition."))));
        }
        return 0;
    }

    private boolean wanted(Unit unit) {
        return model.isPresent()
                ? unit.model().filter(model.get()::equals).isPresent()
                : fleet.units.contains(unit.id());
    }

    private static String told(Edition edition, Issue issue) {
        String coach = edition.snapshot().unit();
        String issued = "Issued: edition " + edition.number() + " of " + coach + ", " + edition.date() + ".\n";
        return edition.number() == 1
                ? issued
                : issued
                        + ChangeReport.of(
                                coach,
                                "editions " + (edition.number() - 1) + " and " + edition.number(),
                                Consequences.unasked(issue.changes().getOrDefault(coach, List.of())))
                        + "\n";
    }
}
