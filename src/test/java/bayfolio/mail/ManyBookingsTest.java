package bayfolio.mail;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Jvm;
import bayfolio.Main;
import bayfolio.publish.SmallFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten thousand bookings in one run: of each only what is being written is in mind. */
class ManyBookingsTest {
    private static final int BOOKINGS = 10_000;
    private static final int HEAP = 256;

    /** Each has a message on one of so many days. */
    private static final int DAYS = 10;

    @Test
    void tenThousandBookingsFitInAQuarterOfAGigabyte(@TempDir Path folder) throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "ruff"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts) + "time-zone: America/New_York\n");
        StringBuilder rows = new StringBuilder("booking,coach,pickup,return,edition sent\n");
        LocalDate first = LocalDate.of(2026, 6, 8);
        for (int i = 0; i < BOOKINGS; i++) {
            LocalDate pickup = first.plusDays(i % DAYS);
            rows.append("B-")
                    .append(i)
                    .append(i % 2 == 0 ? ",knot," : ",ruff,")
                    .append(pickup)
                    .append(" 10:00,")
                    .append(pickup.plusDays(20))
                    .append(" 10:00,1\n");
        }
        Path bookings = folder.resolve("bookings.csv");
        Files.writeString(bookings, rows);
        Path out = folder.resolve("mail");

        Process writer = Jvm.start(
                List.of("-Xmx" + HEAP + "m"),
                Main.class,
                "mail",
                bookings.toString(),
                "--as-of=2026-06-01",
                "--fleet=" + fleet,
                "--out=" + out);
        List<String> said = writer.inputReader().lines().toList();

        assertThat(writer.waitFor()).as(said.toString()).isZero();
        assertThat(said).contains(BOOKINGS / DAYS + " messages written into " + out + ".");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files).hasSize(BOOKINGS / DAYS);
        }
    }
}
