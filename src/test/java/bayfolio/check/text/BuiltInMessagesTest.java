package bayfolio.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words that the program carries. */
final class BuiltInMessagesTest {
    private static final Catalogs CATALOGS = catalogs();

    private static final Set<String> SAID_BY_NAME = Set.of(
            "done-when",
            "if-not",
            "if-nothing-helped",
            "lacking.size-height",
            "lacking.size-length",
            "lacking.size-width");

    private static final String OF_DEVICES = "choice.appliance-what.";

    private static Catalogs catalogs() {
        try {
            return Theme.load(Path.of(""), Theme.BUILT_IN).catalogs();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void nothingIsWrongWithThem() {
        assertThat(MessagesOfThemes.all(CATALOGS, true)).isEmpty();
    }

    /** What a file of equipment makes an appliance be. */
    private static final Set<String> DEVICES = FleetReader.read(Folders.at(Path.of("")))
            .fleet()
            .equipment()
            .devices()
            .keySet();

    /**
     * What neither code nor a template nor a script names, by the last part of its key at least, nobody says; what an
     * appliance is, files of equipment name.
     */
    @Test
    void eachIsSaid() throws Exception {
        StringBuilder code = new StringBuilder();
        for (String folder : List.of("src/main/java/bayfolio", "themes/harbor")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(it -> it.toString().matches(".*\\.(java|mustache|js)"))
                        .toList()) {
                    code.append(Files.readString(file));
                }
            }
        }
        Set<String> words = Pattern.compile("[A-Za-z][A-Za-z0-9-]*")
                .matcher(code.toString().replace('_', '-'))
                .results()
                .map(it -> it.group().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        Set<String> silent = new TreeSet<>();
        List<String> keys =
                new ArrayList<>(CATALOGS.of(Catalogs.ENGLISH).patterns().keySet());
        for (String key : keys) {
            String last = key.substring(key.lastIndexOf('.') + 1);
            if (key.startsWith(OF_DEVICES)) {
                if (!DEVICES.contains(last)) {
                    silent.add(key);
                }
                continue;
            }
            // Endings of a procedure are sections that a script has, and sizes are named by their keys.
            if (!SAID_BY_NAME.contains(key) && !key.startsWith("source.") && !words.contains(last)) {
                silent.add(key);
            }
        }

        assertThat(silent).isEmpty();
    }
}
