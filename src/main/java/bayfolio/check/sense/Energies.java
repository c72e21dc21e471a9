package bayfolio.check.sense;

import bayfolio.model.Appliance;
import bayfolio.model.Appliance.Energy;
import bayfolio.model.Appliance.What;
import bayfolio.model.Circuit;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What appliances run on, by their kind; common practice, no source. */
final class Energies {
    /** All that a kind can run on; a kind that is not here may run on anything. */
    private static final Map<What, Set<Energy>> MAY = new EnumMap<>(Map.ofEntries(
            Map.entry(What.HYDRONIC_HEATER, Set.of(Energy.DIESEL, Energy.GAS, Energy.AC, Energy.DC, Energy.ENGINE)),
            Map.entry(What.BLOWN_AIR_HEATER, Set.of(Energy.GAS, Energy.DIESEL, Energy.AC, Energy.DC)),
            Map.entry(What.WATER_HEATER, Set.of(Energy.GAS, Energy.DIESEL, Energy.AC, Energy.DC, Energy.ENGINE)),
            Map.entry(What.AIR_CONDITIONER, Set.of(Energy.AC, Energy.DC)),
            Map.entry(What.HEAT_PUMP, Set.of(Energy.AC, Energy.DC)),
            Map.entry(What.FRIDGE_RESIDENTIAL, Set.of(Energy.AC)),
            Map.entry(What.FRIDGE_COMPRESSOR, Set.of(Energy.AC, Energy.DC)),
            Map.entry(What.HOB_INDUCTION, Set.of(Energy.AC)),
            Map.entry(What.MICROWAVE, Set.of(Energy.AC)),
            Map.entry(What.TANK_HEATER, Set.of(Energy.AC, Energy.DC, Energy.ENGINE)),
            Map.entry(What.MACERATOR, Set.of(Energy.AC, Energy.DC)),
            Map.entry(What.TANK_FLUSH, Set.of(Energy.HAND)),
            Map.entry(What.ROOF_FAN, Set.of(Energy.DC, Energy.AC, Energy.HAND)),
            Map.entry(What.CHARGER, Set.of(Energy.AC, Energy.DC, Energy.ENGINE)),
            Map.entry(What.OUTSIDE_SHOWER, Set.of(Energy.DC, Energy.HAND)),
            Map.entry(What.TOILET, Set.of(Energy.DC, Energy.AC, Energy.HAND)),
            Map.entry(What.ANTENNA, Set.of(Energy.DC, Energy.AC, Energy.HAND)),
            Map.entry(What.DROP_DOWN_BED, Set.of(Energy.DC, Energy.HAND))));

    private static final Set<Energy> BURNT = EnumSet.of(Energy.GAS, Energy.DIESEL);

    /** Chargers that the running engine drives, by their names. */
    private static final Pattern BY_THE_ENGINE =
            Pattern.compile("\\b(?:engine|boost(?:er)?|alternator|relay|isolator)\\b", Pattern.CASE_INSENSITIVE);

    private Energies() {}

    static boolean fit(What what, List<Energy> energy) {
        return MAY.getOrDefault(what, EnumSet.allOf(Energy.class)).containsAll(energy)
                && switch (what) {
                    case FRIDGE_TWO_WAY ->
                        Set.copyOf(energy).equals(Set.of(Energy.GAS, Energy.AC))
                                || Set.copyOf(energy).equals(Set.of(Energy.GAS, Energy.AC, Energy.DC));
                    case FRIDGE_THREE_WAY -> energy.containsAll(List.of(Energy.GAS, Energy.AC, Energy.DC));
                    case HOB_GAS, OVEN_GAS -> energy.contains(Energy.GAS);
                    case FURNACE -> energy.contains(Energy.GAS) || energy.contains(Energy.DIESEL);
                    // Of two that burn, one is a slip.
                    case BLOWN_AIR_HEATER, WATER_HEATER, HYDRONIC_HEATER -> !energy.containsAll(BURNT);
                    default -> true;
                };
    }

    /** Whether a charger is driven by the engine just if its name says so. */
    static boolean drivenAsCalled(List<Energy> energy, Appliance charger) {
        return energy.contains(Energy.ENGINE)
                == BY_THE_ENGINE
                        .matcher(charger.id().replace('-', ' ') + " " + charger.name())
                        .find();
    }

    /** What is drawn from a circuit. */
    static Energy from(Circuit.Current current) {
        return current == Circuit.Current.AC ? Energy.AC : Energy.DC;
    }
}
