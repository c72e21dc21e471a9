package bayfolio.finding;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextReportTest {
    private static final SourceFile UNIT = new SourceFile("units/dunlin/unit.yaml", """
                    id: dunlin
                    loads:
                      - id: roof-ac
                        circuit: ac-rar
                    """);

    @Test
    void aFindingShowsItsLineWithCaretsThenNearNamesThenMend() {
        Finding finding = Finding.error(
                        "unknown-circuit", Place.of(UNIT, 4, 14, 6), "load `roof-ac` names circuit `ac-rar`")
                .near(List.of("ac-rear", "ac-roof"))
                .mend("Name a circuit of this coach.");

        assertThat(report(finding)).isEqualTo("""
                        units/dunlin/unit.yaml:4:14: error: load `roof-ac` names circuit `ac-rar` [unknown-circuit]
                        4 |     circuit: ac-rar
                          |              ^^^^^^
                        help: did you mean `ac-rear` or `ac-roof`?
                        help: Name a circuit of this coach.
                        """);
    }

    @Test
    void findingsStandInFileOrderWithAnEmptyLineBetween() {
        assertThat(report(
                        Finding.warning("late", Place.of(UNIT, 3, 9, 7), "later"),
                        Finding.error("soon", Place.of(UNIT, 1, 5, 6), "sooner")))
                .isEqualTo("""
                        units/dunlin/unit.yaml:1:5: error: sooner [soon]
                        1 | id: dunlin
                          |     ^^^^^^

                        units/dunlin/unit.yaml:3:9: warning: later [late]
                        3 |   - id: roof-ac
                          |         ^^^^^^^
                        """);
    }

    @Test
    void caretsStandUnderWideAndCombiningCharacters() {
        SourceFile file = new SourceFile("units/x/unit.yaml", "name: \u5f0f\u6839 Cafe\u0301 \ud83d\ude80 wrong");

        assertThat(report(Finding.error("c", Place.of(file, 1, 18, 5), "m"))).isEqualTo("""
                        units/x/unit.yaml:1:18: error: m [c]
                        1 | name: \u5f0f\u6839 Cafe\u0301 \ud83d\ude80 wrong
                          |                    ^^^^^
                        """);
        assertThat(report(Finding.error("c", Place.of(file, 1, 7, 2), "m"))).endsWith("  |       ^^^^\n");
    }

    @Test
    void tabsAreShownAsOneSpaceSoThatCaretsFit() {
        SourceFile file = new SourceFile("units/x/unit.yaml", "\tid:\twrong");

        assertThat(report(Finding.error("c", Place.of(file, 1, 6, 5), "m"))).isEqualTo("""
                        units/x/unit.yaml:1:6: error: m [c]
                        1 |  id: wrong
                          |      ^^^^^
                        """);
    }

    @Test
    void aLongLineIsShownAroundThePlace() {
        SourceFile file = new SourceFile("units/x/unit.yaml", "x".repeat(300) + "wrong" + "y".repeat(300));

        List<String> lines = report(Finding.error("c", Place.of(file, 1, 301, 5), "m"))
                .lines()
                .toList();

        assertThat(lines.get(1)).hasSize("1 | ".length() + 160).contains("xxwrongyy");
        assertThat(lines.get(2)).hasSize(lines.get(1).indexOf("wrong") + 5).endsWith("  ^^^^^");
    }

    @Test
    void caretsEndWithWhatIsShown() {
        SourceFile file = new SourceFile("units/x/unit.yaml", "x".repeat(500) + "\nend");
        Place toNextLine = new Place(file, new Position(1, 3), new Position(2, 2));

        assertThat(report(Finding.error("c", Place.of(file, 1, 1, 500), "m")))
                .endsWith("  | " + "^".repeat(160) + "\n");
        assertThat(report(Finding.error("c", toNextLine, "m"))).endsWith("  |   " + "^".repeat(158) + "\n");
    }

    @Test
    void aPointGetsOneCaret() {
        assertThat(report(Finding.error("c", Place.of(UNIT, 1, 5, 0), "m"))).endsWith("  |     ^\n");
    }

    @Test
    void whatIsWrongWithAFileThatIsNotThereHasNoExcerpt() {
        SourceFile missing = new SourceFile("units/fleet.yaml", "");

        assertThat(report(Finding.error("unreadable-file", Place.whole(missing), "the file is missing")
                        .mend("Write it.")))
                .isEqualTo("""
                        units/fleet.yaml:1:1: error: the file is missing [unreadable-file]
                        help: Write it.
                        """);
    }

    @Test
    void aFaultOfSeveralCoachesIsToldOnceAndNamesThem() {
        SourceFile shared = new SourceFile("units/shared/procedures/x.md", "Go [](tank:gry).");
        Finding finding = Finding.error("unknown", Place.of(shared, 1, 7, 8), "there is no tank");

        assertThat(report(
                        finding.on("dunlin").near(List.of("gray")),
                        finding.on("whimbrel").near(List.of("gray-tank")),
                        finding.on("dunlin")))
                .isEqualTo("""
                        units/shared/procedures/x.md:1:7: error: there is no tank (dunlin, whimbrel) [unknown]
                        1 | Go [](tank:gry).
                          |       ^^^^^^^^
                        help: did you mean `gray`?
                        """);
    }

    @Test
    void theCoachIsNotNamedWhereThePathSaysIt() {
        assertThat(report(Finding.error("c", Place.of(UNIT, 1, 5, 6), "m").on("dunlin")))
                .startsWith("units/dunlin/unit.yaml:1:5: error: m [c]\n");
    }

    @Test
    void theSummaryCountsEachSeverityOfEachCoach() {
        Finding error = Finding.error("e", Place.of(UNIT, 1, 1, 2), "m");
        Finding warning = Finding.warning("w", Place.of(UNIT, 1, 1, 2), "m");
        Finding shared = Finding.error("f", Place.of(UNIT, 2, 1, 2), "m").on("whimbrel");

        assertThat(TextReport.summary(Findings.of(List.of()))).isEmpty();
        assertThat(TextReport.summary(Findings.of(List.of(error)))).isEqualTo("dunlin: 1 error\nIn all: 1 error\n");
        assertThat(TextReport.summary(Findings.of(List.of(warning, error, shared))))
                .isEqualTo("""
                        dunlin: 1 error, 1 warning
                        whimbrel: 1 error
                        In all: 2 errors, 1 warning
                        """);
    }

    @Test
    void onATerminalTheSeverityIsColoredAndNothingElseChanges() {
        Finding error = Finding.error("e", Place.of(UNIT, 1, 1, 2), "m");
        String colored = TextReport.of(Findings.of(List.of(error)), true);

        assertThat(colored).contains("\u001B[31merror:\u001B[0m m [e]");
        assertThat(colored.replaceAll("\u001B\\[[0-9]*m", "")).isEqualTo(report(error));
    }

    private static String report(Finding... findings) {
        return TextReport.of(Findings.of(List.of(findings)), false);
    }
}
