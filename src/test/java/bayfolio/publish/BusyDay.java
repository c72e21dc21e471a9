package bayfolio.publish;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A fleet of three small coaches with a day on which all happens that may: bookings, work, notices, editions. */
public record BusyDay(Path folder) {
    private static final String DAY = "2026-05-04";

    private static final String HEAD = "booking,renter,coach,pickup,return,edition sent\n";
    private static final String BOOKINGS = HEAD
            + "B-2,Jane Doe,knot,2026-05-04 16:00,2026-05-11 10:00,2\n"
            + "B-1,Jane Doe,plover,2026-05-04 09:30,2026-05-06 10:00,\n"
            + "B-3,John Doe,knot,2026-04-27 16:00,2026-05-04 10:00,1\n"
            + "B-4,John Doe,knot,2026-05-21 16:00,2026-05-28 10:00,1\n";

    private static final String NOTICES = """
            notices:
              - {id: gate, text: The gate of the yard is shut after dark., since: 2026-05-01, for: staff}
              - {id: over, text: The tap is frozen., since: 2026-01-01, until: 2026-02-01}
              - id: belts
                text: Look at the belts.
                since: 2026-04-01
                until: 2026-05-01
                for: staff
                recall:
                  campaign: Belts 26-1
                  coaches:
                    - {coach: knot}
                    - {coach: plover, done-on: 2026-04-10, done-by: yard}
              - id: seals
                text: Change the seal.
                since: 2026-04-02
                for: staff
                recall: {campaign: Seals 26-2, coaches: [{coach: plover}, {coach: dotterel}]}
            """;

    private static final String SERVICES = """

            services:
              - {what: Grease the hinges, due: 2026-05-03, by: yard staff}
              - {what: Look at the hoses, due: 2026-05-11}
              - {what: Paint the step, due: 2026-05-12}
            """;

    /** Written, with two editions of knot, and not yet published. */
    public static BusyDay write(Path folder) throws IOException {
        BusyDay day = new BusyDay(folder);
        SmallFleet.write(day.fleet(), List.of("dotterel", "knot", "plover"));
        day.add("units/fleet.yaml", NOTICES);
        day.add("units/dotterel/unit.yaml", SERVICES);
        day.typed("issue", "knot", "--note", "As bought", "--date", "2026-03-02");
        Path knot = day.fleet().resolve("units/knot/unit.yaml");
        Files.writeString(knot, Files.readString(knot).replace("where: on the front wall", "where: on the rear wall"));
        day.typed("issue", "knot", "--note", "The switch was moved", "--date", "2026-04-02");
        Files.writeString(day.bookings(), BOOKINGS);
        return day;
    }

    private static final class Published {
        static final BusyDay DAY = published();

        private static BusyDay published() {
            try {
                BusyDay day = write(Files.createTempDirectory("bayfolio-busy"));
                day.publish("--bookings", day.bookings().toString());
                return day;
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Published once for all tests, with its bookings. */
    public static BusyDay published() {
        return Published.DAY;
    }

    Path fleet() {
        return folder.resolve("fleet");
    }

    Path bookings() {
        return folder.resolve("bookings.csv");
    }

    /** The folder of both copies. */
    public Path out() {
        return folder.resolve("out");
    }

    private void add(String file, String text) throws IOException {
        DemoFleet.write(fleet().resolve(file), Files.readString(fleet().resolve(file)) + text);
    }

    /** What `publish` says on that day, and its exit code behind. */
    String publish(String... words) {
        return publishOn(DAY, words);
    }

    String publishOn(String date, String... words) {
        List<String> all = new ArrayList<>(List.of("publish", "--out", out().toString(), "--as-of", date));
        if (List.of(words).stream().noneMatch("--only"::equals)) {
            all.addAll(List.of("--only", "web"));
        }
        Collections.addAll(all, words);
        return typed(all.toArray(String[]::new));
    }

    private String typed(String... words) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said, true);
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--fleet", fleet().toString()));
        int exit = Folders.run(writer, writer, all.toArray(String[]::new));
        return said + "exit " + exit + "\n";
    }
}
