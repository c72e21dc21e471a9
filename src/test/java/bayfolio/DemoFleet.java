package bayfolio;

import bayfolio.check.Check;
import bayfolio.publish.FleetState;
import bayfolio.publish.Publisher;
import bayfolio.read.FleetReader;
import bayfolio.read.Ledger;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A fleet folder as the tests use it: read, checked, published; first of all the demo fleet. */
public record DemoFleet(Path root, Check check) {
    /** Small enough to be published once for each test. */
    public static final Path SMALL = Path.of("src/test/resources/golden/small-clean/fleet");

    /** The sister that stands for the others: it has things of its own, others moved, and none of its model's taken out. */
    private static final String SISTER = "curlew";

    private static final class Published {
        static final Path FOLDER = published(Path.of(""));

        static Path published(Path fleet) {
            try {
                Path folder = Files.createTempDirectory("bayfolio-demo");
                Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
                of(fleet).publish(folder);
                return folder;
            } catch (Exception e) {
                throw new IllegalStateException("the demo fleet cannot be published", e);
            }
        }
    }

    public static DemoFleet of(Path root) throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(root));
        return new DemoFleet(
                root,
                Check.of(
                        reading.fleet(),
                        reading.library(),
                        Theme.load(root, Theme.BUILT_IN).catalogs(),
                        reading.findings()));
    }

    /** The coaches of the demo fleet, sorted. */
    public static List<String> coaches() {
        try (Stream<Path> folders = Files.list(Path.of("units"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("unit.yaml")))
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those that are described whole in a file of their own, so that a test can change one as text. */
    public static List<String> whole() {
        return coaches().stream().filter(DemoFleet::isWhole).toList();
    }

    private static boolean isWhole(String coach) {
        try {
            return Files.readAllLines(Path.of("units", coach, "unit.yaml")).stream()
                    .noneMatch(line -> line.startsWith("model:"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Those that a test goes through which takes long for each: of sisters, which are nearly the same coach, one. All with
     * {@code -Dcoaches=all}.
     */
    public static List<String> looked() {
        return coaches().stream()
                .filter(coach -> areAllWanted() || isWhole(coach) || coach.equals(SISTER))
                .toList();
    }

    public static boolean areAllWanted() {
        return System.getProperty("coaches", "").equals("all");
    }

    /** Of those that are described whole every other one, where each takes longest of all. All with {@code -Dcoaches=all}. */
    public static List<String> everyOther() {
        List<String> coaches = fewest();
        return areAllWanted()
                ? coaches
                : IntStream.range(0, coaches.size())
                        .filter(i -> i % 2 == 0)
                        .mapToObj(coaches::get)
                        .toList();
    }

    /** Those of a test that takes very long for each: no sister either. All with {@code -Dcoaches=all}. */
    public static List<String> fewest() {
        return areAllWanted() ? coaches() : whole();
    }

    /** The files of the renters' copy of the demo fleet by their paths, without the coaches that are not looked at. */
    public static Map<String, byte[]> pages() {
        List<String> skipped = coaches().stream()
                .filter(coach -> !looked().contains(coach))
                .map(coach -> coach + "/")
                .toList();
        Map<String, byte[]> pages = files(web());
        pages.keySet().removeIf(path -> skipped.stream().anyMatch(path::startsWith));
        return pages;
    }

    /** Publishes the pages of some of its coaches, or of all, in the built-in theme or what lies over that. */
    public void publish(Path out, String... units) throws Exception {
        publish(out, Set.of(Publisher.WEB), units);
    }

    /** Publishes its pages, those too that were published already. */
    public void publishFresh(Path out) throws Exception {
        publish(
                out,
                new Publisher.Wanted(
                        check.fleet().coaches(),
                        List.of(),
                        Set.of(Publisher.WEB),
                        Printing.USUAL,
                        Optional.empty(),
                        true,
                        false,
                        false,
                        coach -> {}));
    }

    /** @param ways some of {@link Publisher#ways} */
    public void publish(Path out, Set<String> ways, String... units) throws Exception {
        List<String> chosen = units.length == 0 ? check.fleet().coaches() : List.of(units);
        publish(out, new Publisher.Wanted(chosen, ways, Printing.USUAL));
    }

    private void publish(Path out, Publisher.Wanted wanted) throws Exception {
        Theme theme = Theme.load(root, Theme.BUILT_IN);
        Publisher.publish(check, FleetState.of(root), theme, wanted, out);
    }

    /** The public root of the demo fleet of this repository, published once for all tests. */
    public static Path web() {
        try {
            return Published.FOLDER.resolve("web").toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Whole {
        static final Path FLEET = fleet();
        static final Path FOLDER = Published.published(FLEET);

        private static Path fleet() {
            try {
                Path folder = Files.createTempDirectory("bayfolio-whole");
                Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
                return copyWhole(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The demo fleet without sisters, for what is read as plain text. */
    public static Path wholeFleet() {
        return Whole.FLEET;
    }

    /** The public root of that, published once for all tests. */
    public static Path wholeWeb() {
        try {
            return Whole.FOLDER.resolve("web").toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A published page, and what a procedure goes on with on later pages, in one. */
    public static Document whole(Path file) {
        try {
            String on = "#safe-to-stop a[href*=--]:not([href*=#])";
            Document first = Jsoup.parse(Files.readString(file));
            Element next = first.selectFirst(on);
            while (next != null) {
                Document page = Jsoup.parse(
                        Files.readString(file.resolveSibling(next.attr("href")).normalize()));
                Element main = Objects.requireNonNull(page.selectFirst("main"));
                next = page.selectFirst(on);
                Objects.requireNonNull(first.selectFirst("main")).appendChildren(main.childNodesCopy());
            }
            return first;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The files below a folder by their paths, sorted. */
    public static Map<String, byte[]> files(Path folder) {
        Map<String, byte[]> files = new TreeMap<>();
        // A root of a site is a link, and a walk begins at no link.
        try (Stream<Path> paths = Files.walk(folder.toRealPath())) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                files.put(folder.toRealPath().relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /** The same with texts that are equal exactly when the bytes are. */
    public static Map<String, String> bytes(Path folder) {
        return bytes(files(folder));
    }

    public static Map<String, String> bytes(Map<String, byte[]> files) {
        Map<String, String> texts = new TreeMap<>();
        files.forEach((path, bytes) -> texts.put(path, new String(bytes, StandardCharsets.ISO_8859_1)));
        return texts;
    }

    /** Copies the descriptions of a fleet, and nothing else, into a folder. */
    public static Path copy(Path root, Path to) throws IOException {
        for (Map.Entry<String, byte[]> file : files(root.resolve("units")).entrySet()) {
            write(to.resolve("units").resolve(file.getKey()), file.getValue());
        }
        return to;
    }

    /** Copies the descriptions of the demo fleet but for sisters and their models: each coach is whole in its own file. */
    public static Path copyWhole(Path to) throws IOException {
        List<String> left =
                coaches().stream().filter(coach -> !whole().contains(coach)).toList();
        for (Map.Entry<String, byte[]> file : files(Path.of("units")).entrySet()) {
            String top = file.getKey().split("/")[0];
            // In the ledger stand the pages of sisters, too.
            if (!top.equals("models") && !Ledger.FILE.endsWith("/" + top) && !left.contains(top)) {
                write(to.resolve("units").resolve(file.getKey()), file.getValue());
            }
        }
        return to;
    }

    public static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.write(file, bytes);
    }

    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void delete(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
