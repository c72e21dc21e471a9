package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.MustTell;
import bayfolio.model.Presence;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags equipment of a coach of which it does not tell the one fact that a renter must know before using it. */
public final class FeatureWithoutFact implements Rule {
    /**
     * A fact that a coach ought to tell.
     *
     * @param kind what it ought to tell it for
     * @param of the record that lacks it; empty where there is no such record
     * @param because what a renter must know it for
     */
    public record Lack(Equipment kind, Optional<Facts> of, Key<?> fact, String because) {}

    /** All facts that a coach ought to tell for what it has. */
    public static Stream<Lack> lacking(Unit unit) {
        EquipmentKinds kinds = unit.equipment();
        return kinds.on(unit).stream()
                .flatMap(kind -> kind.facts().all(Equipment.MUST_TELL).stream()
                        .filter(need -> kinds.holds(unit, need))
                        .flatMap(need -> lacking(unit, kind, need)));
    }

    private static Stream<Lack> lacking(Unit unit, Equipment kind, MustTell need) {
        return unit.equipment().meant(need).stream().flatMap(meant -> {
            List<Facts> telling = telling(unit, meant);
            Optional<Key<?>> key = meant.shape().key(need.facts().get(MustTell.FACT));
            String why = need.facts().get(MustTell.WHY);
            return key.stream()
                    .flatMap(fact -> telling.isEmpty() && meant instanceof Presence.OfRecord
                            ? Stream.of(new Lack(kind, Optional.empty(), fact, why))
                            : telling.stream()
                                    .filter(it -> !it.has(fact))
                                    .map(it -> new Lack(kind, Optional.of(it), fact, why)));
        });
    }

    private static List<Facts> telling(Unit unit, Presence meant) {
        return meant instanceof Presence.OfThings things
                ? things.things(unit).map(Described::facts).toList()
                : meant instanceof Presence.OfRecord record
                        ? record.records(unit).toList()
                        : List.of();
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().draft() ? Stream.of() : lacking(coach.unit()).map(lack -> told(coach.unit(), lack));
    }

    private static Finding told(Unit unit, Lack lack) {
        String fact = lack.fact.name();
        return Finding.warning(
                        "feature-without-fact",
                        at(unit, lack),
                        "this coach has the feature `" + lack.kind.id() + "` and does not tell `" + fact + "`: "
                                + lack.because)
                .mend("Add `" + fact + "`, from the papers of the new part.");
    }

    /** Where it comes from something of another record, that asks for the fact. */
    private static Place at(Unit unit, Lack lack) {
        return lack.of
                .filter(facts -> unit.things().map(Thing::facts).anyMatch(it -> it == facts))
                .map(Facts::at)
                .or(() -> unit.equipment().at(unit, lack.kind.id()))
                .orElse(unit.facts().at());
    }
}
