package bayfolio.cli;

import bayfolio.check.RulePages;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.JsonReport;
import bayfolio.finding.SarifReport;
import bayfolio.source.UnitsPath;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells everything that is wrong with the fleet, in one run. */
@Command(
        name = "check",
        description = "Tells everything that is untrue or missing, with file, line and column, in one run.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:nothing is wrong", "1:errors were found", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio check whimbrel", "Example: bayfolio check --explain unknown-reference"})
final class CheckCommand implements Callable<Integer> {
    /** How findings are printed. */
    enum Format {
        TEXT,
        JSON,
        SARIF
    }

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description =
                    "text for people, json for programs, sarif (2.1.0) for editors and code hosts; ${DEFAULT-VALUE} where left out.")
    private Format format = Format.TEXT;

    @Option(
            names = "--explain",
            paramLabel = "CODE",
            description = "Print the page of a finding's code, and check nothing.")
    private Optional<String> explain = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        if (explain.isPresent()) {
            out.print(page(explain.get()));
            out.flush();
            return 0;
        }
        Findings findings = about(fleet.withEditions(fleet.check(fleet.theme())));
        switch (format) {
            case JSON -> out.print(JsonReport.of(findings));
            case SARIF -> out.print(SarifReport.of(findings, RulePages::of));
            case TEXT -> out.print(fleet.report(findings));
        }
        out.flush();
        return findings.stop(fleet.strict) ? 1 : 0;
    }

    private String page(String code) {
        return RulePages.of(code)
                .orElseThrow(() -> new ParameterException(spec.commandLine(), "There is no code `" + code + "`."));
    }

    /** Where coaches are named: what is wrong for them, and what is wrong for the whole fleet. */
    private Findings about(Findings all) {
        return fleet.units.isEmpty()
                ? all
                : Findings.of(all.all().stream().filter(this::concerns).toList());
    }

    private boolean concerns(Finding finding) {
        return finding.coaches().isEmpty()
                || finding.units().stream().anyMatch(fleet.units::contains)
                || UnitsPath.coach(finding.at().file().path())
                        .filter(fleet.units::contains)
                        .isPresent();
    }
}
