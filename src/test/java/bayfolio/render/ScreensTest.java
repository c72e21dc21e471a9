package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Twenty screens by day and at night, kept in {@code target/screens} for somebody to look at. With
 * {@code -Dgolden=write} the pictures of the README are made anew, too.
 */
class ScreensTest {
    private static final Path KEPT = Path.of("target/screens");
    private static final Path README = Path.of("src/pictures");

    /** @param script what is done on the page before; may be empty */
    private record Screen(String name, String page, int wide, int high, boolean night, String script) {}

    private static final String CARD = "document.querySelector('.begin').click(); window.scrollTo(0, 0);";

    private static final List<Screen> SCREENS = List.of(
            new Screen("home-by-day", "dunlin/index.html", 390, 780, false, ""),
            new Screen("home-by-night", "dunlin/index.html", 390, 780, true, ""),
            new Screen("step-by-day", "dunlin/do/dump-tanks-gravity.html", 390, 780, false, CARD),
            new Screen("step-by-night", "dunlin/do/dump-tanks-gravity.html", 390, 780, true, CARD),
            new Screen("fleet", "index.html", 320, 640, false, ""),
            new Screen("fleet-wide", "index.html", 1280, 900, true, ""),
            new Screen("home-wide", "whimbrel/index.html", 1280, 900, false, ""),
            new Screen("dark", "whimbrel/now/dark.html", 320, 640, true, ""),
            new Screen("emergency", "whimbrel/stage/emergency.html", 320, 640, true, ""),
            new Screen("fire", "whimbrel/do/escape-fire.html", 360, 640, true, ""),
            new Screen("walk-round", "whimbrel/walk-round.html", 768, 900, false, ""),
            new Screen("panels", "phalarope/switches.html", 390, 780, false, ""),
            new Screen("compartment", "dunlin/compartment/l4-service-bay.html", 390, 780, false, ""),
            new Screen("switch", "dunlin/switch/house-battery-switch.html", 390, 780, true, ""),
            new Screen("connection", "turnstone/connection/shore-inlet.html", 390, 780, false, ""),
            new Screen("numbers", "phalarope/numbers.html", 320, 640, false, ""),
            new Screen("runs-together", "whimbrel/worked-out/runs-together.html", 390, 780, false, ""),
            new Screen("night", "whimbrel/worked-out/a-night.html", 390, 780, true, ""),
            new Screen("guide", "redpoll/trouble/no-12v.html", 390, 780, true, ""),
            new Screen("search", "dunlin/a-z.html", 390, 780, false, ""));

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(390, 780);

    @Test
    void twentyScreensAreKept() throws IOException {
        Files.createDirectories(KEPT);
        for (Screen screen : SCREENS) {
            byte[] png = taken(screen);
            Files.write(KEPT.resolve(screen.name() + ".png"), png);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
            TreeSet<Integer> colors = new TreeSet<>();
            for (int x = 0; x < image.getWidth(); x += 3) {
                for (int y = 0; y < image.getHeight(); y += 3) {
                    colors.add(image.getRGB(x, y));
                }
            }
            assertThat(colors).as(screen.name() + " is no empty screen").hasSizeGreaterThan(10);
            assertThat(colors.contains(0xffffffff) && screen.night() && screen.wide() < 400 && !pictured(screen))
                    .as(screen.name() + ": pure white at night")
                    .isFalse();
            if (Files.exists(README.resolve(screen.name() + ".png")) && "write".equals(System.getProperty("golden"))) {
                Files.write(README.resolve(screen.name() + ".png"), png);
            }
        }
    }

    private static boolean pictured(Screen screen) {
        return screen.page().equals("index.html");
    }

    private static byte[] taken(Screen screen) {
        SITE.device(screen.wide(), screen.high());
        SITE.preference("prefers-color-scheme", screen.night() ? "dark" : "light");
        SITE.browser().executeCdpCommand("Emulation.setScrollbarsHidden", Map.of("hidden", true));
        SITE.browser().get(SITE.origin() + screen.page());
        assertThat(SITE.browser().getTitle()).as(screen.page()).isNotBlank();
        SITE.browser().executeScript("document.querySelectorAll('img').forEach(it => it.loading = 'eager');");
        if (!screen.script().isEmpty()) {
            SITE.browser().executeScript(screen.script());
        }
        SITE.browser().executeAsyncScript("""
                Promise.all([...document.images].map(it => it.decode().catch(() => {}))).then(arguments[0]);
                """);
        return Base64.getDecoder()
                .decode(String.valueOf(Objects.requireNonNull(SITE.browser()
                        .executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"))
                        .get("data"))));
    }
}
