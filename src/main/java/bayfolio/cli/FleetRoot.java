package bayfolio.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a fleet is. */
class FleetRoot {
    @Option(
            names = "--fleet",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "The fleet folder, which holds `units`; the current one where left out.")
    Path root = Path.of(".");
}
