package bayfolio.check.sense;

import bayfolio.model.Appliance;
import bayfolio.model.Appliance.Energy;
import bayfolio.model.Circuit;
import bayfolio.model.Device;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What appliances run on, by their kind; common practice, no source. */
final class Energies {
    private static final Set<Energy> BURNT =
            EnumSet.of(Energy.GAS, Energy.DIESEL, Energy.GASOLINE, Energy.BUTANE, Energy.SPIRIT);

    /** Chargers that the running engine drives, by their names. */
    private static final Pattern BY_THE_ENGINE =
            Pattern.compile("\\b(?:engine|boost(?:er)?|alternator|relay|isolator)\\b", Pattern.CASE_INSENSITIVE);

    private Energies() {}

    static boolean fit(Device what, List<Energy> energy) {
        return (what.energy().isEmpty() || what.energy().containsAll(energy))
                && energy.containsAll(what.always())
                // Of two that burn, one is a slip.
                && energy.stream().filter(BURNT::contains).distinct().count() < 2;
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
