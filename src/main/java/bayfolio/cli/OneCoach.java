package bayfolio.cli;

import picocli.CommandLine.Parameters;

/** What commands about one coach take. */
final class OneCoach extends FleetRoot {
    @Parameters(index = "0", paramLabel = "COACH", description = "The id of the coach, the name of its folder.")
    private String coach = "";

    /** The coach, if there is a folder of it. */
    String known() {
        return known(coach);
    }
}
