package bayfolio.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Asking;
import bayfolio.Canaries;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Condition;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Nothing that is for staff has a name in a text for renters, however it is asked for: each try is told at its tag, and
 * the word planted in every fact for staff comes out nowhere.
 */
final class StaffNamesTest {
    private static final String PLANTED = "Qx7Qx7";

    private static final String ENDINGS = "\n## Done when\nIt is.\n\n## If not\nCall.\n";

    private final List<Unit> units = Demo.fleet().units().stream()
            .map(unit -> Canaries.in(unit, PLANTED))
            .toList();
    private final Fleet fleet = new Fleet(
            Demo.fleet().facts(),
            units,
            Demo.fleet()
                    .shared()
                    .with(Demo.fleet().countries().stream()
                            .map(country -> new Country(Canaries.in(country.facts(), PLANTED)))
                            .toList()));
    private int told;

    @Test
    void everyKeyForStaffIsToldInEachOfTwelveWays() {
        Set<Key<?>> tried = new LinkedHashSet<>();
        int ways = 0;
        for (Unit unit : units) {
            for (Asking.Way way : Asking.ways(new Coach(fleet, unit), tried)) {
                ways += each(unit, List.of(way.text()));
            }
        }
        System.out.println(tried.size() + " keys for staff asked for in " + ways + " ways, " + told + " told");
        assertThat(tried).containsExactlyInAnyOrderElementsOf(Asking.declared());
        assertThat(told).isEqualTo(ways).isGreaterThan(250);
    }

    @Test
    void aThingForStaffIsToldInEachWay() {
        for (Unit unit : units) {
            for (Shape<? extends Thing> kind : Canaries.WITH_SOME_FOR_STAFF) {
                String name = kind.name();
                String id = name + "." + Canaries.id(kind);
                each(
                        unit,
                        List.of(
                                "@{{" + id + ".name}}",
                                "@{{#" + id + "}}{{name}}{{/" + id + "}}",
                                "@{{#" + id + "}}It is there.{{/" + id + "}}",
                                "@{{^" + id + "}}It is not there.{{/" + id + "}}",
                                "@{{#" + id + ".name}}It has one.{{/" + id + ".name}}",
                                "@{{#any." + id + "}}It is there.{{/any." + id + "}}",
                                "[@{{" + id + ".name}}](page:home)",
                                "[](@" + name + ":" + Canaries.id(kind) + ")",
                                "[it](@" + name + ":" + Canaries.id(kind) + ")",
                                "{{#unit.size}}@{{" + id + ".name}}{{/unit.size}}",
                                "**@{{" + id + ".name}}**"));
            }
            String role = "item." + Canaries.ROLE;
            each(
                    unit,
                    List.of(
                            "@{{#" + role + "}}{{name}}{{/" + role + "}}",
                            "@{{^" + role + "}}It is not there.{{/" + role + "}}",
                            "@{{#any." + role + "}}It is there.{{/any." + role + "}}",
                            "[](@item:" + Canaries.ROLE + ")"));
        }
    }

    /** What has an adapter for an item for staff may not say which. */
    @Test
    void aFactThatNamesAThingForStaffIsTold() {
        Unit unit = units.stream()
                .filter(it -> it.facts().has(Unit.ADAPTERS))
                .findFirst()
                .orElseThrow();
        String adapter = "adapter." + unit.facts().all(Unit.ADAPTERS).get(0).id();

        assertTold(unit, "1. So: @{{" + adapter + ".item.name}}\n" + ENDINGS);
        assertTold(unit, "1. So: {{#" + adapter + "}}@{{#item}}{{name}}{{/item}}{{/" + adapter + "}}\n" + ENDINGS);
    }

    /** Of several, those for staff are left out: whoever asks for all asks for those that renters have. */
    @Test
    void amongSeveralWhatIsForStaffIsLeftOut() {
        for (Unit unit : units) {
            List<String> ways = new ArrayList<>(List.of("{{#unit.notes}}{{text}} {{/unit.notes}}"));
            for (Shape<? extends Thing> kind : Canaries.WITH_SOME_FOR_STAFF) {
                Key<?> list = Canaries.listing(kind).orElseThrow();
                ways.add("{{#all." + kind.name() + "}}{{id}} {{name}} {{/all." + kind.name() + "}}");
                ways.add("{{#unit." + list.name() + "}}{{id}} {{name}} {{/unit." + list.name() + "}}");
            }
            ways.add("{{#all.switch}}{{#photos}}{{id}} {{name}} {{/photos}}{{/all.switch}}");
            ways.add("{{#all.connection}}{{#fits}}{{id}} {{name}} {{/fits}}{{/all.connection}}");
            for (String way : ways) {
                List<Finding> findings = new ArrayList<>();
                String text = filled(unit, Who.EVERYONE, "1. So: " + way + "\n" + ENDINGS, findings);
                assertThat(text).as(way).doesNotContain(PLANTED).doesNotContain("staff-");
                assertThat(findings).as(way).isEmpty();
            }
        }
    }

    @Test
    void staffMayAskForAllOfIt() {
        List<Finding> findings = new ArrayList<>();
        String all = filled(
                units.get(0),
                Who.STAFF,
                "1. So: {{unit.size.measured-by}}, {{#unit.notes}}{{text}} {{/unit.notes}}.\n"
                        + "1. And: {{item.staff-item.name}}, {{#all.photo}}{{name}}{{/all.photo}}.\n" + ENDINGS,
                findings);

        assertThat(findings).isEmpty();
        assertThat(all.split(PLANTED, -1)).hasSizeGreaterThan(4);
    }

    @Test
    void aProcedureForStaffIsTold() {
        Coach coach = new Coach(fleet, units.get(0));
        String id = Demo.library().of(coach.unit()).stream()
                .filter(Script::forStaff)
                .findFirst()
                .orElseThrow()
                .id();
        each(
                units.get(0),
                List.of(
                        "@{{procedure." + id + ".title}}",
                        "@{{#procedure." + id + "}}It is there.{{/procedure." + id + "}}",
                        "@{{^procedure." + id + "}}It is not there.{{/procedure." + id + "}}",
                        "[](@procedure:" + id + ")",
                        "[](@page:service)"));
    }

    /** Each way in a step, in a hazard, in an ending, and in a section that the coach does not take. */
    private int each(Unit unit, List<String> ways) {
        String lacking = unit.equipment().features().stream()
                .filter(feature -> !unit.features().had().contains(feature))
                .findFirst()
                .orElseThrow();
        int count = 0;
        for (String way : ways) {
            for (String body : List.of(
                    "1. So: " + way + "\n" + ENDINGS,
                    "> **WARNING** Hot: " + way + "\n\n1. Wait.\n" + ENDINGS,
                    "1. Wait.\n\n## Done when\nIt is so: " + way + "\n\n## If not\nCall.\n",
                    "1. Wait.{{#has." + lacking + "}} " + way + "{{/has." + lacking + "}}\n" + ENDINGS)) {
                assertTold(unit, body);
                count++;
            }
        }
        told += count;
        return count;
    }

    private void assertTold(Unit unit, String marked) {
        String body = marked.replace(Asking.HERE, "");
        List<Finding> findings = new ArrayList<>();

        String text = filled(unit, Who.ON_CALL, body, findings);

        String before = marked.substring(0, marked.indexOf(Asking.HERE));
        int line = 8 + (int) before.chars().filter(it -> it == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        assertThat(text).as(body).doesNotContain(PLANTED);
        assertThat(findings)
                .as(body)
                .allSatisfy(finding -> assertThat(finding.code()).startsWith("staff-"))
                .anySatisfy(finding -> {
                    assertThat(finding.at().line()).isEqualTo(line);
                    assertThat(finding.at().column()).isEqualTo(column);
                    assertThat(finding.message()).contains(" is for staff");
                    assertThat(finding.mend()).isPresent();
                });
    }

    /** The whole text of a script, and what was wrong with it. */
    private String filled(Unit unit, Who who, String body, List<Finding> findings) {
        Script script = Demo.script(
                "by-test",
                who,
                Stage.LIVING,
                new Condition.Always<>(),
                List.of(),
                body,
                new Whose.OfACoach(unit.id()),
                findings::add);
        List<Script> scripts = new ArrayList<>(Demo.library().scripts());
        scripts.add(script);
        Coach coach = new Coach(fleet, unit);
        Library library = new Library(scripts);
        Procedure procedure = ProcedureFiller.fill(
                script, coach, new References(coach, library, Demo.SCREEN, who == Who.STAFF, true), findings::add);
        ScriptChecker.check(
                fleet,
                new Library(scripts.stream()
                        .filter(it -> it == script || it.forStaff())
                        .toList()),
                finding -> {
                    if (finding.code().startsWith("staff-")) {
                        findings.add(finding);
                    }
                });
        return procedure.toString();
    }
}
