package bayfolio.check.sense;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RangesTest {
    private final Map<String, Key<?>> keys = new TreeMap<>();
    private final Set<String> words = new HashSet<>();
    private final Set<Shape<?>> seen = new HashSet<>();

    RangesTest() {
        collect(Unit.SHAPE);
        collect(FleetFacts.SHAPE);
        Fleet fleet = FleetReader.read(Folders.at(Path.of("."))).fleet();
        fleet.roles().forEach(role -> words.add(role.id()));
        words.addAll(fleet.equipment().devices().keySet());
    }

    @Test
    void everyFigureHasARange() {
        List<String> lacking = keys.entrySet().stream()
                .filter(it ->
                        takesAFigure(it.getValue()) && it.getValue().range().isEmpty())
                .map(Map.Entry::getKey)
                .toList();

        assertThat(keys.values().stream().filter(RangesTest::takesAFigure).count())
                .isGreaterThan(180);
        assertThat(lacking).isEmpty();
    }

    @Test
    void everyRangeHoldsInCircumstancesThatCanBe() {
        keys.forEach((name, key) -> key.range()
                .ifPresent(range -> Stream.concat(range.hard().stream(), range.usual().stream())
                        .flatMap(bounds -> bounds.when().stream())
                        .forEach(each -> assertThat(words).as(name).containsAll(each))));
    }

    @Test
    void everyRangeNamesASourceOrSaysThatThereIsNone() {
        keys.values()
                .forEach(key -> key.range()
                        .ifPresent(range ->
                                assertThat(range.source()).as(key.name()).isNotBlank()));
    }

    @Test
    void whatIsUsualCanBe() {
        keys.forEach((name, key) -> key.range()
                .ifPresent(range -> range.usual()
                        .forEach(usual -> assertThat(range.hard().stream()
                                        .filter(hard -> hard.when().isEmpty()
                                                || hard.when().equals(usual.when()))
                                        .allMatch(hard ->
                                                key.judge().orElseThrow().within(usual, hard)))
                                .as(name + ": " + usual.inWords())
                                .isTrue())));
    }

    private void collect(Shape<?> shape) {
        if (!seen.add(shape)) {
            return;
        }
        words.add(shape.name());
        for (Key<?> key : shape.keys()) {
            keys.put(shape.name() + " " + key.name(), key);
            Type<?> type = key.type() instanceof Type.ListOf<?> list ? list.element() : key.type();
            if (type instanceof Type.Nested<?> nested) {
                collect(nested.shape());
            } else if (type instanceof Type.Choice<?> choice) {
                words.addAll(choice.words().keySet());
            }
        }
    }

    private static boolean takesAFigure(Key<?> key) {
        return key.type() instanceof Type.Measured<?>
                || key.type() instanceof Type.Whole
                || key.type() instanceof Type.Day;
    }
}
