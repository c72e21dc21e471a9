package bayfolio.mail;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.bookings.Booking;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Message;
import bayfolio.document.PageKind;
import bayfolio.document.SentWhen;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.read.FleetReader;
import bayfolio.render.mail.Letter;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which links a booking gets: one link stands for each thing that may decide. */
class ChosenTest {
    private static final Fleet FLEET =
            FleetReader.read(Folders.at(DemoFleet.SMALL)).fleet();

    private static final Place NOWHERE = Place.whole(new SourceFile("bookings.csv", ""));

    private static final Desk DESK = new Desk(
            new Coach(FLEET, FLEET.units().get(0)),
            "https://books.lanterncreek.example/plover/",
            Arrays.stream(SentWhen.values()).map(ChosenTest::link).toList(),
            Optional.of(new Letter.Link("news", "", "https://books.lanterncreek.example/plover/what-changed.html")),
            OptionalDouble.of(30),
            Map.of(1, 6.0, 2, 3.0, 4, 1.5));

    private static Content.Sendable link(SentWhen when) {
        String name = Type.word(when);
        return new Content.Sendable(
                new Stamp(PageKind.LINKS.node().child(name), Audience.STAFF, From.PROGRAM, "en"),
                new Inline.Link(new Target.OfProcedure(name), List.of(new Inline.Text(name)), NOWHERE),
                Message.CONFIRMATION,
                Optional.of(when),
                "",
                name,
                "https://books.lanterncreek.example/plover/do/" + name + ".html",
                "https://books.lanterncreek.example/L/PLOVER/X");
    }

    @ParameterizedTest(name = "{0} people, {1}, {2}: {3}")
    @CsvSource({
        "2, , , staffed-return",
        "4, , , many-people staffed-return",
        // Of more people than anybody has reckoned for nothing is said.
        "40, , , staffed-return",
        "2, 30 A, , staffed-return",
        "2, 15 A, , smaller-supply staffed-return",
        "2, '50 A, 15 A', , smaller-supply staffed-return",
        "2, 20 amps and none, , staffed-return",
        "2, lots, , staffed-return",
        "2, , first, first-trip staffed-return",
        "2, , Repeat, repeat staffed-return news",
        "2, , repaet, staffed-return",
    })
    void linksAreThoseThatTheBookingNeeds(int people, String supply, String trip, String titles) {
        Booking booking = new Booking(
                "B-1",
                "plover",
                LocalDateTime.of(2026, 6, 5, 10, 0),
                LocalDateTime.of(2026, 6, 12, 10, 0),
                OptionalInt.of(people),
                supply == null ? "" : supply,
                Optional.empty(),
                trip == null ? "" : trip,
                OptionalInt.empty(),
                NOWHERE);

        List<Chosen> chosen =
                Chosen.of(booking, Message.CONFIRMATION, DESK, new Depot(FLEET, ZoneId.of("America/New_York")));

        assertThat(String.join(" ", chosen.stream().map(it -> it.link().title()).toList()))
                .isEqualTo(titles);
        assertThat(chosen).allSatisfy(it -> assertThat(it.why()).isNotBlank());
    }
}
