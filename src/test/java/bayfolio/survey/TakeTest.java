package bayfolio.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.Folders;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Swap;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was entered at a coach, whatever became of it on the way. */
final class TakeTest {
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().serializeNulls().create();

    @TempDir
    private Path folder;

    private final List<Object> facts = new ArrayList<>();
    private final List<Object> compared = new ArrayList<>();
    private final List<Object> pictures = new ArrayList<>();

    @SuppressWarnings("NullAway.Init") // set before each test
    private SpoiltFleet fleet;

    @BeforeEach
    void setUp() throws IOException {
        fleet = SpoiltFleet.in(folder);
    }

    private static Map<String, Object> entry(@Nullable Object... pairs) {
        Map<String, Object> entry = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            if (value != null) {
                entry.put(String.valueOf(pairs[i]), value);
            }
        }
        entry.put("when", "2026-11-28T09:30:00.000Z");
        return entry;
    }

    private TakeTest fact(String path, @Nullable String was, String now) {
        facts.add(entry("path", path, "was", was, "now", now));
        return this;
    }

    private Path file(String coach) throws IOException {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("form", "bayfolio-survey-1");
        all.put("coach", coach);
        all.put("edition", "0123456789ab");
        all.put("by", "yard");
        all.put("facts", facts);
        all.put("compared", compared);
        all.put("pictures", pictures);
        return Files.writeString(folder.resolve("answers.json"), GSON.toJson(all));
    }

    private SpoiltFleet.Said take(Path file, String... more) {
        return fleet.run(Stream.concat(
                        Stream.of("take", file.toString(), "--fleet", folder.toString(), "--yes"), Stream.of(more))
                .toArray(String[]::new));
    }

    private SpoiltFleet.Said take(String... more) throws IOException {
        return take(file(SpoiltFleet.COACH), more);
    }

    private TreeSet<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(it -> !it.endsWith("answers.json"))
                    .map(Path::toString)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private String written(String path) {
        Records records = new Records(unit());
        return records.slot(path).flatMap(records::written).orElse("");
    }

    private Unit unit() {
        return FleetReader.read(Folders.at(folder)).fleet().units().stream()
                .filter(it -> it.id().equals(SpoiltFleet.COACH))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFactTakesItsPlaceAndNothingElseMoves() throws Exception {
        String before = fleet.text();
        SpoiltFleet.Said said = fact("people / sleeping-places", "6", "5")
                .fact("size / height", "11 ft 3 in", "11 ft 4 in")
                .take();

        assertThat(said.exit()).isZero();
        assertThat(said.err())
                .isEqualTo("The description has changed since the page was made; each fact was compared by itself.\n");
        assertThat(said.out())
                .contains("@@ -", "\n-  sleeping-places: 6\n+  sleeping-places: 5\n")
                .endsWith("Taken: 2.\n");
        assertThat(fleet.text())
                .isEqualTo(before.replace("sleeping-places: 6", "sleeping-places: 5")
                        .replace("height: 11 ft 3 in", "height: 11 ft 4 in"));
    }

    @Test
    void aFileOfWindowsStaysOne() throws Exception {
        String before = "\uFEFF" + fleet.text().replace("\n", "\r\n");
        Files.writeString(fleet.description(), before);

        assertThat(fact("people / sleeping-places", "6", "5").take().exit()).isZero();
        assertThat(fleet.text()).isEqualTo(before.replace("sleeping-places: 6", "sleeping-places: 5"));
    }

    @Test
    void whatSaysSomethingElseByNowIsToldAndLeftAlone() throws Exception {
        SpoiltFleet.Said said = fact("people / sleeping-places", "4", "5")
                .fact("size / height", "11 ft 3 in", "11 ft 4 in")
                .take();

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err())
                .containsPattern(
                        "\nunits/dunlin/unit\\.yaml:\\d+:\\d+: `people / sleeping-places` says `6` by now and said"
                                + " `4` when it was looked at; the answer, `5`, is not taken\n");
        assertThat(written("people / sleeping-places")).isEqualTo("6");
        assertThat(written("size / height")).isEqualTo("11 ft 4 in");
    }

    @Test
    void whatItsTypeDoesNotTakeIsToldInItsWords() throws Exception {
        String before = fleet.text();
        SpoiltFleet.Said said = fact("people / sleeping-places", "6", "six")
                .fact("size / height", "11 ft 3 in", "11 foot")
                .fact("gauges / smoke-alarm / replace-by", "2031-05-31", "5/31/2031")
                .fact("drive-side", "left", "top")
                .fact("checked-by", "Yard crew", "a\u202eb")
                .take();

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err().lines().skip(1))
                .hasSize(5)
                .allSatisfy(line -> assertThat(line).contains("answers.json:"))
                .anySatisfy(line -> assertThat(line).contains("a whole number from 0 to 20 is meant"))
                .anySatisfy(line -> assertThat(line).contains("Write it like `12 ft 11 in`"))
                .anySatisfy(line -> assertThat(line).contains("`5/31/2031` is no day"))
                .anySatisfy(line -> assertThat(line).contains("`top` is not one of: left, right"))
                .anySatisfy(line -> assertThat(line).contains("U+202E").doesNotContain("\u202e"));
        assertThat(fleet.text()).isEqualTo(before);
    }

    /** A value that is made to break out of its line stays a value. */
    @Test
    void whatLooksLikeYamlStaysAText() throws Exception {
        String nasty = "a: b\n  id: other # [x, {y";
        assertThat(fact("setup / why", null, nasty).take().exit()).isZero();
        assertThat(written("setup / why")).isEqualTo(nasty);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no / such / key",
                "switches / no-such-switch / on-look",
                "switches",
                "switches / house-battery-switch / id",
                "switches / house-battery-switch",
                "../../fleet / name",
                "",
                " / ",
                "id"
            })
    void aWayThatLeadsNowhereIsTold(String path) throws Exception {
        TreeSet<String> before = files();
        String text = fleet.text();
        SpoiltFleet.Said said = fact(path, null, "x").take();

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).contains("answers.json:").contains("`" + path + "`: ");
        assertThat(said.out()).isEqualTo("There is nothing to take.\n");
        assertThat(files()).isEqualTo(before);
        assertThat(fleet.text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "nonsense",
                "[]",
                "{}",
                "null",
                "{\"form\": \"bayfolio-survey-1\"}",
                "{\"form\": \"bayfolio-survey-2\", \"coach\": \"dunlin\"}",
                "{\"form\": 1}",
                "{\"form\": \"bayfolio-survey-1\", \"facts\": {}}",
                "{\"form\": \"bayfolio-survey-1\", \"facts\": [1]}",
                "{\"form\": \"bayfolio-survey-1\", \"facts\": [{\"path\": [], \"now\": \"x\"}]}",
                "{\"form\": \"bayfolio-survey-1\", \"facts\": [{\"path\": \"x\", \"now\": \"x\", \"when\": \"noon\"}]}",
                "{\"form\": \"bayfolio-survey-1\", \"pictures\": [{\"of\": \"x\", \"jpeg\": \"%%\", \"when\": \"2026-01-01T00:00:00Z\"}]}",
            })
    void whatIsNoFileOfASurveyIsTold(String text) throws Exception {
        String before = fleet.text();
        SpoiltFleet.Said said = take(Files.writeString(folder.resolve("answers.json"), text));

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out()).isEmpty();
        assertThat(said.err())
                .contains("answers.json: ")
                .endsWith("; nothing was taken\n")
                .doesNotContain("Exception");
        assertThat(said.err().lines()).hasSize(1);
        assertThat(fleet.text()).isEqualTo(before);
    }

    @Test
    void nestedDeepOrHugeOrNotThereOrNoText() throws Exception {
        Path deep = Files.writeString(folder.resolve("answers.json"), "[".repeat(200_000));
        assertThat(take(deep).exit()).isEqualTo(1);
        Path huge = folder.resolve("huge.json");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(Take.MOST_BYTES + 1);
        }
        assertThat(take(huge).err()).endsWith("the most that is read is " + Take.MOST_BYTES + "\n");
        assertThat(take(folder.resolve("none.json")).err()).startsWith("There is no file `");
        assertThat(take(Files.write(folder.resolve("latin.json"), new byte[] {(byte) 0xFF, 0}))
                        .err())
                .endsWith("it is no text; nothing was taken\n");
        assertThat(fleet.run("take").exit()).isEqualTo(2);
    }

    @Test
    void aFileOfAnotherCoach() throws Exception {
        fact("people / sleeping-places", "6", "5");
        SpoiltFleet.Said unknown = take(file("sandpiper"));
        assertThat(unknown.exit()).isEqualTo(1);
        assertThat(unknown.err()).contains("it is of coach `sandpiper`, which this fleet does not have");
        // By hand: what this one says there is not what that one said.
        facts.clear();
        fact("size / height", "11 ft 3 in", "11 ft 4 in");
        SpoiltFleet.Said other = take(file("whimbrel"));
        assertThat(other.exit()).isEqualTo(1);
        assertThat(other.err()).contains("says `12 ft 7 in` by now and said `11 ft 3 in`");
    }

    @Test
    void theSameFileTwiceAndAFactTwice() throws Exception {
        fact("people / sleeping-places", "6", "5");
        assertThat(take().out()).endsWith("Taken: 1.\n");
        SpoiltFleet.Said again = take();
        assertThat(again.exit()).isZero();
        assertThat(again.out()).isEqualTo("All that could be taken is so already.\n");
        facts.clear();
        SpoiltFleet.Said twice = fact("size / height", "11 ft 3 in", "11 ft 4 in")
                .fact("size / height", "11 ft 3 in", "11 ft 9 in")
                .take();
        assertThat(twice.exit()).isEqualTo(1);
        assertThat(twice.err()).contains("`size / height`: it is answered twice, and the first answer holds");
        assertThat(written("size / height")).isEqualTo("11 ft 4 in");
    }

    @Test
    void withoutAYesNothingIsWritten() throws Exception {
        String before = fleet.text();
        fact("people / sleeping-places", "6", "5");
        SpoiltFleet.Said said = fleet.run("take", file(SpoiltFleet.COACH).toString(), "--fleet", folder.toString());
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out()).contains("+  sleeping-places: 5\n");
        assertThat(fleet.text()).isEqualTo(before);
    }

    /** Between the difference and the yes somebody saves the file in an editor. */
    @Test
    void aFileThatWasSavedMeanwhileIsNotOverwritten() throws Exception {
        fact("people / sleeping-places", "6", "5");
        Take take = Take.of(
                file(SpoiltFleet.COACH), FleetReader.read(Folders.at(folder)).fleet(), folder, false);
        String saved = fleet.text() + "# saved meanwhile\n";
        Files.writeString(fleet.description(), saved);
        TreeSet<String> before = files();

        assertThatThrownBy(take::make).hasMessageContaining("somebody has changed it meanwhile");
        assertThat(fleet.text()).isEqualTo(saved);
        assertThat(files()).isEqualTo(before);
    }

    /** Of two that write at once one wins whole, and the other is told. */
    @Test
    void twoAtOnceLoseNothing() throws Exception {
        for (int round = 0; round < 20; round++) {
            byte[] before = Files.readAllBytes(fleet.description());
            byte[] one = (fleet.text() + "# one " + round + "\n").getBytes(StandardCharsets.UTF_8);
            byte[] two = (fleet.text() + "# two " + round + "\n").getBytes(StandardCharsets.UTF_8);
            List<Boolean> made = Stream.of(one, two)
                    .parallel()
                    .map(after -> {
                        try {
                            new Swap(fleet.description(), before, after).make();
                            return true;
                        } catch (IOException told) {
                            return false;
                        }
                    })
                    .toList();
            assertThat(made).contains(true).contains(false);
            byte[] now = Files.readAllBytes(fleet.description());
            assertThat(Arrays.equals(now, made.get(0) ? one : two)).isTrue();
        }
    }

    @Test
    void whoComparedAThingAndWhen() throws Exception {
        compared.add(entry("path", "switches / house-battery-switch"));
        compared.add(entry("path", ""));
        compared.add(entry("path", "switches / nothing"));
        SpoiltFleet.Said said = take();
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).contains("`switches / nothing`: there is no such thing on coach `dunlin`");
        for (String of : List.of("", "switches / house-battery-switch / ")) {
            assertThat(written(of + "checked-on")).isEqualTo("2026-11-28");
            assertThat(written(of + "checked-by")).isEqualTo("yard");
        }
    }

    /** What is answered, be it the same, is to be confirmed no more. */
    @Test
    void whatIsConfirmedIsMarkedNoLonger() throws Exception {
        String before = fleet.text();
        Files.writeString(
                fleet.description(),
                before.replaceFirst("  - id: house-battery-switch\n", "$0    to-confirm: [on-look, where]\n"));
        String look = written("switches / house-battery-switch / on-look");
        assertThat(fact("switches / house-battery-switch / on-look", look, look)
                        .take()
                        .exit())
                .isZero();
        assertThat(fleet.text())
                .isEqualTo(before.replaceFirst("  - id: house-battery-switch\n", "$0    to-confirm: [where]\n"));
        facts.clear();
        String where = written("switches / house-battery-switch / where");
        fact("switches / house-battery-switch / where", where, where).take();
        assertThat(fleet.text()).isEqualTo(before);
    }

    private static byte[] picture(int size) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(size, size / 2, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
        return bytes.toByteArray();
    }

    /** Behind the first two bytes of a JPEG file: what a camera writes there, with a place in it. */
    private static byte[] withPlace(byte[] jpeg) throws IOException {
        byte[] exif = "Exif\0\0MM\0*\0\0\0\bGPSLatitude 42.0".getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, 2);
        bytes.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.length + 2)});
        bytes.write(exif);
        bytes.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    @Test
    void picturesAreMadeAnewAndListedWhereThatIsAskedFor() throws Exception {
        byte[] taken = withPlace(picture(600));
        assertThat(new String(taken, StandardCharsets.ISO_8859_1)).contains("GPSLatitude");
        pictures.add(entry("of", "switches / house-battery-switch", "jpeg", base64(taken), "name", "../../x.sh"));
        TreeSet<String> before = files();
        String text = fleet.text();

        assertThat(take().exit()).isZero();
        TreeSet<String> made = files();
        made.removeAll(before);
        assertThat(made).singleElement().satisfies(file -> {
            assertThat(file).matches(".*/units/dunlin/photos/house-battery-switch-[0-9a-f]{12}\\.jpg");
            assertThat(Files.readString(Path.of(file), StandardCharsets.ISO_8859_1))
                    .doesNotContain("GPSLatitude");
            assertThat(ImageIO.read(Path.of(file).toFile()).getWidth()).isEqualTo(600);
        });
        assertThat(fleet.text()).isEqualTo(text);
        assertThat(take().out()).isEqualTo("All that could be taken is so already.\n");

        Files.delete(Path.of(made.first()));
        assertThat(take("--list-photos").exit()).isZero();
        assertThat(fleet.text()).contains("taken-on: 2026-11-28").contains("photos: [house-battery-switch-");
        assertThat(fleet.run("check", "dunlin", "--fleet", folder.toString()).out())
                .doesNotContain("error");
    }

    @Test
    void whatIsNoPictureIsTold() throws Exception {
        pictures.add(entry("of", "", "jpeg", base64("#!/bin/sh".getBytes(StandardCharsets.UTF_8))));
        pictures.add(entry("of", "../..", "jpeg", base64(picture(10))));
        byte[] vast = picture(100);
        for (int i = 0; i + 8 < vast.length; i++) {
            if ((vast[i] & 0xFF) == 0xFF && (vast[i + 1] & 0xFF) == 0xC0) {
                Arrays.fill(vast, i + 5, i + 9, (byte) 0xFF);
            }
        }
        pictures.add(entry("of", "", "jpeg", base64(vast)));
        TreeSet<String> before = files();
        SpoiltFleet.Said said = take();
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err().lines().skip(1)).hasSize(3);
        assertThat(files()).isEqualTo(before);
    }
}
