package bayfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is handed out, unpacked in an empty folder, runs every command; it is looked at after it was packed. */
final class HandOutIT {
    @TempDir
    private Path empty;

    @Test
    void unpackedAnywhereItRunsEveryCommand() throws Exception {
        Path home = unpacked();
        Path fleet = Files.createDirectory(empty.resolve("a fleet"));

        Files.createDirectories(fleet.resolve("units"));
        Files.copy(Path.of("units/fleet.yaml"), fleet.resolve("units/fleet.yaml"));
        assertThat(run(home, fleet, "add", "sanderling", "--number", "R 12")).isEqualTo("0");
        Path unit = fleet.resolve("units/sanderling/unit.yaml");
        assertThat(said(home, fleet, "check")).contains("[to-be-confirmed]").endsWith("exit code 1");
        Files.writeString(unit, Files.readString(unit).replaceAll("(?m)^ *to-confirm: .*\n", ""));
        assertThat(said(home, fleet, "check")).isEqualTo("\nexit code 0");
        assertThat(run(home, fleet, "publish", "--only", "web")).isEqualTo("0");
        assertThat(fleet.resolve("site-out/web/sanderling/index.html")).exists();
        assertThat(home.resolve("lib/bayfolio.jsa")).exists();
        Matcher commands = Pattern.compile("(?m)^  ([a-z]+) +\\p{Lu}").matcher(said(home, fleet, "--help"));
        List<String> all = commands.results().map(it -> it.group(1)).toList();
        assertThat(all).contains("add", "check", "publish", "show", "ask", "survey", "take", "texts", "preview");
        for (String command : all) {
            assertThat(run(home, fleet, command, "--help")).as(command).isEqualTo("0");
        }
        assertThat(said(home, fleet, "ask", "tank:fresh")).contains("sanderling");
        assertThat(run(home, fleet, "show", "sanderling")).isEqualTo("0");
        assertThat(run(home, fleet, "survey", "sanderling")).isEqualTo("0");
        assertThat(run(home, fleet, "check", "no-such-coach")).isEqualTo("2");
    }

    @Test
    void eachLibraryBringsItsLicense() throws IOException {
        Path home = unpacked();
        StringBuilder named = new StringBuilder();
        try (Stream<Path> files = Files.walk(home.resolve("licenses"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                named.append(home.relativize(file)).append('\n');
                if (home.relativize(file).getNameCount() == 2) {
                    named.append(Files.readString(file).lines().limit(3).collect(Collectors.joining("\n")));
                }
            }
        }
        List<String> without;
        try (Stream<Path> jars = Files.list(home.resolve("lib/lib"))) {
            without = jars.map(jar -> jar.getFileName().toString().replaceFirst("-\\d.*$", ""))
                    .filter(library -> !named.toString().contains(library))
                    .toList();
        }

        assertThat(without).isEmpty();
        assertThat(home.resolve("bin/bayfolio.cmd")).content().contains("%*");
        assertThat(home.resolve("themes/harbor")).isDirectory();
        assertThat(home.resolve("units/shared/procedures")).isDirectory();
    }

    private Path unpacked() throws IOException {
        Path zip = Path.of("target/bayfolio.zip").toAbsolutePath();
        try (FileSystem files = FileSystems.newFileSystem(zip, Map.of("enablePosixFileAttributes", "true"));
                Stream<Path> all = Files.walk(files.getPath("/"))) {
            for (Path file : all.filter(Files::isRegularFile).collect(Collectors.toList())) {
                Path target = empty.resolve(file.toString().substring(1));
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
                Files.setPosixFilePermissions(target, Files.getPosixFilePermissions(file));
            }
        }
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(empty.resolve("bayfolio/bin/bayfolio"))))
                .isEqualTo("rwxr-xr-x");
        return empty.resolve("bayfolio");
    }

    private String run(Path home, Path fleet, String... words) throws Exception {
        return said(home, fleet, words).replaceAll("(?s).*exit code ", "");
    }

    private String said(Path home, Path fleet, String... words) throws Exception {
        File said = Files.createTempFile(empty, "said", ".txt").toFile();
        List<String> command =
                new ArrayList<>(List.of(home.resolve("bin/bayfolio").toString()));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command)
                .directory(fleet.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        assertThat(process.waitFor(3, TimeUnit.MINUTES)).isTrue();
        return Files.readString(said.toPath(), StandardCharsets.UTF_8) + "\nexit code " + process.exitValue();
    }
}
