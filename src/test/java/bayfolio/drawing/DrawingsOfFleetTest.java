package bayfolio.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import bayfolio.compose.Composer;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.Sketch;
import bayfolio.model.Gauge;
import bayfolio.model.Pose;
import bayfolio.model.Unit;
import bayfolio.prose.Target;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** All drawings of the demo fleet and of the small one. */
final class DrawingsOfFleetTest {
    private static Map<String, Drawing> all() throws Exception {
        Map<String, Drawing> all = new TreeMap<>();
        for (Path fleet : List.of(Path.of(""), DemoFleet.SMALL)) {
            all.putAll(of(DemoFleet.of(fleet)));
        }
        return all;
    }

    private static Map<String, Drawing> of(DemoFleet demo) {
        Map<String, Drawing> all = new TreeMap<>();
        for (Unit unit : demo.check().units()) {
            Handbook handbook = Composer.compose(demo.check().of(unit));
            handbook.walk().forEach(node -> {
                if (node instanceof Content.Drawn drawn) {
                    all.put(unit.id() + " " + node.id(), drawn.drawing());
                } else if (node instanceof Content.Sketched sketched) {
                    for (Sketch sketch : handbook.sketches(sketched.thing())) {
                        all.put(unit.id() + " " + sketch.name(), sketch.drawing());
                    }
                }
            });
        }
        return all;
    }

    @Test
    void noLabelLiesOnAnotherAndNoneLeavesItsFrame() throws Exception {
        Map<String, Drawing> all = all();

        assertThat(all).hasSizeGreaterThan(300);
        all.forEach(DrawingsOfFleetTest::isReadable);
    }

    /** Sixty doors more, some with codes of twelve letters, some in one place, a switch of which nobody knows where it is. */
    @Test
    void aCoachUnlikeOthersIsReadable(@TempDir Path folder) throws Exception {
        Path root = DemoFleet.copy(Path.of(""), folder.resolve("fleet"));
        Path unit = root.resolve("units/dunlin/unit.yaml");
        StringBuilder doors = new StringBuilder("compartments:\n");
        for (int i = 0; i < 60; i++) {
            doors.append("  - {id: box-")
                    .append(i)
                    .append(", name: ")
                    .append(i % 7 == 0 ? "ABCDEFGHIJKL" : "L" + (20 + i))
                    .append(" Box ")
                    .append(i)
                    .append(", side: ")
                    .append(i % 2 == 0 ? "left" : "right")
                    .append(", from-front: ")
                    .append(1 + i % 25)
                    .append(" ft, width: 1 ft, height: ")
                    .append(1 + i % 5)
                    .append(" ft, tall: 1 ft, access: free}\n");
        }
        Files.writeString(
                unit,
                Files.readString(unit)
                        .replace("compartments:\n", doors)
                        .replace(
                                "switches:\n",
                                "switches:\n  - {id: nowhere, name: Switch without a place, make: rocker, access: free, work: Press it.}\n"));
        DemoFleet strange = DemoFleet.of(root);
        Map<String, Drawing> all = of(strange);
        all.forEach(DrawingsOfFleetTest::isReadable);
        Handbook handbook = Composer.compose(strange.check()
                .of(strange.check().units().stream()
                        .filter(it -> it.id().equals("dunlin"))
                        .findFirst()
                        .orElseThrow()));

        assertThat(Objects.requireNonNull(all.get("dunlin home#doors.left")).marks())
                .filteredOn(Mark.Label.class::isInstance)
                .extracting(mark -> ((Mark.Label) mark).words())
                .contains("ABCDEFGHIJKL", "L22");
        assertThat(handbook.find(NodeId.of("switch/nowhere"))).isPresent();
        assertThat(handbook.sketches(new Target.OfThing("switch", "nowhere"))).isEmpty();
    }

    private static void isReadable(String name, Drawing drawing) {
        List<Mark.Box> rooms = drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(label -> ((Mark.Label) label).room())
                .toList();
        for (int i = 0; i < rooms.size(); i++) {
            Mark.Box room = rooms.get(i);
            assertThat(room.x()).as(name).isNotNegative();
            assertThat(room.y()).as(name).isNotNegative();
            assertThat(room.x() + room.width()).as(name).isLessThanOrEqualTo(drawing.width());
            assertThat(room.y() + room.height()).as(name).isLessThanOrEqualTo(drawing.height());
            for (Mark.Box other : rooms.subList(i + 1, rooms.size())) {
                assertThat(room.overlaps(other)).as(name + ": " + room + other).isFalse();
            }
        }
        drawing.marks().stream()
                .filter(Mark.Box.class::isInstance)
                .map(Mark.Box.class::cast)
                .forEach(box -> {
                    assertThat(box.x()).as(name + box).isGreaterThanOrEqualTo(0);
                    assertThat(box.y()).as(name + box).isGreaterThanOrEqualTo(0);
                    assertThat(box.x() + box.width()).as(name + box).isLessThanOrEqualTo(drawing.width());
                    assertThat(box.y() + box.height()).as(name + box).isLessThanOrEqualTo(drawing.height());
                });
    }

    /** What ON and OFF are is seen: no two states of a form look alike. */
    @Test
    void statesOfOneFormDoNotLookAlike() {
        List<Set<Pose>> pairs =
                List.of(EnumSet.of(Pose.UP), EnumSet.of(Pose.DOWN), EnumSet.of(Pose.LEFT), EnumSet.of(Pose.RIGHT));
        for (Face.Form form : List.of(Face.Form.DIAL, Face.Form.HANDLE, Face.Form.ROCKER)) {
            Set<List<Mark>> looks = new HashSet<>();
            pairs.forEach(stand -> looks.add(marks(form, stand)));
            assertThat(looks).as(form.name()).hasSize(4);
        }
        for (Face.Form form : List.of(Face.Form.ROD, Face.Form.BUTTON)) {
            assertThat(marks(form, EnumSet.of(Pose.IN))).isNotEqualTo(marks(form, EnumSet.of(Pose.OUT)));
        }
        assertThat(marks(Face.Form.VALVE, EnumSet.of(Pose.ALONG)))
                .isNotEqualTo(marks(Face.Form.VALVE, EnumSet.of(Pose.ACROSS)));
        for (Face.Form form : Face.Form.values()) {
            assertThat(marks(form, EnumSet.of(Pose.LIT)))
                    .as(form.name())
                    .isNotEqualTo(marks(form, EnumSet.of(Pose.DARK)));
        }
    }

    /** A lamp that is lit says nothing of whether the button is in, nor of where a lever stands. */
    @Test
    void whatNobodySaidIsNotDrawn() {
        List<Mark> lamp = marks(Face.Form.BUTTON, EnumSet.of(Pose.LIT));
        for (Face.Form form : EnumSet.complementOf(EnumSet.of(Face.Form.SCREEN))) {
            assertThat(marks(form, EnumSet.of(Pose.LIT)))
                    .as(form.name())
                    .isEqualTo(lamp)
                    .noneMatch(Mark.Box.class::isInstance);
        }
        assertThat(Face.of(Face.Form.VALVE, EnumSet.of(Pose.UP))).isEmpty();
        assertThat(Face.of(Face.Form.DIAL, EnumSet.of(Pose.IN))).isEmpty();
        assertThat(Face.of(Face.Form.ROCKER, EnumSet.noneOf(Pose.class))).isEmpty();
    }

    /** A mark is a share of the tank: half a tank is half way up, and what is in it is half of what it holds. */
    @Test
    void aTankIsDrawnToScale() throws Exception {
        Drawing fresh = Objects.requireNonNull(all().get("dunlin tank-fresh-levels"));
        Mark.Box tank = (Mark.Box) fresh.marks().get(0);
        List<Mark.Label> labels = fresh.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();

        assertThat(labels)
                .extracting(Mark.Label::words)
                .containsExactly("E", "1/3", "12 gal", "2/3", "24 gal", "F", "36 gal");
        double third = labels.get(1).y() - labels.get(3).y();
        assertThat(third).isCloseTo(tank.height() / 3, within(0.5));
        assertThat(all().get("dunlin tank-lp-levels"))
                .as("full is not the whole of it")
                .isNull();
    }

    /** What is read stands where the mark is, and moves when that is another. */
    @Test
    void aGaugeStandsAtItsMark() {
        List<String> marks = List.of("E", "1/4", "1/2", "3/4", "F");
        for (Gauge.Display display : Gauge.Display.values()) {
            Set<List<Mark>> looks = new HashSet<>();
            for (String mark : marks) {
                GaugeFace.of(display, marks, mark, EnumSet.of(Pose.LIT)).ifPresent(it -> looks.add(it.marks()));
            }
            assertThat(looks).as(display.name()).hasSize(marks.size());
        }
        for (Gauge.Display display : EnumSet.complementOf(EnumSet.of(Gauge.Display.LAMP))) {
            assertThat(GaugeFace.of(display, marks, "", Set.of()))
                    .as("what nobody said")
                    .isEmpty();
        }
        assertThat(GaugeFace.of(Gauge.Display.LAMP, List.of(), "", Set.of())).isEmpty();
        Set<List<Mark>> lamps = new HashSet<>();
        for (Pose pose : List.of(Pose.LIT, Pose.DARK, Pose.BLINKING)) {
            lamps.add(GaugeFace.of(Gauge.Display.LAMP, List.of(), "", EnumSet.of(pose))
                    .orElseThrow()
                    .marks());
        }
        assertThat(lamps).hasSize(3);
    }

    /** Long words on a gauge, and many: no label lies on another. */
    @Test
    void aGaugeOfManyMarksIsRead() {
        List<String> marks = IntStream.range(0, 40).mapToObj(i -> "MARK " + i).toList();
        for (Gauge.Display display : Gauge.Display.values()) {
            Drawing drawing = GaugeFace.of(display, marks, "MARK 17", EnumSet.of(Pose.LIT))
                    .orElseThrow();
            List<Mark.Box> rooms = drawing.marks().stream()
                    .filter(Mark.Label.class::isInstance)
                    .map(label -> ((Mark.Label) label).room())
                    .toList();
            assertThat(rooms).as(display.name()).allSatisfy(room -> {
                assertThat(room.x()).isNotNegative();
                assertThat(room.x() + room.width()).isLessThanOrEqualTo(drawing.width());
                assertThat(rooms).filteredOn(other -> other != room).noneMatch(room::overlaps);
            });
        }
    }

    private static List<Mark> marks(Face.Form form, Set<Pose> poses) {
        return Face.of(form, poses).orElseThrow().marks();
    }

    /** As files of their own: XML, named for who cannot see them, without styles; and none is there in vain. */
    @Test
    void filesAreReadByAnotherReader() throws Exception {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());
        List<String> drawings = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().contains("/drawings/")) {
                Element svg = DocumentBuilderFactory.newDefaultNSInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(file.getValue()))
                        .getDocumentElement();
                assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
                assertThat(svg.getAttribute("aria-label")).as(file.getKey()).isNotBlank();
                assertThat(styled(svg)).as(file.getKey()).isFalse();
                drawings.add(file.getKey());
            }
        }
        assertThat(drawings).hasSizeGreaterThan(250);
    }

    private static boolean styled(Node node) {
        if (node instanceof Element element
                && (element.hasAttribute("style") || element.getLocalName().equals("style"))) {
            return true;
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (styled(child)) {
                return true;
            }
        }
        return false;
    }
}
