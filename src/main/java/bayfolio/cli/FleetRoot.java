package bayfolio.cli;

import bayfolio.finding.NearNames;
import bayfolio.read.Folder;
import bayfolio.source.Lazy;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a fleet is. */
class FleetRoot {
    @Option(
            names = "--fleet",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "The fleet folder, which holds `units`; the current one where left out.")
    Path root = Path.of(".");

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    CommandSpec spec;

    private final Lazy<Folder> folder =
            new Lazy<>(() -> ((Bayfolio) spec.root().userObject()).read().at(root));

    /** The folder; what is read of it is kept for the next reading of the same command. */
    Folder folder() {
        return folder.get();
    }

    /** A coach that the call names, if there is a folder of it. */
    String known(String coach) {
        List<String> coaches = folder().coaches();
        if (!coaches.contains(coach)) {
            List<String> near = NearNames.to(coach, coaches);
            throw new ParameterException(
                    spec.commandLine(),
                    "There is no coach `" + coach + "`; the fleet has "
                            + (coaches.isEmpty() ? "none" : String.join(", ", coaches)) + "."
                            + (near.isEmpty() ? "" : " Did you mean `" + near.get(0) + "`?"));
        }
        return coach;
    }
}
