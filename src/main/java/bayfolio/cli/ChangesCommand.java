package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.Editions;
import bayfolio.edition.Snapshot;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.issue.ChangeJson;
import bayfolio.issue.ChangeReport;
import bayfolio.issue.Consequences;
import bayfolio.issue.Now;
import bayfolio.model.Unit;
import bayfolio.source.Hidden;
import com.google.gson.JsonArray;
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
import picocli.CommandLine.Spec;

/** Tells what has changed in handbooks. */
@Command(
        name = "changes",
        description = {
            "Tells what is otherwise between two editions of a coach, or between one and what its files say now: things, facts,"
                    + " steps, hazards, figures with the facts that they hang on, texts; and the pages that each of it is on.",
            "A change of words that says nothing else is called editorial."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:told",
            "1:an edition could not be read, or a coach has an error and was compared by its facts alone",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio changes whimbrel",
            "Example: bayfolio changes whimbrel --from 3 --to 4 --json",
            "Example: bayfolio changes --all"
        })
final class ChangesCommand implements Callable<Integer> {
    private static final String NOW = "now";

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--from",
            paramLabel = "NUMBER",
            description = "The edition to compare with; the last one where left out.")
    private Optional<Integer> from = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "NUMBER",
            defaultValue = NOW,
            description = "The edition that is compared, or `now`, what the files say; now where left out.")
    private String to = NOW;

    @Option(
            names = "--all",
            description = "All coaches that have an edition: what a change in shared texts does to each.")
    private boolean all;

    @Option(names = "--json", description = "For programs.")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (fleet.units.isEmpty() != all) {
            throw new ParameterException(spec.commandLine(), "Name the coaches, or ask for --all of them.");
        }
        if (!to.equals(NOW) && !to.matches("[1-9][0-9]{0,5}")) {
            throw new ParameterException(
                    spec.commandLine(), "`--to " + Hidden.visible(to) + "`: the number of an edition, or `now`.");
        }
        Check check = fleet.check(fleet.theme());
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<Finding> findings = new ArrayList<>();
        JsonArray told = new JsonArray();
        int exit = 0;
        for (Unit unit : check.fleet().units()) {
            if (!all && !fleet.units.contains(unit.id())) {
                continue;
            }
            Editions editions = Editions.of(fleet.folder(), unit.id(), findings::add);
            if (editions.last() == 0) {
                if (!all) {
                    err.println(Hidden.visible("No edition of `" + unit.id() + "` was issued yet."));
                    exit = 1;
                }
                continue;
            }
            int first = from.orElse(to.equals(NOW) ? editions.last() : Math.max(1, Integer.parseInt(to) - 1));
            Optional<Edition> before = edition(editions, first, findings);
            Optional<Now> now = to.equals(NOW) ? Optional.of(Now.of(check, unit)) : Optional.empty();
            Optional<Snapshot> after = now.isPresent()
                    ? now.map(Now::snapshot)
                    : edition(editions, Integer.parseInt(to), findings).map(Edition::snapshot);
            if (before.isEmpty() || after.isEmpty()) {
                exit = 1;
                continue;
            }
            if (after.get().document().isEmpty()) {
                err.println(Hidden.visible("`" + unit.id() + "` has "
                        + TextReport.count(check.findings().stopping(unit.id(), false))
                        + ": only its facts were compared."));
                exit = 1;
            }
            List<Consequences> changes = Consequences.of(
                    Comparison.between(before.get().snapshot(), after.get()),
                    before.get().date(),
                    now.map(Now::coach));
            told.add(ChangeJson.of(unit.id(), String.valueOf(first), to, changes));
            if (!json) {
                out.print(Hidden.visible(ChangeReport.of(
                        unit.id(),
                        to.equals(NOW) ? "edition " + first + " and now" : "editions " + first + " and " + to,
                        changes)));
            }
        }
        err.print(TextReport.of(Findings.of(findings), false));
        if (json) {
            out.print(Hidden.visible(ChangeJson.text(told)));
        }
        return findings.isEmpty() ? exit : 1;
    }

    private Optional<Edition> edition(Editions editions, int number, List<Finding> findings) {
        if (!editions.numbers().contains(number)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "There is no edition " + number + "; there is "
                            + editions.numbers().stream()
                                    .map(String::valueOf)
                                    .reduce((a, b) -> a + ", " + b)
                                    .orElse("none")
                            + ".");
        }
        return editions.read(number, findings::add);
    }
}
