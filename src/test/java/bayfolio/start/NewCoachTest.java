package bayfolio.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.finding.Finding;
import bayfolio.read.SisterFleet;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coaches that are begun: nothing that is another one's own comes along, and all that has to be looked up is told. */
class NewCoachTest {
    @TempDir
    Path temp;

    private static NewCoach.Named named(String id) {
        return new NewCoach.Named(id, "Begun", Optional.empty());
    }

    @Test
    void oneLikeAnotherHasNothingOfWhatIsThatOnesOwn() throws Exception {
        Path root = temp.resolve("fleet");
        new SisterFleet(List.of("whimbrel"), 1).write(temp.resolve("layered"), root);

        NewCoach.like(Folders.at(root), named("stint"), "whimbrel-1").write(Folders.at(root));

        String text = Files.readString(root.resolve("units/stint/unit.yaml"));
        assertThat(text)
                .contains("id: stint\n", "name: Begun\n", "to-confirm: [number]", "to-confirm: [as-weighed]")
                .doesNotContain("as-weighed:", "age-code:", "refits:", "photos:", "cover:", "replace-by:", "notices:");
        List<Finding> errors = errors(root);
        assertThat(errors).isNotEmpty().allSatisfy(it -> {
            assertThat(it.code()).isEqualTo("to-be-confirmed");
            assertThat(it.coaches()).containsExactly("stint");
        });
    }

    @Test
    void oneOfAModelSaysItsNameAndWhatIsToBeLookedUp() throws Exception {
        Path root = temp.resolve("fleet");
        new SisterFleet(List.of("dunlin"), 1).write(root, temp.resolve("full"));

        NewCoach.ofModel(Folders.at(root), new NewCoach.Named("stint", "Stint", Optional.of("D9")), "dunlin-kind")
                .write(Folders.at(root));

        assertThat(Files.readString(root.resolve("units/stint/unit.yaml")))
                .startsWith("# yaml-language-server: $schema=../models/dunlin-kind/unit.schema.json\n"
                        + "id: stint\nmodel: dunlin-kind\nname: Stint\nnumber: D9\n")
                .contains("- id: smoke-alarm\n    to-confirm: [replace-by]", "weights:\n  to-confirm: [as-weighed]");
        assertThat(root.resolve("units/models/dunlin-kind/unit.schema.json")).exists();
        assertThat(errors(root))
                .isNotEmpty()
                .allSatisfy(it -> assertThat(it.code()).isEqualTo("to-be-confirmed"));
    }

    @ParameterizedTest
    @CsvSource({
        "whimbrel, whimbrel, There is a coach or a model `whimbrel` already",
        "models, whimbrel, `models` cannot be the id of a coach",
        "../out, whimbrel, cannot be the id of a coach",
        "stint, whimbrl, Did you mean `whimbrel`?"
    })
    void whatCannotBeIsToldAndNothingIsWritten(String id, String other, String told) {
        assertThatThrownBy(() -> NewCoach.like(Folders.at(Path.of(".")), named(id), other))
                .isInstanceOf(StartException.class)
                .hasMessageContaining(told);
    }

    @Test
    void aFleetIsBegunOnceAndInACountryThatThereIs() throws Exception {
        StringWriter err = new StringWriter();
        String[] words = {
            "add",
            "--fleet",
            temp.toString(),
            "--fleet-name",
            "Reed",
            "--base-address",
            "https://handbook.reed.example",
            "--country",
            "uk",
            "--language",
            "en-US",
            "--phone",
            "+1 555-0142",
            "--after-hours-phone",
            "x",
            "--roadside-phone",
            "+1 555-0144",
            "--address",
            "2 Reed Lane"
        };

        assertThat(run(err, words)).isEqualTo(1);
        assertThat(err.toString()).startsWith("There is no country `uk`: there is ");
        words[8] = "us";
        assertThat(run(err, words)).isEqualTo(1);
        assertThat(err.toString()).contains("`x` is no phone number");
        assertThat(temp.resolve("units")).doesNotExist();
        words[14] = "+1 555-0143";
        assertThat(run(err, words)).isZero();
        assertThat(run(err, words)).isEqualTo(1);
        assertThat(err.toString()).contains("There is a fleet here already");
    }

    private static int run(StringWriter err, String... words) {
        return Folders.run(new PrintWriter(new StringWriter()), new PrintWriter(err), words);
    }

    private static List<Finding> errors(Path root) throws Exception {
        return DemoFleet.of(root).check().findings().all().stream()
                .filter(Finding::isError)
                .toList();
    }
}
