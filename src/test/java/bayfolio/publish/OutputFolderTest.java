package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    private static final Map<String, String> OLD = site("old");
    private static final Map<String, String> NEW = site("new");

    @TempDir
    private Path folder;

    @Test
    void aFolderThatIsNotThereIsEmptyAndIsMade() throws Exception {
        OutputFolder deep = new OutputFolder(folder.resolve("srv/handbooks"), "web");
        assertThat(deep.published()).isEmpty();

        deep.swapIn(bytes(NEW));

        assertThat(DemoFleet.bytes(folder.resolve("srv/handbooks/web"))).isEqualTo(NEW);
    }

    @Test
    void whatWasSwappedInIsKnownAgain() throws Exception {
        publish(OLD);

        assertThat(published()).isEqualTo(OLD);
    }

    @Test
    void aSwapLeavesNothingOfTheLastSite() throws Exception {
        publish(OLD);
        publish(Map.of("index.html", "new"));

        assertThat(published()).containsOnlyKeys("index.html");
        assertThat(beside()).containsExactlyInAnyOrder("web", "web-written.txt");
    }

    @Test
    void aForeignFileIsRefusedAndStays() throws Exception {
        publish(OLD);
        Path foreign = folder.resolve("web/plover/holiday.jpg");
        Files.writeString(foreign, "mine");

        assertRefused(foreign);
        assertThat(foreign).hasContent("mine");
    }

    @Test
    void aForeignFileIsRefusedWhereNothingWasPublishedYet() throws Exception {
        Path foreign = folder.resolve("web/index.html");
        DemoFleet.write(foreign, "mine");

        assertRefused(foreign);
    }

    @Test
    void aChangedFileIsRefusedAndStays() throws Exception {
        publish(OLD);
        Path changed = folder.resolve("web/index.html");
        Files.writeString(changed, "mended by hand");

        assertRefused(changed);
        assertThat(changed).hasContent("mended by hand");
    }

    @Test
    void aDeletedFileIsNoReasonToRefuse() throws Exception {
        publish(OLD);
        Files.delete(folder.resolve("web/index.html"));

        assertThat(published()).containsOnlyKeys("plover/index.html");
    }

    @Test
    void aFileInPlaceOfTheRootIsRefused() throws Exception {
        Files.writeString(folder.resolve("web"), "mine");

        assertThatThrownBy(this::published)
                .isInstanceOf(PublishException.class)
                .hasMessage("`" + folder.resolve("web") + "` is no folder; move it away or choose another with --out.");
        assertThat(folder.resolve("web")).hasContent("mine");
    }

    @Test
    void aFileInPlaceOfTheWholeFolderIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("out"), "mine");

        assertThatThrownBy(() -> new OutputFolder(file, "web").published())
                .isInstanceOf(PublishException.class)
                .hasMessageStartingWith("`" + file + "` is no folder");
    }

    @Test
    void aLinkInPlaceOfTheRootIsRefused() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve("web"), elsewhere);

        assertThatThrownBy(this::published).isInstanceOf(PublishException.class).hasMessageContaining("is no folder");
    }

    @Test
    void aForeignLinkToAFolderIsRefused() throws Exception {
        publish(OLD);
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path link = Files.createSymbolicLink(folder.resolve("web/photos"), elsewhere);

        assertRefused(link);
    }

    @Test
    void aSwapCutShortBeforeTheOldSiteMovedKeepsTheOldSite() throws Exception {
        publish(OLD);
        write(".web-next", NEW);
        listNext(NEW);

        assertRecovered(OLD);
    }

    @Test
    void aSwapCutShortWithoutASiteBringsTheOldSiteBack() throws Exception {
        publish(OLD);
        Files.move(folder.resolve("web"), folder.resolve(".web-last"));
        write(".web-next", NEW);
        listNext(NEW);

        assertRecovered(OLD);
    }

    @Test
    void theOldSiteComesBackWhereItAloneIsLeft() throws Exception {
        publish(OLD);
        Files.move(folder.resolve("web"), folder.resolve(".web-last"));

        assertRecovered(OLD);
    }

    @Test
    void aSwapCutShortWithBothSitesKeepsTheNewOne() throws Exception {
        publish(OLD);
        Files.move(folder.resolve("web"), folder.resolve(".web-last"));
        write("web", NEW);
        listNext(NEW);

        assertRecovered(NEW);
    }

    @Test
    void theFirstSwapCutShortBeforeItsListKeepsTheNewSite() throws Exception {
        write("web", NEW);
        listNext(NEW);

        assertRecovered(NEW);
    }

    @Test
    void aSwapCutShortBeforeTheOldSiteWasDeletedKeepsTheNewOne() throws Exception {
        publish(NEW);
        write(".web-last", OLD);

        assertRecovered(NEW);
    }

    @Test
    void aHalfWrittenNextSiteIsThrownAway() throws Exception {
        publish(OLD);
        write(".web-next", Map.of("half.html", "ha"));

        assertThat(published()).isEqualTo(OLD);
        publish(NEW);
        assertThat(published()).isEqualTo(NEW);
        assertThat(beside()).containsExactlyInAnyOrder("web", "web-written.txt");
    }

    private void assertRefused(Path foreign) {
        assertThatThrownBy(this::published)
                .isInstanceOf(PublishException.class)
                .hasMessage("`"
                        + foreign
                        + "` was not written by this program, or was changed since; move it"
                        + " away, or choose another folder with --out.");
    }

    private void assertRecovered(Map<String, String> site) throws Exception {
        assertThat(published()).isEqualTo(site);
        assertThat(published()).as("a second look").isEqualTo(site);
        assertThat(beside()).doesNotContain(".web-last", "web-written.txt-next");

        publish(NEW);
        assertThat(published()).isEqualTo(NEW);
        assertThat(beside()).containsExactlyInAnyOrder("web", "web-written.txt");
    }

    private Map<String, String> published() throws IOException, PublishException {
        return DemoFleet.bytes(new OutputFolder(folder, "web").published());
    }

    private void publish(Map<String, String> files) throws IOException {
        new OutputFolder(folder, "web").swapIn(bytes(files));
    }

    private void write(String name, Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            DemoFleet.write(folder.resolve(name).resolve(file.getKey()), file.getValue());
        }
    }

    /** The list that belongs to a site, as a swap leaves it that has not come to its end. */
    private void listNext(Map<String, String> files) throws IOException {
        Path aside = Files.createTempDirectory(folder, "aside");
        new OutputFolder(aside, "web").swapIn(bytes(files));
        Files.move(aside.resolve("web-written.txt"), folder.resolve("web-written.txt-next"));
        try (Stream<Path> paths = Files.walk(aside)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private List<String> beside() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).toList();
        }
    }

    private static Map<String, String> site(String words) {
        Map<String, String> files = new TreeMap<>();
        files.put("index.html", words);
        files.put("plover/index.html", words + " Plover");
        return files;
    }

    private static Map<String, byte[]> bytes(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }
}
