package bayfolio.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import bayfolio.DemoFleet;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProcedureFillerTest {
    private static final String ENDINGS = """

            ## Done when
            It hums.

            ## If not
            Call.
            """;

    private final List<Finding> findings = new ArrayList<>();

    // ---- the state that a step wants ----

    @Test
    void aValveThatWorksTheOtherWayRoundIsExplainedInItsStep() {
        Procedure procedure = dunlin("""
                        1. Open [](switch:gray-dump-valve "open").
                        1. Shut [](switch:gray-dump-valve "shut").
                        """);

        assertThat(findings).isEmpty();
        assertThat(procedure.steps().map(step -> texts(step.text())))
                .containsExactly(
                        List.of(
                                "Open Gray valve (left side, L4 Service bay, the handle on the left, below the shelf, with a T-handle).",
                                """
                                Gray valve open: PLATE: GRAY | ACT: Push it in to open. It works the other way round from the black one, since the \
                                blade comes from behind. \
                                | LOOK open: The T-handle is in, against the wall of the bay. \
                                | WRONG shut: The T-handle is out, and a white band on the rod shows."""),
                        List.of(
                                "Shut Gray valve (left side, L4 Service bay, the handle on the left, below the shelf, with a T-handle).",
                                """
                                Gray valve shut: PLATE: GRAY | ACT: Pull it out to shut. It works the other way round from the black one. \
                                | LOOK shut: The T-handle is out, and a white band on the rod shows. \
                                | WRONG open: The T-handle is in, against the wall of the bay."""));
        assertThat(procedure.steps().map(Step::id)).containsExactly("open-gray-dump-valve", "shut-gray-dump-valve");
    }

    @Test
    void aMomentIsToldInTheWordsOfTheDescriptionWithTheLooksThatTheyName() {
        Procedure procedure = dunlin("""
                        1. Leave [](switch:chassis-battery-switch "returned").
                        1. Leave [](switch:chassis-battery-switch "stored").
                        """);

        assertThat(findings).isEmpty();
        assertThat(procedure.steps().map(step -> texts(step.text()).get(1)))
                .satisfiesExactly(
                        returned -> assertThat(returned)
                                .contains("STATE returned: ON.", "ACT: ", "LOOK on: The key lies", "WRONG off: "),
                        stored -> assertThat(stored)
                                .contains("STATE stored: OFF if it stands longer", "LOOK on: ", "LOOK off: ")
                                .doesNotContain("ACT", "WRONG"));
    }

    @Test
    void oneOfSeveralIsJoinedByOr() {
        Procedure procedure = dunlin("""
                        1. Take [](item:fire-extinguisher "any").
                        1. Turn the pump off at [](switch:water-pump-switch "any off").
                        1. Turn off [](switch:water-pump-switch).
                        """);

        assertThat(findings).isEmpty();
        assertThat(steps(procedure))
                .satisfiesExactly(
                        one -> assertThat(one).contains(" or Fire extinguisher in the cab"),
                        one -> assertThat(one).contains(" or Water pump switch in the bath", "LOOK off"),
                        all -> assertThat(all)
                                .contains(" and Water pump switch in the bath")
                                .doesNotContain("LOOK"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    1. Open [](switch:gray-dump-valve "opne").           | 8:36 unknown-state
                    1. Open [](switch:gray-dump-valve "any opne").       | 8:36 unknown-state
                    1. Fill [](connection:fuel-filler "open").           | 8:36 unknown-state
                    1. Go [](procedure:use-water-pump "on").             | 8:36 unknown-state
                    """)
    void aStateThatTheThingDoesNotKnowIsTold(String step, String finding) {
        dunlin(step + "\n");

        assertThat(told()).containsExactly(finding);
    }

    // ---- the parts of a procedure ----

    @Test
    void aProcedureIsReadIntoItsParts() {
        Procedure procedure = whimbrel("""
                        Stand outside.

                        - with gloves
                        - with a light

                        > **CAUTION** The edge is sharp. It cuts.

                        1. Open the bay.
                        1. Look inside.

                           It is dark.

                        ## Done when
                        The bay is open.

                        ## If not
                        Call [](phone:hours).

                        Wait there.
                        """);

        assertThat(findings).isEmpty();
        assertThat(texts(procedure.opening())).containsExactly("Stand outside.", "with gloves; with a light");
        assertThat(procedure.parts())
                .singleElement()
                .extracting(Procedure.Part::title)
                .isEqualTo(Optional.empty());
        assertThat(steps(procedure)).containsExactly("Open the bay.", "Look inside. It is dark.");
        assertThat(procedure.steps().map(Step::id)).containsExactly("open-the-bay", "look-inside");
        assertThat(texts(procedure.endings().get(0).text())).containsExactly("The bay is open.");
        assertThat(texts(procedure.endings().get(1).text())).containsExactly("Call +1 555-0110.", "Wait there.");
    }

    @Test
    void aHazardGuardsTheStepThatFollows() {
        Procedure procedure = whimbrel("""
                        > **WARNING** Hot. It burns.

                        > NOTICE: It drips.

                        1. Open it.
                        1. Wait.

                        > **DANGER** \u2014 Gas. It *kills*.
                        > Go away.

                        1. > **CAUTION** Sharp.

                           Shut it.
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        List<Step> steps = procedure.steps().toList();
        assertThat(steps)
                .extracting(step -> step.hazards().stream().map(Hazard::signal).toList())
                .containsExactly(
                        List.of(Signal.WARNING, Signal.NOTICE), List.of(), List.of(Signal.DANGER, Signal.CAUTION));
        assertThat(steps.get(0).hazards())
                .extracting(hazard -> texts(hazard.text()))
                .containsExactly(List.of("Hot. It burns."), List.of("It drips."));
        assertThat(texts(steps.get(2).hazards().get(0).text())).containsExactly("Gas. It kills. Go away.");
        assertThat(steps.get(2).hazards().get(0).at().line()).isEqualTo(15);
    }

    @Test
    void aHazardAfterItsStepIsTold() {
        whimbrel("""
                1. Open it.

                   > **WARNING** Hot.
                1. Wait.
                """ + ENDINGS);

        assertThat(told()).containsExactly("10:4 hazard-after-step");
    }

    @Test
    void aHazardThatNoStepFollowsIsTold() {
        whimbrel("""
                1. Open it.

                > **WARNING** Hot.
                """ + ENDINGS);

        assertThat(told()).containsExactly("10:1 hazard-after-step");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    > Hot.
                    > **ATTENTION** Hot.
                    > **Warning** Hot.
                    > **WARN**ING Hot.
                    > WARNINGS Hot.
                    > - WARNING
                    """)
    void aHazardWithoutASignalWordIsTold(String quote) {
        whimbrel(quote + "\n\n1. Open it.\n" + ENDINGS);

        assertThat(told()).contains("8:1 unknown-signal-word");
    }

    @Test
    void headingsOfTheThirdLevelGroupSteps() {
        Procedure procedure = whimbrel("""
                        Two places.

                        ### Inside
                        1. Turn it on.

                        ### Outside, at the **left**
                        1. Listen.
                        1. Come back.
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.parts())
                .extracting(
                        part -> part.title().orElse("") + ": " + part.steps().size())
                .containsExactly("Inside: 1", "Outside, at the left: 2");
    }

    @Test
    void aPageEndsWhereItIsSafeToStop() {
        Procedure procedure = whimbrel("""
                        At the pedestal.

                        1. Push the plug in.

                        **Safe to stop:** The plug is in, and [the breaker](switch:site-breaker) is off.

                        ### Turn on the power {#power}
                        1. Switch it on.

                        ### Look
                        1. Read the panel.
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.pages())
                .extracting(page -> page.stream()
                        .map(part ->
                                part.anchor().orElse("-") + " " + part.title().orElse("-") + " "
                                        + part.rest().stream()
                                                .map(block -> Inline.plain(((Block.Paragraph) block).text()))
                                                .collect(Collectors.joining()))
                        .toList())
                .containsExactly(
                        List.of("- - The plug is in, and the breaker is off."),
                        List.of("power Turn on the power ", "- Look "));
        assertThat(procedure.links())
                .extracting(link -> link.target().written())
                .contains("switch:site-breaker");
    }

    /** As on a coach with no safety switch: the page keeps its name, and begins with what is left of it. */
    @Test
    void aPageWhoseFirstPartFallsAwayKeepsItsName() {
        Procedure procedure = whimbrel("""
                        At the panel.

                        1. Look.

                        **Safe to stop:** What is off may stay off.

                        ### Safety switch {#safety-switch}
                        {{#switch.rcd}}
                        1. Switch on [](switch:{{id}}).
                        {{/switch.rcd}}

                        ### Fuses
                        1. Call us.
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.pages().get(1))
                .extracting(
                        part -> part.anchor().orElse("-") + " " + part.title().orElse("-"))
                .containsExactly("safety-switch Fuses");
    }

    /** Nothing is said of what was done in steps that this coach does not have. */
    @Test
    void whereAllOfAPageFallsAwayWhatItMadeSafeIsNotSaid() {
        Procedure procedure = whimbrel("""
                        At the panel.

                        1. Look.

                        **Safe to stop:** Nothing is on.

                        ### Safety switch {#safety-switch}
                        {{#switch.rcd}}
                        1. Switch on [](switch:{{id}}).
                        {{/switch.rcd}}

                        **Safe to stop:** The safety switch is on.

                        ### Fuses {#fuses}
                        1. Call us.

                        **Safe to stop:** All is done.

                        ### More {#more}
                        {{#switch.rcd}}
                        1. Switch on [](switch:{{id}}).
                        {{/switch.rcd}}
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.parts())
                .extracting(part -> part.anchor().orElse("-") + ": "
                        + part.rest().stream()
                                .map(block -> Inline.plain(((Block.Paragraph) block).text()))
                                .collect(Collectors.joining()))
                .containsExactly("-: Nothing is on.", "fuses: ");
    }

    @Test
    void aPageThatBeginsWithNoHeadingIsTold() {
        whimbrel("""
                        At the panel.

                        1. Look.

                        **Safe to stop:** Nothing is on.

                        1. Call us.
                        """ + ENDINGS);

        assertThat(findings).extracting(Finding::code).containsExactly("page-without-anchor");
    }

    @Test
    void whereAllThatFollowsFallsAwayThePageGoesOn() {
        Procedure procedure = whimbrel("""
                        At the panel.

                        {{#switch.rcd}}
                        1. Look.
                        {{/switch.rcd}}

                        **Safe to stop:** Nothing is on.

                        ### Fuses {#fuses}
                        1. Call us.
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.pages()).hasSize(1);
    }

    @Test
    void whatIsMissingIsTold() {
        Procedure procedure = whimbrel("Only words.\n");

        assertThat(findings)
                .extracting(finding -> finding.code() + ": " + finding.message())
                .containsExactly(
                        "no-steps: procedure `by-test` has no steps for this coach",
                        "missing-section: procedure `by-test` has no `Done when`",
                        "missing-section: procedure `by-test` has no `If not`");
        assertThat(procedure.parts()).isEmpty();
    }

    @Test
    void emptyEndingsAndUnknownSectionsAreTold() {
        whimbrel("""
                1. Open it.

                ## Finally
                ## Done when
                ## If not
                Call.

                ### Later
                """);

        assertThat(told())
                .contains("10:1 unknown-section", "15:1 unknown-section")
                .anyMatch(each -> each.endsWith("missing-section"));
    }

    @Test
    void textBetweenStepsIsTold() {
        whimbrel("1. Open it.\n\nThen rest.\n\n1. Shut it.\n" + ENDINGS);

        assertThat(told()).containsExactly("10:1 text-between-steps");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    1. Look: ![x](y.png) | 8:10 | a procedure has no use for this image
                    1. Look <b>here</b>. | 8:9  | a procedure has no use for this HTML inline
                    <p>x</p>             | 8:1  | a procedure has no use for this HTML block
                    """)
    void markupWithoutAUseIsTold(String written, String at, String message) {
        whimbrel(written + "\n\n1. Go.\n" + ENDINGS);

        assertThat(findings).first().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("unexpected-markup");
            assertThat(finding.message()).isEqualTo(message);
            assertThat(finding.at().toString()).endsWith(":" + at);
        });
    }

    @Test
    void aMalformedTemplateIsTheOnlyThingTold() {
        Procedure procedure = whimbrel("1. Open it.\n{{#has.generator}}\n1. Start it.\n");

        assertThat(told()).containsExactly("9:1 malformed-template");
        assertThat(procedure.read()).isFalse();
    }

    // ---- ids of steps ----

    @Test
    void idsOfStepsAreUniqueAndOfTheirFirstWords() {
        Procedure procedure = whimbrel("""
                        1. Wait.
                        1. Wait.
                        1. Wait 2.
                        1. Turn it on: [](switch:house-battery-switch), and leave it on for good.
                        1. Wait {{unit.hire.lowest-night}}.
                        1. {{unit.name}}
                        1. \u00c9t\u00e9
                        """ + ENDINGS);

        assertThat(procedure.steps().map(Step::id))
                .containsExactly("wait", "wait-3", "wait-2", "turn-it-on-house-battery-switch", "wait-4", "step", "t");
    }

    @Test
    void idsOfStepsStayWhenOthersComeInBetween() {
        String before = """
                1. See that all valves are shut.
                1. Open [](switch:black-dump-valve).
                1. Shut it again.
                """;
        String after = """
                > **NOTICE** One at a time.

                1. Put on gloves.
                7. See that all valves are shut.
                {{#has.generator}}
                1. Stop the generator.
                {{/has.generator}}
                1. Open [](switch:black-dump-valve).
                1. Look.
                1) Shut it again.
                """;

        assertThat(whimbrel(after + ENDINGS).steps().map(Step::id))
                .containsSubsequence(
                        whimbrel(before + ENDINGS).steps().map(Step::id).toList());
    }

    @Test
    void idsOfStepsAreTheSameOnEveryCoach() {
        String body = """
                {{#has.jacks}}
                1. Bring the jacks up.
                {{/has.jacks}}
                {{#has.generator}}1. Stop the generator.{{/has.generator}}
                1. Shut {{unit.name}}: [](door:entry-door).
                """ + ENDINGS;

        assertThat(whimbrel(body).steps().map(Step::id))
                .containsExactly("bring-the-jacks-up", "stop-the-generator", "shut-entry-door");
        assertThat(Demo.fill("dunlin", body, findings::add).steps().map(Step::id))
                .containsExactly("stop-the-generator", "shut-entry-door");
        assertThat(Demo.fill("turnstone", body, findings::add).steps().map(Step::id))
                .containsExactly("shut-entry-door");
    }

    @Test
    void stepsOfARepeatedSectionHaveIdsOfTheirOwn() {
        Procedure procedure = Demo.fill("turnstone", """
                        {{#switch.gas-isolation-tap}}
                        1. Shut [](switch:{{id}}).
                        {{/switch.gas-isolation-tap}}
                        """ + ENDINGS, findings::add);

        assertThat(findings).isEmpty();
        assertThat(procedure.steps().map(Step::id))
                .containsExactly("shut-tap-hob", "shut-tap-fridge", "shut-tap-heater");
        assertThat(procedure.steps().map(Step::at).map(Place::line)).containsOnly(9);
    }

    @Test
    void aStepHasTheNameThatItsWriterGives() {
        Procedure procedure = Demo.fill("turnstone", """
                        {{#switch.gas-isolation-tap}}
                        1. Shut [](switch:{{id}}). {#gas-off}
                        {{/switch.gas-isolation-tap}}
                        1. Open the window. **Then:** air comes in {#air}
                           - **It is stuck:** open the door.
                        """ + ENDINGS, findings::add);

        assertThat(findings).isEmpty();
        assertThat(procedure.steps().map(Step::id))
                .containsExactly("gas-off-tap-hob", "gas-off-tap-fridge", "gas-off-tap-heater", "air");
        assertThat(steps(procedure)).noneMatch(text -> text.contains("{#"));
    }

    @Test
    void aNameOfAStepIsGivenOnce() {
        whimbrel("1. Open the window. {#air}\n1. Open the door. {#air}\n" + ENDINGS);

        assertThat(findings)
                .singleElement()
                .extracting(Finding::code, finding -> finding.at().line())
                .containsExactly("anchor-twice", 9);
    }

    // ---- references ----

    @Test
    void anEmptyReferenceIsFilledWithNameAndPlace() {
        Procedure procedure = whimbrel("1. Turn on [](switch:chassis-battery-switch).\n" + ENDINGS);

        assertThat(steps(procedure))
                .containsExactly("Turn on Chassis battery switch (left side, L1 Chassis switch, on the back"
                        + " wall, at hand height, turned on its side).");
        assertThat(procedure.links())
                .singleElement()
                .extracting(Inline.Link::target, Inline.Link::plain)
                .containsExactly(new Target.OfThing("switch", "chassis-battery-switch"), "Chassis battery switch");
    }

    @Test
    void givenTextIsKept() {
        Procedure procedure = whimbrel("1. Turn [the *red* handle](switch:chassis-battery-switch).\n" + ENDINGS);

        assertThat(steps(procedure)).containsExactly("Turn the red handle.");
        assertThat(procedure.links())
                .singleElement()
                .extracting(Inline.Link::plain)
                .isEqualTo("the red handle");
    }

    @Test
    void allHoldersOfARoleAreListedInWalkingOrder() {
        Procedure procedure = Demo.fill(
                "dunlin",
                "1. Know [](door:emergency-exit) and [](compartment:storage-bay).\n" + ENDINGS,
                findings::add);

        assertThat(findings).isEmpty();
        assertThat(procedure.links().map(Inline.Link::plain))
                .containsExactly(
                        "Bedroom exit window",
                        "Window above the cab",
                        "Bedroom roof hatch",
                        "L6 and R7 Rear trunk",
                        "L2 Left storage",
                        "I3 Bed-base locker");
        assertThat(steps(procedure).get(0).replaceAll(" \\([^)]*\\)", ""))
                .isEqualTo("Know Bedroom exit window, Window above the cab and Bedroom roof hatch"
                        + " and L6 and R7 Rear trunk, L2 Left storage and I3 Bed-base locker.");
    }

    @Test
    void severalHoldersSayTheirOwnNamesInsteadOfTheGivenText() {
        Procedure procedure = whimbrel("1. Shut [both](switch:low-point-drain).\n" + ENDINGS);

        assertThat(steps(procedure)).containsExactly("Shut Hot water pipe drain and Cold water pipe drain.");
    }

    @Test
    void referencesAreFoundWhereverTextMayStand() {
        Procedure procedure = whimbrel("""
                        See *[](tank:gray)*, **[](tank:black)** and ***[x](tank:fresh)***.

                        | Tank | Valve |
                        | --- | --- |
                        | [](tank:lp) | **[v](switch:lp-main-valve)** |

                        - [](page:walk-round)
                        - *[](stage:living)*

                        > **CAUTION** Mind [](switch:gray-dump-valve).

                        1. Read [](word:amp).

                           - [](procedure:use-water-pump)
                        """ + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.links().map(Inline.Link::target))
                .containsExactly(
                        new Target.OfThing("tank", "gray-tank"),
                        new Target.OfThing("tank", "black-tank"),
                        new Target.OfThing("tank", "fresh-tank"),
                        new Target.OfThing("tank", "lp-tank"),
                        new Target.OfThing("switch", "lp-main-valve"),
                        new Target.OfPage("walk-round"),
                        new Target.OfStage("living"),
                        new Target.OfThing("switch", "gray-dump-valve"),
                        new Target.OfWord("amp"),
                        new Target.OfProcedure("use-water-pump"));
    }

    /** The reference that is wrong is written once, and told exactly there. */
    @ParameterizedTest
    @CsvSource(delimiter = '\u00a6', quoteCharacter = '`', textBlock = """
                    1. Go [](tank:gry).
                    1. Go *[](tank:gry)* now.
                    1. Go ***[a *b* c](tank:gry)*** now.
                    1. Go [](tank:gray) and [](tank:gry) and [](tank:black).
                    1. Go [](tank:gray)[](tank:gry)[](tank:black).
                    1. \ud83d\ude80 {{unit.name}} \ud83d\ude80 [](tank:gry).
                    1. Go [a [b] c](tank:gry) and (so).
                    1. Go [a](<tank:gry>).
                    1. Go [a](tank:gry "any").
                    1. Go [a](  tank:gry  ).
                    1. Go [the long\\n   way round](tank:gry) there.
                    1. Go [](tank:gray) [the long\\n   way\\n   round](tank:gry) there.
                    1. Go [the long way](\\n   tank:gry) there.
                    > **WARNING** Go [](tank:gry).\\n\\n1. Go.
                    > **WARNING** Go [the\\n> way](tank:gry).\\n\\n1. Go.
                    1. x\\n\\n   | a | b |\\n   |---|---|\\n   | c | [](tank:gry) |
                    | a | b |\\n|---|---|\\n| {{unit.name}} | *[d](tank:gry)* |\\n\\n1. Go.
                    1. x\\n   - y\\n   - [](tank:gry)
                    {{#has.generator}}\\n1. Go [](tank:gry).\\n{{/has.generator}}
                    1. x {{#has.generator}}and [](tank:gry){{/has.generator}}.
                    1. {{#has.solar}}no{{/has.solar}}{{^has.solar}}Go [](tank:gry){{/has.solar}}.
                    {{#tank.gray}}\\n1. {{name}} holds {{capacity}}: [](tank:gry).\\n{{/tank.gray}}
                    """)
    void aWrongReferenceIsToldExactlyWhereItIsWritten(String written) {
        String body = written.replace("\\n", "\n");

        whimbrel(body + "\n" + ENDINGS);

        int start = body.indexOf("tank:gry");
        String before = body.substring(0, start);
        String line = before.substring(before.lastIndexOf('\n') + 1);
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("unknown-reference");
            assertThat(finding.near()).contains("gray");
            assertThat(finding.at().line())
                    .isEqualTo(8 + (int) before.chars().filter(c -> c == '\n').count());
            assertThat(finding.at().column()).isEqualTo(1 + line.codePointCount(0, line.length()));
            assertThat(finding.at().endColumn() - finding.at().column()).isEqualTo("tank:gry".length());
        });
    }

    @Test
    void aWrongReferenceInARepeatedSectionIsToldAtItsOnePlaceEachTime() {
        Demo.fill("turnstone", """
                {{#switch.gas-isolation-tap}}
                1. Shut {{name}}, {{place}}: [](tank:gry).
                {{/switch.gas-isolation-tap}}
                """ + ENDINGS, findings::add);

        assertThat(findings)
                .extracting(finding -> finding.at().toString())
                .hasSize(3)
                .containsOnly("units/shared/procedures/by-test.md:9:33");
    }

    @Test
    void aValueInALinkTargetIsCountedAsItIsWritten() {
        whimbrel("1. Go [](switch:{{tank.gray.id}}) now.\n" + ENDINGS);

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.message()).contains("`gray-tank`");
            assertThat(finding.at().toString()).endsWith("by-test.md:8:10");
            assertThat(finding.at().endColumn()).isEqualTo(10 + "switch:{{tank.gray.id}}".length());
        });
    }

    @Test
    void aValueInALinkTargetMayHoldHyphens() {
        Procedure procedure = whimbrel("1. {{#tank.gray}}Empty [](tank:{{id}}).{{/tank.gray}}\n" + ENDINGS);

        assertThat(findings).isEmpty();
        assertThat(procedure.links())
                .singleElement()
                .extracting(Inline.Link::target)
                .isEqualTo(new Target.OfThing("tank", "gray-tank"));
    }

    // ---- names ----

    @Test
    void numbersAreThoseOfTheCoach() {
        String body = "1. It holds {{tank.gray.capacity}}, of {{unit.name}}, {{phone.hours}}.\n" + ENDINGS;

        assertThat(plain(whimbrel(body))).containsExactly("It holds 55 gal (208 L), of Whimbrel, +1 555-0110.");
        assertThat(plain(Demo.fill("turnstone", body, findings::add)))
                .containsExactly("It holds 88 L (23 gal), of Turnstone, +1 555-0110.");
    }

    @Test
    void namesThatAreWrongAreToldWhereTheyStand() {
        whimbrel("""
                1. Hold {{tank.gray.capasity}}.
                1. Wait {{unit.tires.spare-pressure}} and {{has.generatr}}.
                1. Ask {{switch.low-point-drain.name}}.
                1. Find {{switch.frost-valve}}.
                """ + ENDINGS);

        assertThat(told())
                .containsExactlyInAnyOrder(
                        "8:9 unknown-name",
                        "9:9 unknown-name",
                        "9:43 unknown-name",
                        "10:8 nothing-to-fill-in",
                        "11:9 nothing-to-fill-in");
    }

    @Test
    void whateverIsWrittenIsFilledInOrTold() {
        List<String> pieces = List.of(
                "1. ",
                "- ",
                "> ",
                "> **WARNING** ",
                "## Done when\n",
                "## If not\n",
                "### Inside\n",
                "   ",
                "\t",
                "\n",
                "\n\n",
                "```\n",
                "---\n",
                "| a | b |\n|---|---|\n",
                "| c | ",
                "[](tank:gry)",
                "[](tank:gray)",
                "[a\nb](",
                "switch:frost-valve",
                ")",
                "](",
                "[",
                "<tank:gry>",
                "[a]: tank:gry\n",
                "[a]",
                "![x](y)",
                "<b>",
                "https://x.example",
                "*",
                "**",
                "`",
                "\\",
                "&amp;",
                "{{unit.name}}",
                "{{#switch.low-point-drain}}",
                "{{/switch.low-point-drain}}",
                "{{id}}",
                "[](switch:{{id}})",
                "word",
                " ",
                "\ud83d\ude80",
                "WARNING",
                "[WARNING](tank:gray)");
        Random random = new Random(99);
        for (int i = 0; i < 3_000; i++) {
            StringBuilder body = new StringBuilder();
            int length = 1 + random.nextInt(25);
            for (int j = 0; j < length; j++) {
                body.append(pieces.get(random.nextInt(pieces.size())));
            }
            String written = body.toString();
            int lines = written.split("\n", -1).length;
            findings.clear();

            assertThatCode(() -> whimbrel(written)).as(written).doesNotThrowAnyException();

            assertThat(findings)
                    .as(written)
                    .isNotEmpty()
                    .allSatisfy(finding -> assertThat(finding.at().line()).isLessThan(8 + lines));
        }
    }

    @Test
    void demoProceduresFillWithoutAFinding() {
        for (String id : DemoFleet.coaches()) {
            Coach coach = Demo.coach(id);
            for (Script script : Demo.library().of(coach.unit())) {
                boolean staff = !script.head().who().forRenters();
                References references = Demo.references(coach, staff);

                Procedure procedure = ProcedureFiller.fill(script, coach, references, findings::add);

                assertThat(findings).as(id + " " + script.id()).isEmpty();
                assertThat(procedure.steps().map(Step::id)).doesNotHaveDuplicates();
                assertThat(procedure.steps().findAny().isPresent())
                        .isEqualTo(script.form().hasSteps());
            }
        }
    }

    private Procedure whimbrel(String body) {
        return Demo.fill("whimbrel", body, findings::add);
    }

    private List<String> told() {
        return findings.stream()
                .map(it -> it.at().line() + ":" + it.at().column() + " " + it.code())
                .toList();
    }

    private static List<String> steps(Procedure procedure) {
        return procedure
                .steps()
                .map(step -> String.join(" ", texts(step.text())))
                .toList();
    }

    /** With spaces that do not break as spaces. */
    private Procedure dunlin(String steps) {
        return Demo.fill("dunlin", steps + ENDINGS, findings::add);
    }

    private static List<String> plain(Procedure procedure) {
        return steps(procedure).stream().map(it -> it.replace('\u00a0', ' ')).toList();
    }

    private static List<String> texts(List<Block> blocks) {
        return blocks.stream().map(block -> block.accept(new Plain())).toList();
    }

    private static final class Plain implements Block.Visitor<String> {
        @Override
        public String paragraph(Block.Paragraph block) {
            return Inline.plain(block.text());
        }

        @Override
        public String bullets(Block.Bullets block) {
            return String.join("; ", block.items().stream().map(Inline::plain).toList());
        }

        @Override
        public String table(Block.Table block) {
            return String.join("|", block.head().stream().map(Inline::plain).toList());
        }

        @Override
        public String handling(Block.Handling block) {
            return block.switches().stream()
                    .map(it -> it.name() + " " + it.state() + ": "
                            + it.pieces().stream()
                                    .map(piece -> piece.sort()
                                            + (piece.state().isEmpty() ? "" : " " + piece.state())
                                            + ": " + piece.words())
                                    .collect(Collectors.joining(" | ")))
                    .collect(Collectors.joining("\n"));
        }
    }
}
