package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.prose.ScreenWords;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.theme.Theme;
import bayfolio.render.theme.UnknownThemeException;
import bayfolio.source.Located;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command about a fleet takes. */
final class FleetOptions {
    @Parameters(
            paramLabel = "UNIT",
            arity = "0..*",
            description = "Ids of coaches; all of the fleet where none is named.")
    List<String> units = List.of();

    @Option(
            names = "--fleet",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "The fleet folder, which holds `units`; the current one where left out.")
    Path root = Path.of(".");

    @Option(
            names = "--theme",
            paramLabel = "NAME",
            defaultValue = Theme.BUILT_IN,
            description = "The theme, a folder in `themes`; ${DEFAULT-VALUE} where left out.")
    String theme = Theme.BUILT_IN;

    @Option(names = "--strict", description = "Let warnings stop, as errors do.")
    boolean strict;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    Theme theme() throws IOException, UnknownThemeException {
        return Theme.load(root, theme);
    }

    /** Reads and checks the whole fleet, since coaches share procedures. */
    Check check(Theme loaded) throws IOException {
        FleetReader.Reading reading = FleetReader.read(new Folder(root));
        // A coach is known by its folder, even while its description is broken.
        Set<String> known = new TreeSet<>(reading.folders());
        reading.fleet().units().forEach(unit -> known.add(unit.id()));
        for (String unit : units) {
            if (!known.contains(unit)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "There is no coach `"
                                + unit
                                + "`; the fleet has "
                                + (known.isEmpty() ? "none" : String.join(", ", known))
                                + ".");
            }
        }
        return Check.of(reading.fleet(), reading.library(), words(loaded, reading.fleet()), reading.findings());
    }

    /** Of the language that the fleet names first. */
    static ScreenWords words(Theme theme, Fleet fleet) throws IOException {
        return theme.words(fleet.facts().facts().ifRead(FleetFacts.LANGUAGES).stream()
                .flatMap(languages -> languages.value().stream())
                .map(Located::value)
                .toList());
    }

    /** Findings for people, with a summary below; nothing where nothing was found. */
    String report(Findings findings) {
        boolean color = spec.commandLine().getColorScheme().ansi().enabled();
        return findings.all().isEmpty() ? "" : TextReport.of(findings, color) + "\n" + TextReport.summary(findings);
    }
}
