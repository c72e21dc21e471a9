package bayfolio.read;

import bayfolio.model.Device;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.Role;
import java.util.Map;
import java.util.Optional;

/**
 * What descriptions may name, by the files that all coaches share.
 *
 * @param roles by their ids; empty where any is let pass
 * @param equipment empty where any is let pass
 */
record Lists(Optional<Map<String, Role>> roles, Optional<EquipmentKinds> equipment) {
    /** Whatever is named is let pass. */
    static final Lists ANY = new Lists(Optional.empty(), Optional.empty());

    /** Whatever role is named is let pass; equipment is that of a folder. */
    static Lists of(Folder folder) {
        return new Lists(
                Optional.empty(),
                Optional.of(FleetReader.equipment(folder, told -> {}).kinds()));
    }

    /** What an appliance may be; empty where it may be anything. */
    Optional<Map<String, Device>> devices() {
        return equipment.filter(EquipmentKinds::whole).map(EquipmentKinds::devices);
    }
}
