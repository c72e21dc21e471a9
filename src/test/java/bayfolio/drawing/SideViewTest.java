package bayfolio.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Sides of coaches as they are drawn. */
final class SideViewTest {
    private static SideView.Opening door(String id, double from, double width, double low, double tall) {
        return new SideView.Opening(id, id, from, width, low, tall, Mark.Fill.PLAIN, false, "");
    }

    private static List<Mark.Label> labels(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();
    }

    private static Mark.Box box(Drawing drawing, String id) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Box box && box.of().equals(id))
                .map(Mark.Box.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void itIsToScaleAndTurnedRound() {
        Drawing left = SideView.of(8, 3, false, 8, List.of(), List.of(door("L1", 2, 1, 0.5, 0.5)), List.of());
        Drawing right = SideView.of(8, 3, true, 8, List.of(), List.of(door("R1", 2, 1, 0.5, 0.5)), List.of());
        double meter = (left.width() - 24) / 8;

        assertThat(box(left, "L1").width()).isCloseTo(meter, within(0.01));
        assertThat(box(left, "L1").height()).isCloseTo(meter / 2, within(0.01));
        assertThat(box(left, "L1").x()).isCloseTo(12 + 2 * meter, within(0.01));
        assertThat(box(right, "R1").x() + meter).isCloseTo(right.width() - 12 - 2 * meter, within(0.01));
        assertThat(left.height() - 12 - box(left, "L1").y()).isCloseTo(meter, within(0.01));
    }

    @Test
    void sixtyDoorsLeaveNoLabelOutside() {
        Random random = new Random(7);
        List<SideView.Opening> doors = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            doors.add(door(
                    "L" + i, random.nextDouble() * 11, 0.15 + random.nextDouble(), 0.3, 0.2 + random.nextDouble()));
        }
        doors.add(door("LONGESTLABEL", 11.9, 0.1, 0.3, 0.1));
        Drawing drawing = SideView.of(12, 3.6, false, 12, List.of(1.0, 7.0), doors, List.of());

        assertThat(labels(drawing)).hasSize(61);
        for (Mark.Label label : labels(drawing)) {
            Mark.Box room = label.room();
            assertThat(room.x()).isNotNegative();
            assertThat(room.x() + room.width()).isLessThanOrEqualTo(drawing.width());
            assertThat(room.y() + room.height()).isLessThanOrEqualTo(drawing.height());
        }
    }

    /** On the published pages, as another reader sees them: its own measure of letters is narrower than ours. */
    @Test
    void noLabelOfTheDemoFleetLiesOnAnother() throws Exception {
        int[] drawings = {0};
        int[] doors = {0};
        for (var file : DemoFleet.files(DemoFleet.web()).entrySet()) {
            if (!file.getKey().matches("[a-z]+/index.html")) {
                continue;
            }
            Document page = Jsoup.parse(new String(file.getValue(), StandardCharsets.UTF_8));
            for (Element svg : page.select(".drawn svg")) {
                drawings[0]++;
                doors[0] += svg.select("a").size();
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg.outerHtml())));
                assertThat(svg.select("[style]")).isEmpty();
                String[] box = svg.attr("viewBox").split(" ");
                List<Element> rooms = svg.select("rect.paper");
                for (int i = 0; i < rooms.size(); i++) {
                    assertThat(number(rooms.get(i), "x")).isNotNegative();
                    assertThat(number(rooms.get(i), "x") + number(rooms.get(i), "width"))
                            .isLessThanOrEqualTo(Double.parseDouble(box[2]));
                    for (int j = i + 1; j < rooms.size(); j++) {
                        assertThat(apart(rooms.get(i), rooms.get(j)))
                                .as(file.getKey() + ": " + rooms.get(i) + rooms.get(j))
                                .isTrue();
                    }
                }
            }
        }
        assertThat(drawings[0]).isGreaterThan(15);
        assertThat(doors[0]).isGreaterThan(80);
    }

    private static double number(Element rect, String name) {
        return Double.parseDouble(rect.attr(name));
    }

    private static boolean apart(Element one, Element other) {
        double slack = 1; // of rounding
        return number(one, "x") + number(one, "width") <= number(other, "x") + slack
                || number(other, "x") + number(other, "width") <= number(one, "x") + slack
                || number(one, "y") + number(one, "height") <= number(other, "y") + slack
                || number(other, "y") + number(other, "height") <= number(one, "y") + slack;
    }
}
