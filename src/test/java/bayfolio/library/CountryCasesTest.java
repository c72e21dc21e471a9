package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;
import bayfolio.model.Backed;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.ForSomeCoaches;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.read.FleetReader;
import bayfolio.source.Located;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * What is known of countries, case by case: the coach that is asked about, what a renter is told of it, and whether that was
 * read at the public body itself.
 */
final class CountryCasesTest {
    private static final Fleet FLEET = FleetReader.read(Folders.at(Path.of(""))).fleet();

    private static final Set<String> APART =
            Set.of("as-reported", "disputed", "source", "checked-on", "above", "up-to", "empty", "longer-than");

    @ParameterizedTest(name = "{0} {1} {2} {3}")
    @CsvFileSource(resources = "/bayfolio/countries/cases.csv", numLinesToSkip = 1)
    void aRenterIsToldWhatIsKnown(
            String id, String country, String key, @Nullable String coach, String says, String status)
            throws Exception {
        Unit unit = coach(Optional.ofNullable(coach));
        Facts told = FLEET.countries().stream()
                .filter(it -> it.id().equals(country))
                .findFirst()
                .orElseThrow()
                .facts()
                .forRenters();

        List<Backed> values = values(told, Country.SHAPE.key(key).orElseThrow())
                .filter(it ->
                        !(it instanceof ForSomeCoaches some) || some.holds(unit).orElse(true))
                .toList();

        Pattern wanted = Pattern.compile(says);
        assertThat(values.stream().map(CountryCasesTest::text).collect(Collectors.joining()))
                .as(id)
                .containsPattern(wanted);
        values.stream()
                .filter(it -> wanted.matcher(text(it)).find())
                .forEach(it -> assertThat(it.facts().has(it.backing().asReported()))
                        .as(id + " " + text(it))
                        .isEqualTo(status.equals("reported")));
    }

    private static Stream<Backed> values(Facts country, Key<?> key) {
        return country.find(key).stream()
                .flatMap(value -> value instanceof List<?> list
                        ? list.stream().map(each -> ((Located<?>) each).value())
                        : Stream.of(value))
                .map(Backed.class::cast);
    }

    /** As it is written, key by key. */
    private static String text(Backed value) {
        StringBuilder text = new StringBuilder();
        value.facts().each((key, fact) -> {
            if (!APART.contains(key.name())) {
                String written = fact.written().isEmpty() ? fact.value().toString() : fact.written();
                text.append(key.name()).append(": ").append(written).append("; ");
            }
        });
        return text.toString();
    }

    /** @param how it is otherwise than one of the demo fleet: {@code gross 4200 kg} */
    private static Unit coach(Optional<String> how) throws Exception {
        Unit unit = FLEET.units().stream()
                .filter(it -> it.id().equals("turnstone"))
                .findFirst()
                .orElseThrow();
        if (how.isEmpty()) {
            return unit;
        }
        String what = how.get().substring(0, how.get().indexOf(' '));
        String measure = how.get().substring(what.length() + 1);
        Weights weights = unit.facts().get(Unit.WEIGHTS);
        return switch (what) {
            case "gross" -> with(unit, weights.facts().with(Weights.GROSS, at(unit, Kilograms.SCALE.parse(measure))));
            case "empty" -> {
                Facts weighing = weights.facts().get(Weights.AS_WEIGHED).facts();
                yield with(
                        unit,
                        weights.facts()
                                .with(
                                        Weights.AS_WEIGHED,
                                        at(
                                                unit,
                                                new Weighing(weighing.with(
                                                        Weighing.TOTAL, at(unit, Kilograms.SCALE.parse(measure)))))));
            }
            default ->
                new Unit(unit.facts()
                        .with(
                                Unit.SIZE,
                                at(
                                        unit,
                                        new Size(unit.size()
                                                .facts()
                                                .with(Size.LENGTH, at(unit, Meters.SCALE.parse(measure)))))));
        };
    }

    private static Unit with(Unit unit, Facts weights) {
        return new Unit(unit.facts().with(Unit.WEIGHTS, at(unit, new Weights(weights))));
    }

    private static <T> Located<T> at(Unit unit, T value) {
        return new Located<>(value, unit.facts().at());
    }
}
