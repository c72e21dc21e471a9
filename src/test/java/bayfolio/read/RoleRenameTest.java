package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.fact.Described;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Role;
import bayfolio.model.Roles;
import bayfolio.model.Shared;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import bayfolio.procedure.ScriptChecker;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Every role is renamed in the list of roles, in all coaches and in the fleet, one at a time, and not in the shared texts,
 * whose things are often called by ids that read the same: each place of a shared text that uses the old name is told, on
 * its line, and nothing else is. A sample of the roles; all of them with {@code -Drenames=all}.
 */
class RoleRenameTest {
    private static final Path ROOT = Path.of(".");
    private static final int MOST = 25;
    private static final long SEED = 20_261_128;

    @Test
    void everyUseOfARenamedRoleInASharedTextIsTold() throws Exception {
        FleetReader.Reading reading = DemoCoaches.whole(FleetReader.read(Folders.at(ROOT)));
        SourceFile list =
                Folders.at(ROOT).text("units/shared/roles.yaml", finding -> {}).orElseThrow();
        List<Script> shared = reading.library().texts().stream()
                .filter(script -> script.whose().shared())
                .toList();
        int uses = 0;
        int told = 0;
        int roles = 0;
        for (Role role : sample(reading.fleet().roles())) {
            TreeMap<String, Integer> used = uses(role, shared);
            if (used.isEmpty()) {
                continue;
            }
            TreeMap<String, Integer> found = new TreeMap<>();
            ScriptChecker.check(renamed(role.id(), reading.fleet(), list), reading.library(), finding -> {
                assertThat(finding.code()).as(role.id()).isIn("unknown-reference", "unknown-name");
                found.merge(line(finding), 1, Integer::sum);
            });

            assertThat(found).as(role.id()).isEqualTo(used);
            roles++;
            uses += used.values().stream().mapToInt(it -> it).sum();
            told += found.values().stream().mapToInt(it -> it).sum();
        }
        System.out.println("RoleRenameTest: " + roles + " roles, " + uses + " uses in shared texts, " + told + " told");
        assertThat(uses).isPositive();
    }

    private static List<Role> sample(List<Role> roles) {
        if ("all".equals(System.getProperty("renames"))) {
            return roles;
        }
        List<Role> shuffled = new ArrayList<>(roles);
        Collections.shuffle(shuffled, new Random(SEED));
        return shuffled.subList(0, MOST);
    }

    private static String line(Finding finding) {
        return finding.at().file().path() + ":" + finding.at().line();
    }

    /** Found by searching the files as text: in links, in names and at the beginning of sections, not at their end. */
    private static TreeMap<String, Integer> uses(Role role, List<Script> shared) {
        Pattern use = Pattern.compile("]\\(" + role.kind() + ":" + role.id() + "[ )]|\\{\\{[#^]?(?:any\\.)?"
                + role.kind() + "\\." + role.id() + "[.}]");
        TreeMap<String, Integer> uses = new TreeMap<>();
        for (Script script : shared) {
            int number = script.firstLine();
            for (String line : script.body().split("\n", -1)) {
                Matcher matcher = use.matcher(line);
                while (matcher.find()) {
                    uses.merge(script.file().path() + ":" + number, 1, Integer::sum);
                }
                number++;
            }
        }
        return uses;
    }

    private static Fleet renamed(String role, Fleet fleet, SourceFile list) {
        Roles roles = read(changed(list, "(?m)^(  - id: )" + role + "$", "$1" + role + "-two"), Roles.SHAPE);
        List<Unit> units = new ArrayList<>();
        fleet.units()
                .forEach(unit ->
                        units.add(read(changed(unit.facts().at().file(), held(role), role + "-two"), Unit.SHAPE)));
        return new Fleet(
                read(changed(fleet.facts().facts().at().file(), held(role), role + "-two"), FleetFacts.SHAPE),
                units,
                new Shared(
                        roles.facts().all(Roles.ROLES),
                        fleet.words(),
                        fleet.sources(),
                        fleet.countries(),
                        fleet.equipment()));
    }

    /** In lists of roles, and where an id or a reference reads the same nowhere else. */
    private static String held(String role) {
        return "(?<=roles: \\[[a-z, -]{0,200})(?<![a-z-])" + role + "(?![a-z-])";
    }

    private static SourceFile changed(SourceFile file, String pattern, String by) {
        return new SourceFile(
                file.path(), Pattern.compile(pattern).matcher(file.text()).replaceAll(by));
    }

    private static <T extends Described> T read(SourceFile file, Shape<T> shape) {
        return FleetReader.yaml(file, shape, finding -> {
                    throw new AssertionError(finding);
                })
                .orElseThrow();
    }
}
