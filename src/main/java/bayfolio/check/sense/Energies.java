package bayfolio.check.sense;

import bayfolio.model.Appliance;
import bayfolio.model.Appliance.Energy;
import java.util.List;
import java.util.Set;

/** What appliances run on, by their kind. */
final class Energies {
    private Energies() {}

    static boolean fit(Appliance.What what, List<Energy> energy) {
        return switch (what) {
            case FRIDGE_TWO_WAY ->
                Set.copyOf(energy).equals(Set.of(Energy.GAS, Energy.AC))
                        || Set.copyOf(energy).equals(Set.of(Energy.GAS, Energy.AC, Energy.DC));
            case FRIDGE_THREE_WAY -> energy.containsAll(List.of(Energy.GAS, Energy.AC, Energy.DC));
            case FRIDGE_RESIDENTIAL -> energy.contains(Energy.AC) && !energy.contains(Energy.GAS);
            case FRIDGE_COMPRESSOR, HOB_INDUCTION, MICROWAVE -> !energy.contains(Energy.GAS);
            case HOB_GAS, OVEN_GAS -> energy.contains(Energy.GAS);
            case FURNACE -> energy.contains(Energy.GAS) || energy.contains(Energy.DIESEL);
            case AIR_CONDITIONER, HEAT_PUMP -> energy.contains(Energy.AC) || energy.contains(Energy.DC);
            default -> true;
        };
    }
}
