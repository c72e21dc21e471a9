package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.JsonReport;
import bayfolio.finding.TextReport;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells everything that is wrong with the fleet, in one run. */
@Command(
        name = "check",
        description = "Tells everything that is untrue or missing, with file, line and column, in one run.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:nothing is wrong", "1:errors were found", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio check whimbrel"})
final class CheckCommand implements Callable<Integer> {
    /** How findings are printed. */
    enum Format {
        TEXT,
        JSON
    }

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "text for people, json for programs; ${DEFAULT-VALUE} where left out.")
    private Format format = Format.TEXT;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Check check = fleet.check(fleet.theme()).check();
        Findings findings = about(check.findings());
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.JSON) {
            out.print(JsonReport.of(findings));
        } else if (!findings.all().isEmpty()) {
            out.print(TextReport.of(findings));
            out.println();
            out.println(TextReport.summary(findings));
        }
        out.flush();
        return findings.hasErrors() ? 1 : 0;
    }

    /** Where coaches are named: what is wrong for them, and what is wrong for the whole fleet. */
    private Findings about(Findings all) {
        return fleet.units.isEmpty()
                ? all
                : Findings.of(all.all().stream().filter(this::concerns).toList());
    }

    private boolean concerns(Finding finding) {
        String path = finding.at().file().path();
        boolean shared = !path.startsWith("units/") || path.startsWith("units/shared/") || path.indexOf('/', 6) < 0;
        return finding.units().isEmpty() && shared
                || finding.units().stream().anyMatch(fleet.units::contains)
                || fleet.units.stream().anyMatch(unit -> path.startsWith("units/" + unit + "/"));
    }
}
