package bayfolio.rename;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Roles that the program asks for by their names, in rules, ranges and pages; a fleet cannot call them otherwise. */
final class ProgramRoles {
    /** A word a line; a test holds it against the source code. */
    private static final String LIST = "/bayfolio/roles-of-the-program.txt";

    private static final Set<String> ALL = read();

    private ProgramRoles() {}

    static boolean asksFor(String role) {
        return ALL.contains(role);
    }

    private static Set<String> read() {
        try (InputStream in = Objects.requireNonNull(ProgramRoles.class.getResourceAsStream(LIST), LIST)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank())
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the list of roles", e);
        }
    }
}
