package bayfolio.check.sense;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.finding.Finding;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What staff write down at a return is read and judged as all else. */
class HireMarksTest {
    @Test
    void aMarkThatCannotBeIsTold(@TempDir Path folder) throws Exception {
        assertThat(told(folder, """
                marks:
                  - {side: left, from-front: 90 ft, kind: dent, since: 2024-01-05}
                  - {side: lef, kind: dint, since: 2024-01-05}
                  - {side: left, kind: dent}
                """))
                .containsExactlyInAnyOrder(
                        "2:30 impossible-figure", "3:12 wrong-value", "3:23 wrong-value", "4:5 missing-key");
    }

    /** The newest of them tells what day it is: one of today is no day that is yet to come. */
    @Test
    void aMarkOfTodayIsNothingWrong(@TempDir Path folder) throws Exception {
        assertThat(told(folder, """
                marks:
                  - {side: rear, from-front: 2 ft, height: 2 ft, kind: scratch, size: 3 in, since: 2026-11-28}
                """)).isEmpty();
    }

    private static List<String> told(Path folder, String marks) throws Exception {
        Path root = DemoFleet.copy(DemoFleet.SMALL, folder);
        DemoFleet.write(root.resolve("units/plover/marks.yaml"), marks);
        return DemoFleet.of(root).check().findings().all().stream()
                .filter(finding -> finding.at().file().path().endsWith("marks.yaml"))
                .map(HireMarksTest::line)
                .toList();
    }

    private static String line(Finding finding) {
        return finding.at().line() + ":" + finding.at().column() + " " + finding.code();
    }
}
