package bayfolio.rename;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.model.Role;
import bayfolio.read.FleetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of roles that no fleet may rename is that of those which stand in the source code, as a whole word of a short text. */
final class ProgramRolesTest {
    private static final Pattern TEXT = Pattern.compile("\"([^\"\n]*)\"");
    private static final Path LIST = Path.of("src/main/resources/bayfolio/roles-of-the-program.txt");

    /** They stand there as kinds of things, sides and words of writers. */
    private static final Set<String> NO_ROLES = Set.of("awning", "ladder", "lift", "roof", "steady");

    @Test
    void theListIsThatOfTheSourceCode() throws IOException {
        List<String> roles = FleetReader.read(Folders.at(Path.of(""))).fleet().roles().stream()
                .map(Role::id)
                .toList();
        TreeSet<String> asked = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                TEXT.matcher(Files.readString(file))
                        .results()
                        .map(MatchResult::group)
                        .map(text -> text.substring(1, text.length() - 1))
                        .filter(text ->
                                text.chars().filter(letter -> letter == ' ').count() < 3)
                        .flatMap(text -> Stream.of(text.split("[| ]")))
                        .flatMap(word -> roles.stream()
                                // Some are known by how they end: `-alarm`.
                                .filter(role -> role.equals(word)
                                        || word.startsWith("-") && word.length() > 3 && role.endsWith(word)))
                        .forEach(asked::add);
            }
        }
        asked.removeAll(NO_ROLES);

        String list = asked.stream().collect(Collectors.joining("\n", "", "\n"));
        if (System.getProperty("golden", "").equals("write")) {
            Files.writeString(LIST, list);
        }
        assertThat(Files.readString(LIST)).isEqualTo(list);
    }
}
