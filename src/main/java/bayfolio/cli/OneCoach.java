package bayfolio.cli;

import bayfolio.finding.NearNames;
import bayfolio.read.Folder;
import java.util.List;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** What commands about one coach take. */
final class OneCoach extends FleetRoot {
    @Parameters(index = "0", paramLabel = "COACH", description = "The id of the coach, the name of its folder.")
    private String coach = "";

    /** The coach, if there is a folder of it. */
    String known(Folder folder) {
        List<String> coaches = folder.coaches();
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
