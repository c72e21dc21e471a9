package bayfolio.publish;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** A program that publishes two sites by turns, until somebody kills it. */
final class Swapping {
    static final int COACHES = 4;
    private static final int PAGES = 60;

    private Swapping() {}

    public static void main(String[] words) throws Exception {
        publish(Path.of(words[0]), "old");
        System.out.println("begun");
        for (int turn = 1; ; turn++) {
            publish(Path.of(words[0]), turn % 2 == 0 ? "old" : "new");
        }
    }

    static void publish(Path folder, String said) throws Exception {
        try (OutputFolder output = OutputFolder.open(folder, Duration.ZERO, OutputFolder.Disk.REAL)) {
            output.verify();
            try (NextEdition next = output.next()) {
                for (int coach = 0; coach < COACHES; coach++) {
                    next.write("coach-" + coach, "", Part.Found.NOTHING, files("coach-" + coach, said));
                }
                next.writeShared(shared(said), Set.of());
                output.swapIn(next);
            }
        }
    }

    /** Every other page is the same in both. */
    private static Map<String, byte[]> files(String coach, String said) {
        Map<String, byte[]> files = new TreeMap<>();
        for (String root : OutputFolder.ROOTS) {
            for (int page = 0; page < PAGES; page++) {
                files.put(
                        root + "/" + coach + "/" + page + ".html",
                        bytes(page % 2 == 0 ? said + " " + page : "the same"));
            }
        }
        return files;
    }

    private static Map<String, byte[]> shared(String said) {
        return Map.of("web/index.html", bytes(said), "staff/index.html", bytes(said));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
