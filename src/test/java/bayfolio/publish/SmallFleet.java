package bayfolio.publish;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A fleet of coaches that are as small as the shared procedures allow, alike but for their names. */
public final class SmallFleet {
    private SmallFleet() {}

    /** @param coaches ids of small letters */
    public static Path write(Path fleet, List<String> coaches) throws IOException {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.SMALL.resolve("units"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (!file.getKey().startsWith("plover/")) {
                DemoFleet.write(fleet.resolve("units").resolve(file.getKey()), file.getValue());
                continue;
            }
            for (String coach : coaches) {
                DemoFleet.write(
                        fleet.resolve("units/" + coach).resolve(file.getKey().substring("plover/".length())),
                        named(file.getValue(), coach));
            }
        }
        return fleet;
    }

    /**
     * Publishes its pages as somebody would who types it.
     *
     * @return the exit code
     */
    public static int publish(Path fleet, Path out, String... words) {
        List<String> all = new ArrayList<>(
                List.of("publish", "--fleet", fleet.toString(), "--out", out.toString(), "--only", "web"));
        all.addAll(List.of(words));
        PrintWriter said = new PrintWriter(new StringWriter());
        return Folders.run(said, said, all.toArray(String[]::new));
    }

    private static byte[] named(byte[] file, String coach) {
        String name = coach.substring(0, 1).toUpperCase(Locale.ROOT) + coach.substring(1);
        return new String(file, StandardCharsets.UTF_8)
                .replace("id: plover\n", "id: " + coach + "\n")
                .replace("name: Plover\n", "name: " + name + "\n")
                .getBytes(StandardCharsets.UTF_8);
    }
}
