package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command about a fleet takes. */
final class FleetOptions extends FolderOptions {
    @Parameters(
            paramLabel = "UNIT",
            arity = "0..*",
            description = "Ids of coaches; all of the fleet where none is named.")
    List<String> units = List.of();

    @Option(names = "--strict", description = "Let warnings stop, as errors do.")
    boolean strict;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    /** Reads and checks the whole fleet, since coaches share procedures. */
    Check check(Theme loaded) throws IOException {
        FleetReader.Reading reading = read();
        return Check.of(reading.fleet(), reading.library(), loaded.catalogs(), reading.findings());
    }

    /** Reads the whole fleet, as of the day that was asked for. */
    FleetReader.Reading read() throws IOException {
        return read(units);
    }

    /** Findings for people, with a summary below; nothing where nothing was found. */
    String report(Findings findings) {
        boolean color = spec.commandLine().getColorScheme().ansi().enabled();
        return findings.all().isEmpty() ? "" : TextReport.of(findings, color) + "\n" + TextReport.summary(findings);
    }
}
