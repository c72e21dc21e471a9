package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.Jvm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
    /** {@code -Dswaps=2000} for many. */
    private static final int ROUNDS = Integer.getInteger("swaps", 60);

    private static final Map<String, String> OLD = site("old");
    private static final Map<String, String> NEW = site("new");

    @TempDir
    private Path folder;

    /** A system that can replace a link in one step, and one that cannot. */
    enum System implements OutputFolder.Disk {
        LINKS,
        NO_LINKS;

        @Override
        public boolean links(Path folder) {
            return this == LINKS;
        }
    }

    /** As when the process is killed: nothing more is done. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** A disk on which the process is killed before one of its renames. */
    private static final class Killing implements OutputFolder.Disk {
        private final System system;
        private int left;

        Killing(System system, int renames) {
            this.system = system;
            this.left = renames;
        }

        @Override
        public void move(Path from, Path to) throws IOException {
            if (left-- == 0) {
                throw new Killed();
            }
            system.move(from, to);
        }

        @Override
        public boolean links(Path folder) {
            return system.links(folder);
        }
    }

    @Test
    void whetherThisSystemHasLinksIsTried() throws Exception {
        publish(OutputFolder.Disk.REAL, OLD);

        assertThat(Files.isSymbolicLink(folder.resolve("web")))
                .isEqualTo(OutputFolder.Disk.REAL.links(folder))
                .isTrue();
    }

    @Test
    void aFolderThatIsNotThereIsEmptyAndIsMade() throws Exception {
        Path deep = folder.resolve("srv/handbooks");
        try (OutputFolder output = OutputFolder.open(deep)) {
            output.verify();

            swapIn(output, NEW);
        }

        assertThat(BothRoots.of(deep)).isEqualTo(NEW);
    }

    @ParameterizedTest
    @EnumSource
    void whatWasSwappedInIsKnownAgain(System system) throws Exception {
        publish(system, OLD);

        assertThat(published(system)).isEqualTo(OLD);
    }

    @ParameterizedTest
    @EnumSource
    void aSwapLeavesNothingOfTheLastSite(System system) throws Exception {
        publish(system, OLD);
        publish(system, Map.of("web/index.html", "new", "staff/index.html", "new"));

        assertThat(published(system)).containsOnlyKeys("web/index.html", "staff/index.html");
        assertTidy();
    }

    @ParameterizedTest
    @EnumSource
    void aForeignFileIsRefusedAndStays(System system) throws Exception {
        publish(system, OLD);
        Path foreign = folder.resolve("web/plover/holiday.jpg");
        Files.writeString(foreign, "mine");

        assertRefused(system, foreign);
        assertThat(foreign).hasContent("mine");
    }

    @ParameterizedTest
    @EnumSource
    void aForeignFileThatComesWhileThePagesAreMadeIsRefusedAndStays(System system) throws Exception {
        publish(system, OLD);
        Path foreign = folder.resolve("staff/notes.txt");
        try (OutputFolder output = open(system)) {
            output.verify();
            Files.writeString(foreign, "mine");

            assertThatThrownBy(() -> swapIn(output, NEW)).isInstanceOf(PublishException.class);
        }

        assertThat(foreign).hasContent("mine");
        Files.delete(foreign);
        assertThat(published(system)).isEqualTo(OLD);
    }

    @ParameterizedTest
    @EnumSource
    void anEmptyForeignFolderIsRefusedAndStays(System system) throws Exception {
        publish(system, OLD);
        Path foreign = Files.createDirectory(folder.resolve("web/plover/empty"));

        assertRefused(system, foreign);
        assertThat(foreign).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(strings = {"web/index.html", "staff/index.html", "web/photos/holiday.jpg"})
    void aForeignFileIsRefusedWhereNothingWasPublishedYet(String file) throws Exception {
        Path foreign = folder.resolve(file);
        DemoFleet.write(foreign, "mine");

        assertRefused(System.LINKS, foreign);
        assertThatThrownBy(() -> publish(System.LINKS, NEW)).isInstanceOf(PublishException.class);
        assertThat(foreign).hasContent("mine");
    }

    @ParameterizedTest
    @EnumSource
    void aChangedFileIsRefusedAndStays(System system) throws Exception {
        publish(system, OLD);
        Path changed = folder.resolve("web/index.html");
        Files.writeString(changed, "mended by hand");

        assertRefused(system, changed);
        assertThat(changed).hasContent("mended by hand");
    }

    @ParameterizedTest
    @EnumSource
    void aDeletedFileIsNoReasonToRefuse(System system) throws Exception {
        publish(system, OLD);
        Files.delete(folder.resolve("web/index.html"));

        assertThat(published(system)).doesNotContainKey("web/index.html").containsKey("web/plover/index.html");
        publish(system, NEW);
        assertThat(BothRoots.of(folder)).isEqualTo(NEW);
    }

    @ParameterizedTest
    @ValueSource(strings = {"web", "staff", ".editions"})
    void aFileInPlaceOfAFolderIsRefused(String name) throws Exception {
        Files.writeString(folder.resolve(name), "mine");

        assertThatThrownBy(() -> published(System.LINKS))
                .isInstanceOf(PublishException.class)
                .hasMessage("`" + folder.resolve(name) + "` is no folder; move it away or choose another with --out.");
        assertThat(folder.resolve(name)).hasContent("mine");
    }

    @Test
    void aFileInPlaceOfTheWholeFolderIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("out"), "mine");

        assertThatThrownBy(() -> OutputFolder.open(file))
                .isInstanceOf(PublishException.class)
                .hasMessageStartingWith("`" + file + "` is no folder");
    }

    @Test
    void aForeignLinkInPlaceOfARootIsRefused() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve("web"), elsewhere);

        assertThatThrownBy(() -> published(System.LINKS))
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("is no folder");
    }

    @ParameterizedTest
    @EnumSource
    void aForeignLinkToAFolderIsRefused(System system) throws Exception {
        publish(system, OLD);
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path link = Files.createSymbolicLink(folder.resolve("web/photos"), elsewhere);

        assertRefused(system, link);
    }

    @Test
    void aCopyInPlaceOfTheLinkIsForeign() throws Exception {
        publish(System.LINKS, OLD);
        Files.delete(folder.resolve("web"));
        DemoFleet.write(folder.resolve("web/index.html"), OLD.getOrDefault("web/index.html", ""));

        assertRefused(System.LINKS, folder.resolve("web"));
    }

    @Test
    void aRunKilledAtAnyRenameLeavesTheOldPairOrTheNewOneAndNeverNothing() throws Exception {
        int seenOld = 0;
        for (int renames = 0; ; renames++) {
            publish(System.LINKS, OLD);

            boolean killed = isKilled(System.LINKS, renames);

            assertThat(BothRoots.of(folder)).as("after %d renames", renames).isIn(OLD, NEW);
            assertThat(published(System.LINKS)).isIn(OLD, NEW);
            assertTidy();
            if (!killed) {
                assertThat(BothRoots.of(folder)).isEqualTo(NEW);
                break;
            }
            seenOld += BothRoots.of(folder).equals(OLD) ? 1 : 0;
        }
        // The one that takes the edition before the last, and the one that names the new one.
        assertThat(seenOld).as("renames before which readers see the old pair").isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void theFirstRunKilledAtAnyRenameLeavesNothingOrTheWholePair(System system) throws Exception {
        Path base = folder;
        for (int renames = 0; ; renames++) {
            folder = Files.createDirectory(base.resolve("out" + renames));

            boolean killed = isKilled(system, renames);

            if (system == System.LINKS) {
                assertThat(BothRoots.of(folder)).as("after %d renames", renames).isIn(Map.of(), NEW);
            }
            assertThat(published(system)).isIn(Map.of(), NEW);
            publish(system, NEW);
            assertThat(BothRoots.of(folder)).isEqualTo(NEW);
            assertTidy();
            if (!killed) {
                assertThat(renames).isGreaterThan(2);
                break;
            }
        }
    }

    @Test
    void withoutLinksTheNextRunMakesWholeWhatAKilledOneLeft() throws Exception {
        for (int renames = 0; ; renames++) {
            publish(System.NO_LINKS, OLD);

            boolean killed = isKilled(System.NO_LINKS, renames);

            assertThat(published(System.NO_LINKS))
                    .as("after %d renames", renames)
                    .isEqualTo(renames == 0 ? OLD : NEW);
            assertThat(BothRoots.of(folder)).isIn(OLD, NEW);
            assertTidy();
            if (!killed) {
                assertThat(renames).isEqualTo(5);
                break;
            }
        }
    }

    @Test
    void foldersPublishedWithoutLinksBecomeLinksWhereThereAreSome() throws Exception {
        publish(System.NO_LINKS, OLD);
        assertThat(published(System.LINKS)).isEqualTo(OLD);

        publish(System.LINKS, NEW);

        assertThat(folder.resolve("web")).isSymbolicLink();
        assertThat(BothRoots.of(folder)).isEqualTo(NEW);
        assertTidy();
    }

    @ParameterizedTest
    @EnumSource
    void whatADeadRunLeftIsTakenAwayAndForeignFilesInItStay(System system) throws Exception {
        publish(system, OLD);
        written("7");
        written("8");
        Files.createDirectory(folder.resolve(".editions/3"));
        DemoFleet.write(folder.resolve(".editions/8/web/holiday.jpg"), "mine");
        Files.createDirectories(folder.resolve(".editions/8/staff/mine"));
        DemoFleet.write(folder.resolve(".editions/mine/notes.txt"), "mine");
        DemoFleet.write(folder.resolve(".web-next/notes.txt"), "mine");

        publish(system, NEW);

        assertThat(BothRoots.of(folder)).isEqualTo(NEW);
        assertThat(folder.resolve(".editions/7")).doesNotExist();
        assertThat(folder.resolve(".editions/3")).doesNotExist();
        assertThat(folder.resolve(".editions/8/web")).isDirectoryContaining("glob:**/holiday.jpg");
        assertThat(folder.resolve(".editions/8/web/index.html")).doesNotExist();
        assertThat(folder.resolve(".editions/8/staff/mine")).isEmptyDirectory();
        assertThat(folder.resolve(".editions/mine/notes.txt")).hasContent("mine");
        assertThat(folder.resolve(".web-next/notes.txt")).hasContent("mine");
    }

    /** Coaches come, stay, change and go; each edition is made of the one before the last. */
    @Test
    void whatAnEditionIsMadeOfDoesNotShow() throws Exception {
        Random random = new Random(20261130);
        Map<String, Map<String, String>> site = new TreeMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            Map<String, Map<String, String>> was = new TreeMap<>(site);
            for (String coach : List.of("knot", "plover", "stint")) {
                switch (random.nextInt(4)) {
                    case 0 -> site.remove(coach);
                    case 1 -> site.put(coach, files(coach, random));
                    default -> {}
                }
            }
            try (OutputFolder output = open(OutputFolder.Disk.REAL);
                    NextEdition next = output.next()) {
                for (Map.Entry<String, Map<String, String>> coach : site.entrySet()) {
                    Optional<Part> last = next.last(coach.getKey());
                    if (last.isPresent() && coach.getValue().equals(was.get(coach.getKey()))) {
                        next.keep(last.get(), Part.Found.NOTHING);
                    } else {
                        next.write(coach.getKey(), "", Part.Found.NOTHING, bytes(coach.getValue()));
                    }
                }
                next.writeShared(bytes(shared(site.keySet())), Set.of());
                if (next.isNew()) {
                    next.complete();
                    output.swapIn(next);
                } else {
                    next.unneeded();
                }
            }
            Map<String, String> all = shared(site.keySet());
            site.values().forEach(all::putAll);
            assertThat(BothRoots.of(folder)).isEqualTo(all);
            assertTidy();
            assertThat(emptyFolders(folder.resolve(".editions"))).isEmpty();
        }
        assertThat(folder.resolve(".editions/spare")).isDirectory();
    }

    /** A coach that was sold has a page that says so, in the place of one that it had. */
    private static Map<String, String> shared(Set<String> coaches) {
        Map<String, String> files = new TreeMap<>(Map.of("web/index.html", coaches.toString(), "staff/index.html", ""));
        for (String coach : List.of("knot", "plover", "stint")) {
            if (!coaches.contains(coach)) {
                files.put("web/" + coach + "/do/1.html", "sold");
            }
        }
        return files;
    }

    private static Map<String, String> files(String coach, Random random) {
        Map<String, String> files = new TreeMap<>();
        for (int i = 0; i < 4; i++) {
            String said = Integer.toString(random.nextInt(3));
            files.put("web/" + coach + "/do/" + random.nextInt(4) + ".html", said);
            files.put("web/L/" + coach.toUpperCase(Locale.ROOT) + "/" + random.nextInt(4) + "/index.html", said);
            files.put("staff/" + coach + "/" + random.nextInt(4) + ".html", said);
        }
        return files;
    }

    /** The file that was changed lies in the edition before, too. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFileThatSomebodyChangedAndPutRightIsRightInEachEdition(boolean kept) throws Exception {
        Map<String, byte[]> plover = bytes(Map.of("web/plover/index.html", "as written"));
        for (String index : List.of("first", "second", "third", "fourth")) {
            if (index.equals("third")) {
                Path page = folder.resolve("web/plover/index.html").toRealPath();
                Files.writeString(page, "changed in place");
                assertThatThrownBy(() -> published(System.LINKS)).isInstanceOf(PublishException.class);
                Files.delete(page);
                Files.writeString(page, "as written");
            }
            try (OutputFolder output = open(OutputFolder.Disk.REAL);
                    NextEdition next = output.next()) {
                output.verify();
                Optional<Part> last = next.last("plover");
                if (kept && last.isPresent()) {
                    next.keep(last.get(), Part.Found.NOTHING);
                } else {
                    next.write("plover", "", Part.Found.NOTHING, plover);
                }
                next.writeShared(bytes(Map.of("web/index.html", index, "staff/index.html", "")), Set.of());
                next.complete();
                output.swapIn(next);
            }
            assertThat(BothRoots.of(folder))
                    .containsEntry("web/plover/index.html", "as written")
                    .containsEntry("web/index.html", index);
        }
    }

    private static List<Path> emptyFolders(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> Files.isDirectory(path) && path.toFile().list().length == 0)
                    .toList();
        }
    }

    @Test
    void aDiskThatIsFullWhileWritingKeepsNothingOfTheNewSite() throws Exception {
        publish(System.LINKS, OLD);
        Map<String, String> tooMuch = new TreeMap<>(NEW);
        // No file system has a name so long.
        tooMuch.put("web/" + "x".repeat(5_000), "full");

        assertThatThrownBy(() -> publish(System.LINKS, tooMuch)).isInstanceOf(IOException.class);

        assertThat(BothRoots.of(folder)).isEqualTo(OLD);
        assertTidy();
    }

    @Test
    void aSecondPublisherInOneProgramIsToldWhoHoldsTheFolder() throws Exception {
        try (OutputFolder first = open(System.LINKS)) {
            assertThatThrownBy(() -> open(System.LINKS))
                    .isInstanceOf(PublishException.class)
                    .hasMessage("`" + folder + "` is being published into by this program already; wait until that has "
                            + "ended, or choose another folder with --out.");
            swapIn(first, NEW);
        }

        assertThat(published(System.LINKS)).isEqualTo(NEW);
    }

    @Test
    void aSecondPublisherWaitsForTheFirst() throws Exception {
        OutputFolder first = open(System.LINKS);
        Thread ends = new Thread(() -> {
            try (first) {
                Thread.sleep(200);
                swapIn(first, OLD);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
        ends.start();

        try (OutputFolder second = OutputFolder.open(folder, Duration.ofMinutes(1), System.LINKS)) {
            second.verify();
            assertThat(BothRoots.of(folder)).isEqualTo(OLD);
        }
        ends.join();
    }

    @Test
    void aSecondProcessIsToldWhichHoldsTheFolderAndOneThatWasKilledHoldsItNoMore() throws Exception {
        Process holder = Jvm.start(List.of(), Holding.class, folder.toString());
        try {
            assertThat(holder.inputReader().readLine()).isEqualTo("held");

            assertThatThrownBy(() -> open(System.LINKS))
                    .isInstanceOf(PublishException.class)
                    .hasMessageContaining(" is being published into by process " + holder.pid() + " since 2");
        } finally {
            holder.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
        }

        assertThat(folder.resolve(".editions/lock")).exists();
        publish(System.LINKS, NEW);
        assertThat(BothRoots.of(folder)).isEqualTo(NEW);
    }

    @SuppressWarnings("MustBeClosedChecker") // nothing is taken away by who is killed
    private boolean isKilled(System system, int renames) throws Exception {
        try (OutputFolder output = OutputFolder.open(folder, Duration.ZERO, new Killing(system, renames))) {
            NextEdition next = output.next();
            write(next, NEW);
            output.swapIn(next);
            return false;
        } catch (Killed killed) {
            return true;
        }
    }

    /** What a run that died has left. */
    @SuppressWarnings("MustBeClosedChecker")
    private void written(String name) throws IOException {
        write(
                new NextEdition(
                        new Edition(folder.resolve(".editions/" + name)),
                        Optional.empty(),
                        Map.of(),
                        folder::resolve,
                        1_000,
                        () -> {}),
                NEW);
    }

    private static void write(NextEdition next, Map<String, String> files) throws IOException {
        Map<String, byte[]> plover = bytes(files);
        Map<String, byte[]> shared = bytes(files);
        plover.keySet().removeIf(path -> !path.contains("/plover/"));
        shared.keySet().removeAll(plover.keySet());
        next.write("plover", "", Part.Found.NOTHING, plover);
        next.writeShared(shared, Set.of());
    }

    private static void swapIn(OutputFolder output, Map<String, String> files) throws IOException, PublishException {
        try (NextEdition next = output.next()) {
            write(next, files);
            output.swapIn(next);
        }
    }

    private void assertRefused(System system, Path foreign) {
        assertThatThrownBy(() -> published(system))
                .isInstanceOf(PublishException.class)
                .hasMessage("`"
                        + foreign
                        + "` was not written by this program, or was changed since; move it"
                        + " away, or choose another folder with --out.");
    }

    /** Nothing lies there but both roots, one edition and perhaps the one before. */
    private void assertTidy() throws IOException {
        assertThat(names(folder)).containsExactlyInAnyOrder("web", "staff", ".editions");
        List<String> inside = new ArrayList<>(names(folder.resolve(".editions")));
        inside.remove("spare");
        assertThat(inside).hasSize(3).contains("lock", "current").anyMatch(name -> name.matches("[0-9]+"));
    }

    private OutputFolder open(OutputFolder.Disk disk) throws IOException, PublishException {
        return OutputFolder.open(folder, Duration.ZERO, disk);
    }

    /** What is there and was written by the program. */
    private Map<String, String> published(System system) throws IOException, PublishException {
        try (OutputFolder output = open(system)) {
            output.verify();
        }
        return BothRoots.of(folder);
    }

    private void publish(OutputFolder.Disk disk, Map<String, String> files) throws IOException, PublishException {
        try (OutputFolder output = open(disk)) {
            swapIn(output, files);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).toList();
        }
    }

    private static Map<String, String> site(String words) {
        Map<String, String> files = new TreeMap<>();
        for (String root : OutputFolder.ROOTS) {
            files.put(root + "/index.html", words);
            files.put(root + "/plover/index.html", words + " Plover");
        }
        return files;
    }

    private static Map<String, byte[]> bytes(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }
}
