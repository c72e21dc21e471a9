package bayfolio.render;

import bayfolio.DemoFleet;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.chrome.ChromeDriver;

/** The demo fleet, published and served, before a real browser of a given size; for all tests of a class. */
final class OpenSite implements BeforeAllCallback, AfterAllCallback {
    private final int width;
    private final int height;
    private @Nullable SiteServer server;
    private @Nullable ChromeDriver browser;
    private @Nullable Path profile;

    private final Supplier<List<Path>> roots;

    /** Renters' pages. */
    OpenSite(int width, int height) {
        this(width, height, () -> List.of(DemoFleet.web()));
    }

    /** @param roots of sites that are served as one */
    OpenSite(int width, int height, Supplier<List<Path>> roots) {
        this.roots = roots;
        this.width = width;
        this.height = height;
    }

    @Override
    public void beforeAll(ExtensionContext context) throws Exception {
        server = new SiteServer(roots.get());
        profile = Files.createTempDirectory("bayfolio-browser");
        browser = Browser.open(profile);
        device(width, height);
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        if (browser != null) {
            browser.quit();
        }
        if (server != null) {
            server.close();
        }
        if (profile != null) {
            try (Stream<Path> files = Files.walk(profile)) {
                // A browser that is about to end may still take some of its own away.
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            } catch (UncheckedIOException gone) {
                profile.toFile().deleteOnExit();
            }
        }
    }

    ChromeDriver browser() {
        return Objects.requireNonNull(browser);
    }

    /** Where it is, with a slash at the end. */
    String origin() {
        return Objects.requireNonNull(server).origin();
    }

    /** Shows pages on another device from now on. */
    void device(int wide, int high) {
        browser()
                .executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of("width", wide, "height", high, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Shows pages from now on as who prefers something sees them: {@code prefers-color-scheme}, {@code dark}. */
    void preference(String feature, String value) {
        media(List.of(Map.of("name", feature, "value", value)));
    }

    void noPreference() {
        media(List.of());
    }

    private void media(List<Map<String, String>> features) {
        browser().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", features));
    }
}
