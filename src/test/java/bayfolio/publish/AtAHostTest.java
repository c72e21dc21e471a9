package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.check.Check;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody needs who brings the site to a host. */
class AtAHostTest {
    @TempDir
    private Path folder;

    private Path fleet = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void write() throws Exception {
        fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "plover"));
        out = folder.resolve("out");
    }

    @ParameterizedTest
    @CsvSource({
        "https://handbooks.example, /",
        "https://handbooks.example/, /",
        "https://handbooks.example/hire/books, /hire/books/"
    })
    void whatIsNotThereLeadsHomeFromAnyAddress(String address, String base) throws Exception {
        Path file = fleet.resolve("units/fleet.yaml");
        Files.writeString(
                file, Files.readString(file).replaceFirst("(?m)^base-address: .*", "base-address: " + address));

        assertThat(publish()).isZero();

        Document page = Jsoup.parse(Files.readString(out.resolve("web/404.html")));
        List<String> led = page.select("a[href], link[href]").eachAttr("href");
        List<String> loaded = page.select("link[href]").eachAttr("href");
        assertThat(led).isNotEmpty().allMatch(href -> href.startsWith(base));
        assertThat(led).contains(base + "index.html");
        assertThat(loaded)
                .allSatisfy(href -> assertThat(out.resolve("web").resolve(href.substring(base.length())))
                        .exists());
        assertThat(page.select("meta[name=robots]").attr("content")).isEqualTo("noindex");
        assertThat(Files.readAllLines(out.resolve("web/_headers")))
                .contains(base + "knot/*", base + "assets/*", base + "*")
                .filteredOn(line -> line.startsWith("/"))
                .allMatch(line -> line.startsWith(base));
        assertThat(out.resolve("staff/404.html")).doesNotExist();
    }

    @Test
    void whatChangedIsListedForWhoeverUploadsIt() throws Exception {
        Path list = folder.resolve("changed.txt");
        assertThat(publish("--changed-files", list.toString())).isZero();
        assertThat(Files.readAllLines(list))
                .contains("web/index.html", "web/404.html", "web/knot/index.html", "staff/plover/index.html")
                .isSorted();

        assertThat(publish("--changed-files", list.toString())).isZero();
        assertThat(list).isEmptyFile();

        Path unit = fleet.resolve("units/knot/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("name: Pump switch", "name: Switch of the pump"));
        assertThat(publish("--changed-files", list.toString())).isZero();
        assertThat(Files.readAllLines(list))
                .contains("web/knot/switches.html", "web/knot/kept.json", "web/knot/handbook.json")
                .doesNotContain("web/index.html", "web/knot/compartments.html", "web/handbook.schema.json")
                .noneMatch(path -> path.contains("plover"));

        Files.move(fleet.resolve("units/plover"), folder.resolve("sold"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(
                facts, Files.readString(facts) + "left:\n  - {id: plover, name: Plover, text: This coach was sold.}\n");
        assertThat(publish("--changed-files", list.toString())).isZero();
        assertThat(Files.readAllLines(list))
                .contains("web/index.html", "web/plover/index.html", "web/plover/search.json");
        assertThat(out.resolve("web/plover/index.html")).content().contains("This coach was sold.");
        assertThat(out.resolve("web/plover/search.json")).doesNotExist();
    }

    @Test
    void aFleetThatIsChangedMeanwhileIsNotPublished() throws Exception {
        publish();
        String before = Files.readString(out.resolve("web/index.html"));
        Path unit = fleet.resolve("units/knot/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("name: Knot", "name: Red Knot"));
        FleetState read = FleetState.of(fleet);
        Check check = DemoFleet.of(fleet).check();
        Files.writeString(unit, Files.readString(unit) + "# looked at again\n");

        assertThatThrownBy(() -> Publisher.publish(
                        check,
                        read,
                        Theme.load(fleet, Theme.BUILT_IN),
                        new Publisher.Wanted(List.of("knot"), Set.of(Publisher.WEB), Printing.USUAL),
                        out))
                .isInstanceOf(PublishException.class)
                .hasMessage("Something in `units/knot` was changed while it was published; nothing was published."
                        + " Run it again.");
        assertThat(out.resolve("web/index.html")).hasContent(before);
        assertThat(DemoFleet.files(out.resolve(".editions")).keySet()).noneMatch(path -> path.startsWith("2/"));
    }

    private int publish(String... words) {
        return SmallFleet.publish(fleet, out, words);
    }
}
