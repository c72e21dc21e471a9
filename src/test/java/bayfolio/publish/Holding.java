package bayfolio.publish;

import java.nio.file.Path;
import java.time.Duration;

/** A program that holds the lock of a folder until it is killed. */
final class Holding {
    private Holding() {}

    public static void main(String[] words) throws Exception {
        try (OutputFolder held = OutputFolder.open(Path.of(words[0]), Duration.ZERO, OutputFolder.Disk.REAL)) {
            System.out.println("held");
            Thread.sleep(Duration.ofMinutes(5).toMillis());
        }
    }
}
