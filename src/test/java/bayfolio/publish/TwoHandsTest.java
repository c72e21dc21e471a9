package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bayfolio.read.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two who publish the same fleet from two branches, and bring them together with git. */
class TwoHandsTest {
    private static final String NOTES = "\nnotes:\n";

    @TempDir
    private Path folder;

    @Test
    void bothHaveAllAddressesWhenTheirBranchesAreMerged() throws Exception {
        assumeTrue(hasGit(), "git is not installed");
        Path fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "plover"));
        Files.writeString(fleet.resolve(".gitattributes"), Ledger.MERGED);
        git(fleet, "init", "--quiet", "--initial-branch=main");
        commit(fleet, "The fleet");

        git(fleet, "checkout", "--quiet", "-b", "other");
        edit(fleet, "plover", "plunger");
        List<String> theirs = published(fleet, "theirs");
        commit(fleet, "Plover has a plunger");

        git(fleet, "checkout", "--quiet", "main");
        edit(fleet, "knot", "lever");
        List<String> ours = published(fleet, "ours");
        commit(fleet, "Knot has a lever");
        git(fleet, "merge", "--quiet", "-m", "Both", "other");

        assertThat(Files.readString(fleet.resolve(Ledger.FILE))).doesNotContain("<<<<<<<");
        List<String> both = published(fleet, "both");
        assertThat(both)
                .containsAll(ours)
                .containsAll(theirs)
                .contains("knot/switch/lever", "plover/switch/plunger")
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(new TreeSet<>(both)).hasSameSizeAs(both);
    }

    /** One more switch. */
    private static void edit(Path fleet, String coach, String id) throws IOException {
        Path unit = fleet.resolve("units/" + coach + "/unit.yaml");
        String text = Files.readString(unit);
        assertThat(text).contains(NOTES, "\ngauges:\n");
        Files.writeString(
                unit,
                text.replace(
                                "\ngauges:\n",
                                "  - {id: " + id + ", name: Step " + id
                                        + ", make: lever, side: inside, where: on the wall, access: free}\n\ngauges:\n")
                        .replace(NOTES, NOTES + "  - {text: It moves the step., about: " + id + "}\n"));
    }

    private List<String> published(Path fleet, String out) throws IOException {
        assertThat(SmallFleet.publish(fleet, folder.resolve(out))).isZero();
        return Files.readAllLines(fleet.resolve(Ledger.FILE)).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }

    private static boolean hasGit() throws InterruptedException {
        try {
            return new ProcessBuilder("git", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }

    private static void commit(Path fleet, String message) throws Exception {
        git(fleet, "add", "--all");
        git(fleet, "commit", "--quiet", "-m", message);
    }

    /** Without what somebody has set up for his own work. */
    private static void git(Path fleet, String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of(
                "git", "-c", "user.name=Yard", "-c", "user.email=yard@fleet.example", "-c", "commit.gpgsign=false"));
        all.addAll(List.of(words));
        ProcessBuilder git = new ProcessBuilder(all).directory(fleet.toFile()).redirectErrorStream(true);
        git.environment().put("GIT_CONFIG_GLOBAL", "/dev/null");
        git.environment().put("GIT_CONFIG_NOSYSTEM", "1");
        Process process = git.start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor()).as(String.join(" ", words) + "\n" + said).isZero();
    }
}
