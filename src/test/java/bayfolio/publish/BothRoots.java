package bayfolio.publish;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What a reader finds below both roots of a folder that was published into: {@code web/index.html}. */
final class BothRoots {
    private BothRoots() {}

    static Map<String, String> of(Path out) {
        Map<String, String> site = new TreeMap<>();
        for (String root : OutputFolder.ROOTS) {
            if (Files.isDirectory(out.resolve(root))) {
                DemoFleet.bytes(out.resolve(root)).forEach((path, text) -> site.put(root + "/" + path, text));
            }
        }
        return site;
    }
}
