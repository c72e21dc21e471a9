package bayfolio.render;

import static org.assertj.core.api.Assertions.fail;

import java.io.File;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A real browser without a window. */
final class Browser {
    private Browser() {}

    /** To be closed by who opens it. */
    static ChromeDriver open(Path profile) {
        File chromium = onPath("chromium");
        File chromedriver = onPath("chromedriver");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium);
        LoggingPreferences told = new LoggingPreferences();
        told.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", told);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile);
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(chromedriver)
                        .usingAnyFreePort()
                        .build(),
                options);
    }

    private static File onPath(String name) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(Pattern.quote(File.pathSeparator), -1)) {
            File file = new File(folder, name);
            if (file.canExecute()) {
                return file;
            }
        }
        return fail("The browser tests need `%s` on the path; src/test/all installs it.".formatted(name));
    }
}
