package bayfolio.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        Drawing left = SideView.of(
                new SideView.Body(8, 3, false, 8, List.of()), List.of(door("L1", 2, 1, 0.5, 0.5)), List.of());
        Drawing right = SideView.of(
                new SideView.Body(8, 3, true, 8, List.of()), List.of(door("R1", 2, 1, 0.5, 0.5)), List.of());
        double meter = (left.width() - 24) / 8;

        assertThat(box(left, "L1").width()).isCloseTo(meter, within(0.01));
        assertThat(box(left, "L1").height()).isCloseTo(meter / 2, within(0.01));
        assertThat(box(left, "L1").x()).isCloseTo(12 + 2 * meter, within(0.01));
        assertThat(box(right, "R1").x() + meter).isCloseTo(right.width() - 12 - 2 * meter, within(0.01));
        assertThat(left.height() - 12 - box(left, "L1").y()).isCloseTo(meter, within(0.01));
    }

    /** A sign stands beside the code of a door that has room for both; a small door has its code alone. */
    @Test
    void whatFlowsBehindADoorIsSeenWhereThereIsRoom() {
        for (double[] door : new double[][] {{1.2, 0.4}, {0.6, 0.9}, {0.2, 0.2}}) {
            Drawing drawing = SideView.of(
                    new SideView.Body(8, 3, false, 8, List.of()),
                    List.of(new SideView.Opening(
                            "L1", "L1", 2, door[0], 0.5, door[1], Mark.Fill.STRIPES, false, "system-water")),
                    List.of());
            Mark.Box box = box(drawing, "L1");
            List<Mark.Symbol> signs = drawing.marks().stream()
                    .filter(Mark.Symbol.class::isInstance)
                    .map(Mark.Symbol.class::cast)
                    .toList();
            assertThat(signs).hasSize(door[0] > 0.3 ? 1 : 0).allSatisfy(sign -> {
                assertThat(sign.x()).isBetween(box.x(), box.x() + box.width() - sign.size());
                assertThat(sign.y()).isBetween(box.y(), box.y() + box.height() - sign.size());
                Mark.Box ground =
                        new Mark.Box("", sign.x(), sign.y(), sign.size(), sign.size(), 0, Mark.Fill.NONE, false);
                assertThat(labels(drawing)).noneMatch(label -> label.room().overlaps(ground));
            });
            assertThat(labels(drawing)).extracting(Mark.Label::words).containsExactly("L1");
        }
    }

    /** Out of the door, once round, on either side; nothing of it leaves the drawing. */
    @Test
    void theWayRoundBeginsAtTheDoor() {
        for (PlanView.Wall wall : List.of(PlanView.Wall.LEFT, PlanView.Wall.RIGHT)) {
            PlanView.Part door = new PlanView.Part("door", "IN", wall, 3, 0.7, 0, Mark.Fill.PLAIN);
            Drawing plan = PlanView.of(8, 2.4, List.of(door), List.of(), Optional.of(door));
            List<Mark.Path> broken = plan.marks().stream()
                    .filter(mark -> mark instanceof Mark.Path path && path.dashed())
                    .map(Mark.Path.class::cast)
                    .toList();
            Mark.Box there = box(plan, "door");

            assertThat(broken).hasSize(1);
            List<Mark.Point> way = broken.get(0).points();
            assertThat(way.get(0).x()).isCloseTo(there.x() + there.width() / 2, within(0.01));
            assertThat(way.get(0).y()).isBetween(there.y(), there.y() + there.height());
            assertThat(way.get(2).x()).as("first to the rear").isGreaterThan(plan.width() - 20);
            assertThat(way).allSatisfy(point -> {
                assertThat(point.x()).isBetween(0.0, plan.width());
                assertThat(point.y()).isBetween(0.0, plan.height());
            });
            assertThat(PlanView.of(8, 2.4, List.of(door), List.of(), Optional.empty())
                            .marks())
                    .noneMatch(mark -> mark instanceof Mark.Path path && path.dashed());
        }
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
        Drawing drawing = SideView.of(new SideView.Body(12, 3.6, false, 12, List.of(1.0, 7.0)), doors, List.of());

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
