package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.model.Rewording;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints what a translator has still to do, in the form in which it is handed in. */
@Command(
        name = "texts",
        description = {
            "Prints the texts of a coach's facts that are not in a language yet, each as it is written and with room for the"
                    + " other words; without a coach, those of the fleet and of what all coaches share.",
            "Add them to units/<coach>/translations/<language>/facts.yaml, or to units/shared/translations/<language>/facts.yaml."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:printed", "1:the fleet could not be read", "2:the words of the call are wrong"},
        footer = {"", "Example: bayfolio texts --language de whimbrel"})
final class TextsCommand implements Callable<Integer> {
    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            required = true,
            description = "The language to translate into: de, fr-CA.")
    private String language = "";

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        Check check = fleet.check(fleet.theme());
        Rewording known = check.library().translations().facts();
        List<Rewording.Source> missing = fleet.units.isEmpty()
                ? known.missing(language, check.fleet())
                : check.units().stream()
                        .filter(unit -> fleet.units.contains(unit.id()))
                        .flatMap(unit -> known.missing(language, unit).stream())
                        .toList();
        out.print(missing.isEmpty() ? "" : "texts:\n");
        missing.stream().flatMap(TextsCommand::entry).forEach(out::println);
        out.flush();
        return 0;
    }

    private static Stream<String> entry(Rewording.Source source) {
        return Stream.concat(
                source.text().value().lines().map(line -> "  # " + line),
                Stream.of("  - of: " + source.of(), "    source: \"" + source.digest() + "\"", "    # text:"));
    }
}
