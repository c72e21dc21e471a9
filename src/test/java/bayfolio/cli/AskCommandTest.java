package bayfolio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import com.google.gson.JsonParser;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AskCommandTest {
    @TempDir
    private Path folder;

    /** What a run printed, and how it ended. */
    private record Said(int exit, String out, String err) {}

    private static Said run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Folders.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Said(exit, out.toString(), err.toString().replace("\r\n", "\n"));
    }

    private static Said ask(Path fleet, String... words) {
        List<String> all = new ArrayList<>(List.of("ask", "--fleet", fleet.toString()));
        all.addAll(List.of(words));
        return run(all.toArray(String[]::new));
    }

    @Test
    void helpTellsTheExitCodesAndRunsInItsExamples() {
        Said help = run("ask", "--help");

        assertThat(help.exit()).isZero();
        assertThat(help.out())
                .contains("\nExit codes:\n")
                .contains("answered, also where no coach has it")
                .contains("\nExample: bayfolio ask tank.gray.capacity\n")
                .doesNotContain("${");
        assertThat(run("ask", "feature:generator and not feature:solar").exit()).isZero();
    }

    @Test
    void answersStandAloneAndTheCountBesideThem() {
        Said said = run("ask", "role:black-dump-valve", "whimbrel", "redpoll");

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .matches("whimbrel  switch\\.black-dump-valve  Black tank valve  units/whimbrel/unit\\.yaml:\\d+\n");
        assertThat(said.err()).isEqualTo("1 of 2 coaches\n");
    }

    @Test
    void thatNoCoachHasItIsAnAnswer() {
        assertThat(run("ask", "feature:solar and not feature:solar")).isEqualTo(new Said(0, "", "0 of 8 coaches\n"));
        assertThat(run("ask", "--format", "csv", "feature:solar and not feature:solar")
                        .out())
                .isEqualTo("coach,what,value,number,unit,file,line\r\n");
        assertThat(JsonParser.parseString(run("ask", "--format", "json", "feature:solar and not feature:solar")
                                .out())
                        .getAsJsonObject()
                        .getAsJsonArray("answers"))
                .isEmpty();
    }

    @Test
    void wrongWordsOfTheQuestionAreWrongUsage() {
        Said said = run("ask", "feature:solr");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err())
                .startsWith("question:1:9: error: `solr` is no feature of a coach [unknown-feature]\n"
                        + "1 | feature:solr\n  |         ^^^^\nhelp: did you mean `solar`?\n");
    }

    @Test
    void anUnknownCoachAndNoQuestionAreWrongUsage() {
        assertThat(run("ask", "solar", "dunln").exit()).isEqualTo(2);
        assertThat(run("ask").exit()).isEqualTo(2);
        assertThat(run("ask", "").exit()).isEqualTo(2);
        assertThat(run("ask", "solar", "--format", "sarif").exit()).isEqualTo(2);
    }

    @Test
    void aCoachThatCouldNotBeReadIsNamedAndEndsOtherwise() throws Exception {
        DemoFleet.copy(DemoFleet.SMALL, folder);
        Path coach;
        try (var files = Files.walk(folder)) {
            coach = files.filter(it -> it.endsWith("unit.yaml")).findFirst().orElseThrow();
        }
        Files.writeString(coach, "id: [");
        String id = coach.getName(coach.getNameCount() - 2).toString();

        Said said = ask(folder, "size.height");
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).startsWith(id + ": not all is known: units/" + id + "/unit.yaml could not be read\n");
    }

    @Test
    void aFolderWithoutAFleetHasNoCoach() {
        Said said = ask(folder, "feature:solar");

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEqualTo("0 of 0 coaches\n");
    }
}
