package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.edition.Editions;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command about a fleet takes. */
final class FleetOptions extends FolderOptions {
    @Parameters(
            paramLabel = "UNIT",
            arity = "0..*",
            description = "Ids of coaches; all of the fleet where none is named.")
    List<String> units = List.of();

    @Option(names = "--strict", description = "Let warnings stop, as errors do.")
    boolean strict;

    /** Reads and checks the whole fleet, since coaches share procedures. */
    Check check(Theme loaded) throws IOException {
        return check(loaded, reading -> Check.Known.NOTHING);
    }

    /** The same, where something is known of some coaches already. */
    Check check(Theme loaded, Knowing knowing) throws IOException {
        FleetReader.Reading reading = read();
        return Check.of(reading.fleet(), reading.library(), loaded.catalogs(), reading.findings(), knowing.of(reading));
    }

    /** The same, where only some coaches are looked at; what it says of others is not all. */
    Check checkOnly(Theme loaded, Predicate<Unit> looked) throws IOException {
        FleetReader.Reading reading = read();
        return Check.of(
                reading.fleet(),
                reading.library(),
                loaded.catalogs(),
                reading.findings(),
                reading.fleet().units().stream().filter(looked).toList(),
                filled -> {});
    }

    /** What was found, with what is wrong with the editions of the coaches that are asked for. */
    Findings withEditions(Check check) {
        List<String> asked = units.isEmpty() ? check.fleet().coaches() : units;
        return Findings.of(Stream.concat(
                        check.findings().all().stream(),
                        check.fleet().units().only(Set.copyOf(asked)::contains).parallelStream()
                                .flatMap(unit -> Editions.faults(folder(), unit).stream()))
                .toList());
    }

    /** What is known of a fleet that was read. */
    interface Knowing {
        Check.Known of(FleetReader.Reading reading) throws IOException;
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
