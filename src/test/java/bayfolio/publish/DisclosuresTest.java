package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Asking;
import bayfolio.Canaries;
import bayfolio.DemoFleet;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.fact.Key;
import bayfolio.finding.Findings;
import bayfolio.model.Coach;
import bayfolio.model.Condition;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.procedure.Demo;
import bayfolio.procedure.Library;
import bayfolio.procedure.ProcedureFiller;
import bayfolio.procedure.References;
import bayfolio.procedure.Script;
import bayfolio.procedure.Stage;
import bayfolio.procedure.Who;
import bayfolio.render.BlankMedia;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.data.MachineCopy;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The second net alone: renters' texts are filled in with the names that staff have, as if nothing were withheld, and
 * what shows through on the rendered pages is told, however short it is.
 */
final class DisclosuresTest {
    /** A door code, and a number that stands on pages for other reasons. */
    private static final String CODE = "4711";

    private final Catalogs screen;
    private final List<Output> outputs;

    DisclosuresTest() throws Exception {
        Theme theme = Theme.load(Path.of(""), Theme.BUILT_IN);
        screen = theme.catalogs();
        Means means = new Means(theme, screen, Demo.fleet(), Printing.USUAL);
        outputs = List.of(new WebSite(means), new MachineCopy(means));
    }

    @Test
    void whatIsForStaffIsToldInEachWayByThePagesAlone() {
        int printed = 0;
        int asked = 0;
        Set<Key<?>> tried = new LinkedHashSet<>();
        for (Unit each : looked()) {
            Unit unit = Canaries.in(each, CODE);
            List<Asking.Way> ways = new ArrayList<>(Asking.ways(new Coach(fleet(unit), unit), tried));
            List<Script> scripts = new ArrayList<>();
            for (Asking.Way way : ways) {
                scripts.add(script("way-" + scripts.size(), way.text().replace(Asking.HERE, "")));
            }
            List<String> more = List.of(
                    "{{item.staff-item.name}}",
                    "{{#item.staff-item}}{{id}}{{/item.staff-item}}",
                    "{{#any.photo.staff-photo}}It is there.{{/any.photo.staff-photo}}",
                    "{{#all.photo}}{{alt}}{{/all.photo}}",
                    "{{#unit.items}}{{note}}{{/unit.items}}",
                    "{{#unit.notes}}{{text}}{{/unit.notes}}");
            more.forEach(way -> scripts.add(script("way-" + scripts.size(), way)));

            List<String> faults = faults(unit, scripts);

            for (int i = 0; i < scripts.size(); i++) {
                String page = unit.id() + "/do/way-" + i + ".html: something for staff shows through: ";
                assertThat(faults).as(scripts.get(i).body()).anyMatch(fault -> fault.startsWith(page));
                if (i < ways.size() && ways.get(i).prints()) {
                    // A day is no text that a code could stand for.
                    assertThat(faults)
                            .as(scripts.get(i).body())
                            .anyMatch(fault -> fault.startsWith(page + "`" + CODE + "` (units/")
                                    || fault.startsWith(page + "`July 4, 2031` (units/"));
                    printed++;
                }
            }
            asked += scripts.size();
        }
        System.out.println(tried.size() + " keys for staff on pages in " + asked + " ways, all told; " + printed
                + " with the fact and its place");
        assertThat(tried).containsExactlyInAnyOrderElementsOf(Asking.declared());
    }

    /** All that is for staff is there, and the texts of the demo fleet ask for none of it. */
    @Test
    void nothingIsToldOfPagesThatNameNothingForStaff() {
        for (Unit each : looked()) {
            for (String word : List.of("2", "yes", "inside", CODE, each.name())) {
                Unit unit = Canaries.in(each, word);
                List<Script> scripts = List.of(script(
                        "way-0", "2, yes, inside and " + CODE + " {{unit.name}} {{#all.item}}{{name}} {{/all.item}}"));

                assertThat(told(unit, scripts, false)).as(word).isEmpty();
            }
        }
    }

    private static List<Unit> looked() {
        return Demo.fleet().units().stream()
                .filter(unit -> DemoFleet.looked().contains(unit.id()))
                .toList();
    }

    @Test
    void itIsToldInTextAttributeDataAndNameOfAFile() {
        Unit unit = Canaries.in(Demo.fleet().units().get(0), CODE);
        Coach coach = new Coach(Demo.fleet(), unit);
        Map<String, byte[]> without = files(Map.of(
                "a.html", "<p>Press 4711 W and .</p>",
                "b.html", "<img alt=''>",
                "c.json", "{\"on\": \"\"}",
                "d.html", "<p>Fine.</p>"));
        Map<String, byte[]> published = files(Map.of(
                "a.html", "<p>Press 4711 W and 4711.</p>",
                "b.html", "<img alt='4711 &amp; up'>",
                "c.json", "{\"on\": \"July 4, 2031\"}",
                "d.html", "<p>Fine.</p>",
                "4711.jpg", ""));

        String place = unit.facts().at().file().path();
        Wording wording = new Wording(coach, screen.of("en-US"));
        assertThat(Disclosures.of(wording, published, without))
                .hasSize(4)
                .anyMatch(fault -> fault.startsWith("a.html: something for staff shows through: `4711` (" + place))
                .anyMatch(fault -> fault.startsWith("b.html: something for staff shows through: `4711` (" + place))
                .anyMatch(fault ->
                        fault.startsWith("c.json: something for staff shows through: `July 4, 2031` (" + place))
                .contains("4711.jpg: whether there is such a file tells something that is for staff");
        assertThat(Disclosures.of(
                        wording, files(Map.of("a.html", "<p>Every 14 weeks.</p>")), files(Map.of("a.html", "<p></p>"))))
                .as("what was only worked out from it")
                .containsExactly("a.html: something for staff shows through: `Every 14 weeks.`");
    }

    private static Map<String, byte[]> files(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }

    private static Script script(String id, String asking) {
        return Demo.script(
                id,
                Who.RENTER,
                Stage.LIVING,
                new Condition.Always<>(),
                List.of(),
                "1. So: " + asking + "\n\n## Done when\nIt is.\n\n## If not\nCall.\n",
                finding -> {});
    }

    private List<String> faults(Unit unit, List<Script> scripts) {
        return told(unit, scripts, true);
    }

    /** @param asStaff whether names withhold nothing */
    private List<String> told(Unit unit, List<Script> scripts, boolean asStaff) {
        Fleet fleet = fleet(unit);
        Check check = new Check(fleet, new Library(scripts), screen, Findings.of(List.of()), Map.of());
        return Disclosures.of(
                new Wording(new Coach(fleet, unit), screen.of("en-US")),
                rendered(check, asStaff),
                rendered(new ForRenters(check).of(unit), asStaff));
    }

    private static Fleet fleet(Unit unit) {
        return new Fleet(
                Demo.fleet().facts(),
                List.of(unit),
                Demo.fleet()
                        .shared()
                        .with(Demo.fleet().countries().stream()
                                .map(country -> new Country(Canaries.in(country.facts(), CODE)))
                                .toList()));
    }

    private Map<String, byte[]> rendered(Check check, boolean asStaff) {
        Coach coach = new Coach(check.fleet(), check.units().get(0));
        References references = new References(coach, check.library(), screen.of("en-US"), asStaff, true);
        CheckedCoach filled = new CheckedCoach(
                coach,
                coach,
                check.library(),
                screen.of("en-US"),
                check.library().of(coach.unit()).stream()
                        .map(script -> ProcedureFiller.fill(script, coach, references, finding -> {}))
                        .toList());
        Handbook theirs = Composer.compose(filled).seenBy(Audience.RENTERS);
        Media media = BlankMedia.of(coach.unit()).seenBy(coach.unit(), Audience.RENTERS);
        Map<String, byte[]> files = new TreeMap<>();
        outputs.forEach(output -> files.putAll(output.files(theirs, media, Output.Around.NOTHING)));
        return files;
    }
}
