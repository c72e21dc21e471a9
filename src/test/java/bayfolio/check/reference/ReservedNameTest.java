package bayfolio.check.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import bayfolio.DemoFleet;
import bayfolio.finding.Finding;
import bayfolio.publish.SmallFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReservedNameTest {
    @Test
    void twoFilesThatManySystemsTakeForOneAreTold(@TempDir Path folder) throws Exception {
        SmallFleet.write(folder, List.of("plover"));
        Path procedures = folder.resolve("units/plover/procedures");
        String text = Files.readString(procedures.resolve("open-the-bed.md"));
        Files.writeString(
                procedures.resolve("Open-the-bed.md"), text.replace("id: open-the-bed", "id: open-the-bed-again"));
        assumeThat(procedures.toFile().list()).hasSize(2);

        assertThat(DemoFleet.of(folder).check().findings().all())
                .filteredOn(finding -> finding.code().equals("reserved-name"))
                .extracting(Finding::message)
                .containsExactly(
                        "`units/plover/procedures/open-the-bed.md` differs from"
                                + " `units/plover/procedures/Open-the-bed.md` by capitals alone, which many systems do not see");
    }
}
