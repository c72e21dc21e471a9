package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.render.Output;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CardsAndSheetsTest {
    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#looked")
    void aCardHasOneSideAndIsReadByTheLightOfAPhone(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        Cards cards = new Cards(DemoBook.means());

        Map<String, byte[]> files = demo.files(cards);

        assertThat(cards.complaints()).isEmpty();
        assertThat(files.keySet())
                .containsExactlyInAnyOrder(
                        unit + "/print/night-card.pdf", unit + "/print/phone-card.pdf", unit + "/print/quick-card.pdf");
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            try (Read card = new Read(file.getValue())) {
                assertThat(card.pages()).as(file.getKey()).isEqualTo(1);
                double foot = card.document().getPage(0).getMediaBox().getHeight() / (72 / 25.4) - 13;
                for (Read.Letter letter : card.letters()) {
                    if (letter.bottom() < foot) {
                        assertThat(letter.size()).as(file.getKey() + letter).isGreaterThanOrEqualTo(13.9);
                    }
                }
            }
        }
    }

    @Test
    void theNightCardSaysWhomToCallWhatToDoAndWhereThingsAre() throws Exception {
        String card = text("whimbrel", new Cards(DemoBook.means()), "night-card");

        assertThat(card)
                .contains("911")
                .contains("+1 555-0120")
                .contains("DANGER: Smoke fills a coach in a minute.")
                .contains("Never go back in.")
                .contains("Turn on the house battery.")
                .contains("The rocker stands in the middle as always.")
                .contains("Lounge exit window")
                .contains("Fire extinguisher");
        // In danger comes first.
        assertThat(card.indexOf("Smoke fills")).isLessThan(card.indexOf("Turn on the house battery"));
    }

    @Test
    void thePhoneCardSaysWhatAHelperAsksFor() throws Exception {
        assertThat(text("whimbrel", new Cards(DemoBook.means()), "phone-card"))
                .contains("HB 07")
                .contains("Height", "Highest allowed weight", "Fuel", "Plug of the power cord", "Sewer hose")
                .contains("Fire extinguisher", "Chassis battery switch", "LP tank valve", "Coach main breaker");
        assertThat(text("redpoll", new Cards(DemoBook.means()), "phone-card")).contains("Cylinder valve", "112");
    }

    @Test
    void theConditionSheetHasAllSidesToMark() throws Exception {
        DemoBook demo = DemoBook.of("whimbrel");
        byte[] sheet =
                Objects.requireNonNull(demo.files(new Sheets(DemoBook.means())).get("whimbrel/print/condition.pdf"));
        try (Read read = new Read(sheet)) {
            List<String> drawn = new ArrayList<>();
            read.tags().walk(tag -> {
                if (tag.kind().equals("Figure")) {
                    drawn.add(tag.alt());
                }
            });
            assertThat(drawn)
                    .containsExactly(
                            "Left side; the front is on the left",
                            "Right side; the front is on the right",
                            "From the front",
                            "From behind",
                            "From above; the front is on the left");
            assertThat(String.join("\n", read.texts()))
                    .contains("Odometer", "Fuel", "Generator hours", "Fresh tank", "Black tank", "Tires")
                    .contains("Staff", "Renter", "Out", "Back");
        }
    }

    @Test
    void theDamageSheetNumbersWhatEarlierHiresLeft() throws Exception {
        String sheet = text("whimbrel", new Sheets(DemoBook.means()), "damage");

        assertThat(sheet)
                .contains("left, below the galley window")
                .contains("scratch", "7 in", "May 2, 2026")
                .contains("dent", "paint whole")
                .contains("dinette table, corner at the aisle")
                .contains("Signed", "Renter");
        // Sisters have none of it.
        assertThat(text("dunlin", new Sheets(DemoBook.means()), "damage")).doesNotContain("scratch");
    }

    @Test
    void theInventoryGoesByCompartmentWithCountsOutAndBack() throws Exception {
        assertThat(text("whimbrel", new Sheets(DemoBook.means()), "inventory"))
                .contains("L5 Wet locker", "Sewer hose", "Number", "Out", "Back");
        assertThat(text("whimbrel", new Sheets(DemoBook.means()), "ready")).contains("House battery switch", "Done");
    }

    @Test
    void theSheetsHaveOnPaperWhatTheYardNeeds() throws Exception {
        Sheets sheets = new Sheets(DemoBook.means());

        assertThat(text("whimbrel", sheets, "ready"))
                .contains(
                        "In the driver\u2019s seat",
                        "Inside, front to back",
                        "Outside, once around from the entry door")
                .contains("110 psi", "Lamps outside", "Empty and rinsed", "2 sets, each key tried", "Who", "When");
        assertThat(text("whimbrel", sheets, "condition"))
                .contains("License plate", "Rear right, inner", "Brake lamps", "Registration", "thumbnail")
                .contains("below the galley window", "Handover: done once by the renter", "Use the extinguisher");
        assertThat(text("godwit", sheets, "condition")).contains("Known defects", "The awning will not move");
        assertThat(text("whimbrel", sheets, "inventory")).contains("410 USD", "Used up: top up", "Needed for");
        assertThat(sheets.complaints()).isEmpty();
    }

    private static String text(String unit, Output output, String name) throws Exception {
        byte[] pdf = Objects.requireNonNull(DemoBook.of(unit).files(output).get(unit + "/print/" + name + ".pdf"));
        try (Read read = new Read(pdf)) {
            return read.tags().text().replaceAll("[\\s\u00a0]+", " ");
        }
    }
}
