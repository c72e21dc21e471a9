package bayfolio.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import bayfolio.DemoFleet;
import bayfolio.LeastUnit;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Condition;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.read.FleetReader;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferencesTest {
    private static final Place AT = Place.of(new SourceFile("x.md", "[](x)"), 1, 4, 1);

    private final List<Finding> findings = new ArrayList<>();

    // ---- what is there ----

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    compartment:service-bay      | L6 Service bay (left side)
                    tray:short-tray              | Short tray (right side, R3 Tray storage, floor of the tray storage)
                    door:entry-door              | Entry door (right side, behind the right front wheel)
                    step:entry-step              | Entry step (right side, under the entry door)
                    switch:jack-control          | Jack control (left of the driver's seat, on the side wall)
                    gauge:co-alarm-bedroom       | *
                    connection:sewer-outlet      | *
                    tank:black                   | Black tank (under the floor, between the frame rails, below the bath)
                    supply:shore                 | Shore power 50 A
                    adapter:adapter-50-30        | 50 A to 30 A adapter
                    circuit:pump-circuit         | *
                    load:front-air-load          | *
                    bank:house-bank              | *
                    appliance:water-heater       | Water heater (right side, under the galley, burner outside in R4)
                    slide:lounge-slide           | Lounge slide-out (left side, sofa and dinette)
                    awning:patio-awning          | Patio awning (right side, over the entry door)
                    item:shore-cord              | Power cord (left side, L9 Power cord, on the reel)
                    """)
    void everyKindOfThingIsNamedByIdOrRoleWithItsPlace(String written, String text) {
        List<Inline> links = resolve(written);

        assertThat(findings).isEmpty();
        assertThat(links).singleElement().isInstanceOfSatisfying(Inline.Things.class, things -> {
            Inline.Link link = things.each().get(0).link();
            Target.OfThing target = (Target.OfThing) link.target();
            assertThat(target.kind()).isEqualTo(written.split(":")[0]);
            assertThat(link.at()).isEqualTo(AT);
        });
        if (!text.equals("*")) {
            assertThat(Inline.plain(links)).isEqualTo(text);
        }
    }

    @Test
    void whatStandsAtTheSiteIsNamedToo() {
        assertThat(Inline.plain(resolve("switch:site-breaker")))
                .isEqualTo("Site breaker (on the pedestal or post of your site, above or beside the outlet)");
    }

    @Test
    void everyOtherSchemeLeadsToItsOwnTarget() {
        assertThat(resolve("procedure:use-water-pump"))
                .extracting(ReferencesTest::target, Inline::plain)
                .containsExactly(tuple(
                        new Target.OfProcedure("use-water-pump"),
                        Demo.library()
                                .named(whimbrel().unit(), "use-water-pump")
                                .orElseThrow()
                                .head()
                                .title()));
        assertThat(resolve("word:amp")).extracting(ReferencesTest::target).containsExactly(new Target.OfWord("amp"));
        assertThat(resolve("page:walk-round"))
                .extracting(ReferencesTest::target, Inline::plain)
                .containsExactly(tuple(new Target.OfPage("walk-round"), "words of page.walk-round"));
        assertThat(resolve("stage:living"))
                .extracting(ReferencesTest::target, Inline::plain)
                .containsExactly(tuple(new Target.OfStage("living"), "words of stage.living"));
        assertThat(resolve("phone:roadside"))
                .extracting(ReferencesTest::target, Inline::plain)
                .containsExactly(tuple(new Target.OfPhone("roadside", "+1 555-0130"), "+1 555-0130"));
        assertThat(findings).isEmpty();
    }

    /** Whatever plug it has: one of 120 V may be hired out in Europe. */
    @ParameterizedTest
    @CsvSource({
        "whimbrel, 911",
        "turnstone, '112 (fire, ambulance) or 110 (police)'",
        "redpoll, '112 (any help), 122 (fire), 133 (police) or 144 (ambulance); in Italy and France 112'"
    })
    void emergencyNumbersAreThoseOfTheCountry(String coach, String text) {
        List<Inline> links = Demo.references(Demo.coach(coach), false)
                .resolve("phone:emergency", Wish.NONE, List.of(), AT, findings::add);

        assertThat(Inline.plain(links)).isEqualTo(text);
        assertThat(links.stream().filter(Inline.Link.class::isInstance))
                .hasSize(text.replaceAll("\\D+", " ").strip().split(" ").length)
                .allSatisfy(link -> assertThat(target(link))
                        .isEqualTo(new Target.OfPhone("emergency", Inline.plain(List.of(link)))));
        assertThat(findings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"tank:gray", "procedure:use-water-pump", "word:amp", "page:walk-round", "stage:living", "phone:hours"})
    void givenWordsAreKept(String written) {
        List<Inline> given = List.of(new Inline.Emphasis(List.of(new Inline.Text("these words"))));

        List<Inline> links = references(false).resolve(written, Wish.NONE, given, AT, findings::add);

        assertThat(links)
                .singleElement()
                .isInstanceOfSatisfying(
                        Inline.Link.class, link -> assertThat(link.inside()).isEqualTo(given));
    }

    // ---- what is not ----

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    tank:gry              | unknown-reference | there is no tank `gry`                 | gray
                    switch:gray-dmp-valve | unknown-reference | there is no switch `gray-dmp-valve`    | gray-dump-valve
                    procedure:use-watr-pump | unknown-reference | there is no procedure `use-watr-pump` | use-water-pump
                    word:ampp             | unknown-reference | there is no word `ampp`                | amp
                    page:walk-around      | unknown-reference | there is no page `walk-around`         | walk-round
                    stage:livin           | unknown-reference | there is no stage `livin`              | living
                    phone:hour            | unknown-reference | there is no phone `hour`               | hours
                    swtich:gray           | unknown-kind      | `swtich` is no kind of thing that a reference may name | switch
                    https://example.com   | unknown-kind      | `https` is no kind of thing that a reference may name  |
                    other.md              | unknown-kind      | `other.md` is no reference; it has no kind             |
                    switch:gray           | wrong-kind        | `gray` is a tank, not a switch         | tank:gray
                    tank:jack-control     | wrong-kind        | `jack-control` is a switch, not a tank | switch:jack-control
                    connection:front-air  | wrong-kind        | `front-air` is an appliance, not a connection | appliance:front-air
                    item:leveling-ramp    | role-not-held     | no item of this coach has the role `leveling-ramp` |
                    switch:frost-valve    | role-not-held     | no switch of this coach has the role `frost-valve` |
                    tank:frost-valve      | wrong-kind        | `frost-valve` is a switch, not a tank  | switch:frost-valve
                    procedure:empty-cassette | procedure-does-not-apply | procedure `empty-cassette` does not apply to this coach |
                    procedure:shut-down-coach | staff-procedure-for-renter | procedure `shut-down-coach` is for staff |
                    item:spare-fuses      | staff-thing-for-renter | item `spare-fuses` is for staff, and this text is for renters |
                    """)
    void aReferenceToNothingIsToldWithTheNearName(String written, String code, String message, String near) {
        List<Inline> given = List.of(new Inline.Text("kept"));

        assertThat(references(false).resolve(written, Wish.NONE, given, AT, findings::add))
                .isEqualTo(given);

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(code);
            assertThat(finding.message()).isEqualTo(message);
            assertThat(finding.at()).isEqualTo(AT);
            if (near == null) {
                assertThat(finding.near()).isEmpty();
            } else {
                assertThat(finding.near()).first().isEqualTo(near);
            }
            assertThat(finding.mend().isPresent() || !finding.near().isEmpty()).isTrue();
        });
    }

    @Test
    void aStageInWhichThereIsNothingToDoIsTold() {
        References none = new References(Demo.coach("whimbrel"), new Library(List.of()), Demo.SCREEN, false, true);

        none.resolve("stage:cold-weather", Wish.NONE, List.of(), AT, findings::add);

        assertThat(findings)
                .singleElement()
                .extracting(Finding::message)
                .isEqualTo("no procedure for renters of this coach is of stage `cold-weather`");
    }

    @Test
    void staffMayReadOfStaffThings() {
        References staff = references(true);

        assertThat(staff.resolve("procedure:shut-down-coach", Wish.NONE, List.of(), AT, findings::add))
                .hasSize(1);
        assertThat(staff.resolve("item:spare-fuses", Wish.NONE, List.of(), AT, findings::add))
                .isNotEmpty();
        assertThat(findings).isEmpty();
    }

    /** Who dials a wrong one loses time: countries of the same numbers are named together, those of home's are not. */
    @Test
    void emergencyNumbersAreThoseOfTheCountriesAbroad(@TempDir Path folder) throws Exception {
        inCountry(folder, "us");
        FleetReader.Reading reading = LeastUnit.read(folder, "hire: {abroad: [ca, no, es, us, nl]}\n");
        Coach coach = new Coach(reading.fleet(), reading.fleet().units().get(0));

        List<Inline> links =
                Demo.references(coach, false).resolve("phone:emergency", Wish.NONE, List.of(), AT, findings::add);

        assertThat(Inline.plain(links))
                .isEqualTo(
                        "911; in Norway 110 (fire), 112 (police) or 113 (ambulance); in Spain and the Netherlands 112");
        assertThat(findings).isEmpty();
    }

    @Test
    void aFormerIdOfAThingLeadsToTheNewOne(@TempDir Path folder) throws Exception {
        inCountry(folder, "de");
        FleetReader.Reading reading = LeastUnit.read(folder, """
                switches:
                  - {id: waste-lever, name: Lever, make: lever, access: free, formerly: [gray-pull, old-pull]}
                  - {id: gray-pullo, name: Other, make: lever, access: free}
                """);
        Coach coach = new Coach(reading.fleet(), reading.fleet().units().get(0));

        Demo.references(coach, false).resolve("switch:gray-pull", Wish.NONE, List.of(), AT, findings::add);

        assertThat(findings).singleElement().extracting(Finding::near).isEqualTo(List.of("waste-lever"));
    }

    @Test
    void aFormerIdOfAProcedureLeadsToTheNewOne() {
        Script renamed = Demo.script(
                "empty-tanks",
                Who.RENTER,
                Stage.LIVING,
                new Condition.Always<>(),
                List.of("dump-it"),
                "",
                finding -> {});

        Finding finding = References.unknownScript(Form.PROCEDURE, "dump-it", AT, new Library(List.of(renamed)));

        assertThat(finding.near()).containsExactly("empty-tanks");
    }

    @Test
    void aProcedureThatDoesNotApplyIsNamedWhereItDoes() {
        References turnstone = Demo.references(Demo.coach("turnstone"), false);

        assertThat(Demo.coach("turnstone").unit().has("cassette-toilet")).isTrue();
        assertThat(turnstone.resolve("procedure:empty-cassette", Wish.NONE, List.of(), AT, findings::add))
                .hasSize(1);
        assertThat(findings).isEmpty();
    }

    private List<Inline> resolve(String written) {
        return references(false).resolve(written, Wish.NONE, List.of(), AT, findings::add);
    }

    private static References references(boolean staff) {
        return Demo.references(whimbrel(), staff);
    }

    private static Coach whimbrel() {
        return Demo.coach("whimbrel");
    }

    private static Target target(Inline inline) {
        return ((Inline.Link) inline).target();
    }

    private static void inCountry(Path folder, String country) throws Exception {
        DemoFleet.write(folder.resolve("units/fleet.yaml"), """
                name: Test Fleet
                base-address: https://handbook.test.example
                country: %s
                languages: [en-US]
                phones:
                  - {id: hours, number: +1 555-0100}
                """.formatted(country));
    }
}
