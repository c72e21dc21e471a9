package bayfolio.check.sense;

import bayfolio.fact.Facts;
import bayfolio.fact.Range;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Device;
import bayfolio.model.Fleet;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a record: the region and body of its coach, its kind, the words chosen in it and the roles that it
 * holds; and the words chosen in what it refers to, such as the circuit of a load.
 */
final class Surroundings implements Range.Circumstances {
    private final Fleet fleet;
    private final Optional<Coach> coach;
    private final Facts facts;
    private @Nullable Set<String> words;

    /**
     * @param coach that the record is of; none for what the fleet says of itself
     */
    Surroundings(Fleet fleet, Optional<Coach> coach, Facts facts) {
        this.fleet = fleet;
        this.coach = coach;
        this.facts = facts;
    }

    @Override
    public boolean hold(String word) {
        if (words == null) {
            words = words();
        }
        return words.contains(word);
    }

    @Override
    public Optional<LocalDate> asOf() {
        return fleet.asOf();
    }

    @Override
    public Optional<LocalDate> modelYear() {
        return coach.flatMap(it -> it.unit().facts().find(Unit.MODEL_YEAR)).map(year -> LocalDate.of(year, 1, 1));
    }

    private Set<String> words() {
        Set<String> all = new HashSet<>();
        coach.ifPresent(it -> {
            all.add(Type.word(it.unit().region()));
            if (it.unit().region() == Region.OCEANIA) {
                all.add(Type.word(Region.EUROPE)); // coaches there are of the same sizes and volts
            }
            all.add(Type.word(it.unit().facts().get(Unit.BODY)));
        });
        all.add(facts.shape().name());
        chosen(facts, all);
        facts.each((key, value) -> {
            if (key.type() instanceof Type.Reference reference) {
                coach.stream()
                        .flatMap(it -> reference.kinds().stream()
                                .flatMap(kind -> it.thing(kind, value.value().toString()).stream()))
                        .forEach(thing -> words(thing.facts(), all));
            }
        });
        return all;
    }

    private static void chosen(Facts facts, Set<String> all) {
        words(facts, all);
        facts.each((key, value) -> {
            if (value.value() instanceof List<?> list && key.type() instanceof Type.ListOf<?> type) {
                list.forEach(each -> {
                    Object element = ((Located<?>) each).value();
                    if (element instanceof Enum<?> word) {
                        all.add(Type.word(word));
                    } else if (type.element() instanceof Type.Role) {
                        all.add(element.toString());
                    }
                });
            }
        });
    }

    private static void words(Facts facts, Set<String> all) {
        facts.each((key, value) -> {
            if (value.value() instanceof Enum<?> word) {
                all.add(Type.word(word));
            } else if (value.value() instanceof Device device) {
                all.add(device.word());
            }
        });
    }
}
