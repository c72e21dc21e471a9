package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.finding.Finding;
import bayfolio.model.Condition.And;
import bayfolio.model.Condition.Has;
import bayfolio.model.Condition.Not;
import bayfolio.model.Condition.Or;
import bayfolio.procedure.Demo;
import bayfolio.read.FleetReader;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConditionReaderTest {
    private static final Has<String> SOLAR = new Has<>("solar");
    private static final Has<String> JACKS = new Has<>("jacks");
    private static final Has<String> DEF = new Has<>("def");

    private static final FeatureWords WORDS =
            FleetReader.read(Folders.at(Path.of(""))).fleet().equipment().words();

    private final List<Finding> findings = new ArrayList<>();

    @Test
    void everyCoachIsNoFeature() {
        assertThat(read("every coach")).isEqualTo(new Condition.Always<>());
        assertThat(findings).isEmpty();
    }

    @Test
    void andBindsCloserThanOr() {
        assertThat(read("solar or jacks and def")).isEqualTo(new Or<>(SOLAR, new And<>(JACKS, DEF)));
        assertThat(read("solar and jacks or def")).isEqualTo(new Or<>(new And<>(SOLAR, JACKS), DEF));
    }

    @Test
    void notBindsClosest() {
        assertThat(read("not solar and jacks")).isEqualTo(new And<>(new Not<>(SOLAR), JACKS));
        assertThat(read("not solar or jacks")).isEqualTo(new Or<>(new Not<>(SOLAR), JACKS));
        assertThat(read("not not solar")).isEqualTo(new Not<>(new Not<>(SOLAR)));
    }

    @Test
    void bracketsBindFirst() {
        assertThat(read("(solar or jacks) and def")).isEqualTo(new And<>(new Or<>(SOLAR, JACKS), DEF));
        assertThat(read("not(solar and(jacks or def))")).isEqualTo(new Not<>(new And<>(SOLAR, new Or<>(JACKS, DEF))));
        assertThat(findings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "solar, false, false, true",
        "not generator, false, false, true",
        "generator and not inverter, false, true, false",
        "black-tank or cassette-toilet, true, true, true",
        "generator and slide-out or winter-hire, true, false, true",
        "generator and (slide-out or winter-hire), true, false, false",
        "every coach, true, true, true"
    })
    void conditionsHoldByWhatTheCoachHas(String written, boolean whimbrel, boolean dunlin, boolean turnstone) {
        Condition<String> condition = read(written);

        assertThat(List.of("whimbrel", "dunlin", "turnstone"))
                .extracting(id -> condition.holds(Demo.coach(id).features()::contains))
                .containsExactly(whimbrel, dunlin, turnstone);
    }

    @Test
    void anUnknownFeatureIsToldAtItsColumnWithNearNames() {
        assertThat(read("solar and not (jcks or def)")).isEqualTo(new Condition.Unread<>());
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("unknown-feature");
            assertThat(finding.at()).hasToString("units/shared/procedures/x.md:6:22");
            assertThat(finding.at().endColumn()).isEqualTo(26);
            assertThat(finding.message()).isEqualTo("`jcks` is no feature of a coach");
            assertThat(finding.near()).contains("jacks");
        });
    }

    @Test
    void everyUnknownFeatureIsTold() {
        read("slar or jaks or df");

        assertThat(findings).extracting(finding -> finding.at().column()).containsExactly(7, 15, 23);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    solar and              | 7  | a feature is missing at the end
                    not                    | 7  | a feature is missing at the end
                    solar and or jacks     | 17 | a feature is missing before `or`
                    and solar              | 7  | a feature is missing before `and`
                    solar or ()            | 17 | a feature is missing before `)`
                    solar jacks            | 13 | `jacks` is one word too many
                    solar not jacks        | 13 | `not` is one word too many
                    solar) and jacks       | 12 | `)` is one word too many
                    (solar or jacks        | 7  | a bracket is not closed
                    """)
    void aMalformedConditionIsToldAndHoldsNowhere(String written, int column, String message) {
        assertThat(read(written)).isEqualTo(new Condition.Unread<>());
        assertThat(findings)
                .filteredOn(finding -> finding.code().equals("malformed-condition"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).isEqualTo(message);
                    assertThat(finding.at().column()).isEqualTo(column);
                });
    }

    @Test
    void columnsCountCodePoints() {
        read("\ud83d\ude80 or jcks");

        assertThat(findings).extracting(finding -> finding.at().column()).containsExactly(7, 12);
    }

    @Test
    void columnsAreRightBehindAQuote() {
        SourceFile file = new SourceFile("x.md", "when: \"solar or jcks\"");

        ConditionReader.read(new Located<>("solar or jcks", Place.of(file, 1, 7, 15)), WORDS, findings::add);

        assertThat(findings).extracting(finding -> finding.at().column()).containsExactly(17);
    }

    @Test
    void everyCoachIsNotJoinedWithFeatures() {
        assertThat(read("every coach and solar")).isEqualTo(new Condition.Unread<>());
        assertThat(findings).extracting(Finding::code).containsExactly("unknown-feature");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "()", ")(", "not not", "((((", "and and", "or )"})
    void nothingThatIsWrittenThrows(String written) {
        assertThat(read(written)).isEqualTo(new Condition.Unread<>());
        assertThat(findings).hasSize(1);
    }

    @Test
    void aConditionOverSeveralLinesIsToldAsAWhole() {
        SourceFile file = new SourceFile("x.md", "when: >\n  solar\n  jaks\n");
        Place at = new Place(file, new Position(1, 7), new Position(3, 7));

        ConditionReader.read(new Located<>("solar jaks", at), WORDS, findings::add);

        assertThat(findings).extracting(Finding::at).containsExactly(at);
    }

    /** As behind {@code when: } on line 6. */
    private Condition<String> read(String written) {
        findings.clear();
        SourceFile file = new SourceFile("units/shared/procedures/x.md", "\n\n\n\n\nwhen: " + written);
        Place at = Place.of(file, 6, 7, written.codePointCount(0, written.length()));
        return ConditionReader.read(new Located<>(written, at), WORDS, findings::add);
    }
}
