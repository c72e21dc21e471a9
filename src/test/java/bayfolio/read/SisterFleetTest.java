package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.finding.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fleet written as models and differences, and the same with every coach in full. */
class SisterFleetTest {
    @TempDir
    Path temp;

    @Test
    void bothGiveTheSamePagesAndOneLineOfTheModelChangesAllSisters() throws Exception {
        Path layered = temp.resolve("layered");
        Path full = temp.resolve("full");
        new SisterFleet(List.of("redpoll", "dunlin"), 2).write(layered, full);

        DemoFleet one = DemoFleet.of(layered);
        DemoFleet other = DemoFleet.of(full);
        assertThat(one.check().findings().all()).filteredOn(Finding::isError).isEmpty();
        assertThat(one.check().findings().all())
                .extracting(Finding::message)
                .isSubsetOf(other.check().findings().all().stream()
                        .map(Finding::message)
                        .toList());
        one.publish(temp.resolve("out"), "redpoll-1", "dunlin-2");
        other.publish(temp.resolve("out-full"), "redpoll-1", "dunlin-2");
        Map<String, byte[]> pages = DemoFleet.files(temp.resolve("out/web").toRealPath());
        Map<String, byte[]> inFull =
                DemoFleet.files(temp.resolve("out-full/web").toRealPath());
        assertThat(pages).hasSizeGreaterThan(200);
        assertThat(pages.keySet()).isEqualTo(inFull.keySet());
        pages.forEach((file, bytes) -> assertThat(bytes).as(file).isEqualTo(inFull.get(file)));

        Path model = layered.resolve("units/models/dunlin-kind/model.yaml");
        String text = Files.readString(model);
        assertThat(text).contains("front-pressure: 75 psi");
        Files.writeString(model, text.replace("front-pressure: 75 psi", "front-pressure: 74 psi"));
        assertThat(DemoFleet.of(layered).check().units())
                .filteredOn(unit -> unit.id().startsWith("dunlin"))
                .hasSize(2)
                .allSatisfy(unit -> assertThat(Facets.of(unit)).anyMatch(line -> line.endsWith(" 74 psi")));
    }
}
