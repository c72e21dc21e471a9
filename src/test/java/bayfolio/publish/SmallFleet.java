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
import java.util.stream.IntStream;

/** A fleet of coaches that are as small as the shared procedures allow, alike but for their names and, with models, for a fact. */
public final class SmallFleet {
    private SmallFleet() {}

    /** Of as many coaches. */
    public static List<String> ids(int coaches) {
        return IntStream.range(0, coaches).mapToObj(i -> "coach-" + i).toList();
    }

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

    /** The same with three coaches of four described as what differs from a model, of which fifty have one. */
    static Path withModels(Path fleet, List<String> coaches) throws IOException {
        List<String> whole = new ArrayList<>();
        for (int i = 0; i < coaches.size(); i++) {
            if (i % 4 == 0) {
                whole.add(coaches.get(i));
            } else {
                sister(fleet, "small-" + i / 50, coaches.get(i));
            }
        }
        return write(fleet, whole);
    }

    private static void sister(Path fleet, String model, String coach) throws IOException {
        for (Map.Entry<String, byte[]> file :
                DemoFleet.files(DemoFleet.SMALL.resolve("units/plover")).entrySet()) {
            boolean unit = file.getKey().equals("unit.yaml");
            DemoFleet.write(
                    fleet.resolve("units/models/" + model).resolve(unit ? "model.yaml" : file.getKey()),
                    unit ? shared(file.getValue()) : file.getValue());
        }
        DemoFleet.write(fleet.resolve("units/" + coach + "/unit.yaml"), """
                id: %s
                name: %s
                number: P3
                model: %s
                size: {measured-by: Morning shift of the workshop}
                compartments:
                  - {id: l1-gear, checked-by: Evening shift of the yard}
                switches:
                  - {id: pump, where: above the tap}
                """.formatted(coach, name(coach), model)
                .getBytes(StandardCharsets.UTF_8));
    }

    /** Without what is each coach's own. */
    private static byte[] shared(byte[] unit) {
        return new String(unit, StandardCharsets.UTF_8)
                .replaceAll("(?m)^(id|name|number): .*\\n|^ +(measured-by|checked-by): .*\\n", "")
                .getBytes(StandardCharsets.UTF_8);
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
        return new String(file, StandardCharsets.UTF_8)
                .replace("id: plover\n", "id: " + coach + "\n")
                .replace("name: Plover\n", "name: " + name(coach) + "\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String name(String coach) {
        return coach.substring(0, 1).toUpperCase(Locale.ROOT) + coach.substring(1);
    }
}
