package bayfolio.model;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What an appliance is, by the word that descriptions write as {@code what}, and what holds of it on any coach by the
 * files of equipment.
 *
 * @param name what writers call it
 * @param energy all that it may run on; empty where nothing is said of that
 * @param always what it runs on whatever else
 * @param called found in the name of each; empty where it may have any
 * @param warms of all kinds that have this word
 */
public record Device(
        String word,
        String name,
        Set<Appliance.Energy> energy,
        Set<Appliance.Energy> always,
        Optional<Pattern> called,
        boolean inTheRoom,
        boolean onTheRoof,
        boolean dry,
        boolean holdsDrinkingWater,
        boolean coolsRooms,
        boolean charges,
        Set<DeviceFacts.Warms> warms) {

    /** Whatever no other word fits. */
    private static final String OTHER = "other";

    /** One of which nothing is known but its word. */
    public static Device bare(String word) {
        return new Device(
                word,
                word.replace('-', ' '),
                Set.of(),
                Set.of(),
                Optional.empty(),
                false,
                false,
                false,
                false,
                false,
                false,
                Set.of());
    }

    /** All that the files declare, by their words. */
    static Map<String, Device> of(List<Equipment> kinds) {
        Map<String, List<Equipment>> byWord = kinds.stream()
                .filter(kind -> kind.facts().has(Equipment.APPLIANCE))
                .collect(Collectors.groupingBy(Device::word, LinkedHashMap::new, Collectors.toList()));
        Map<String, Device> devices = new LinkedHashMap<>();
        byWord.forEach((word, those) -> devices.put(word, of(word, those)));
        devices.put(OTHER, bare(OTHER));
        return devices;
    }

    private static String word(Equipment kind) {
        return kind.facts()
                .get(Equipment.APPLIANCE)
                .facts()
                .find(DeviceFacts.WHAT)
                .orElseGet(kind::id);
    }

    private static Device of(String word, List<Equipment> kinds) {
        List<DeviceFacts> said = kinds.stream()
                .map(kind -> kind.facts().get(Equipment.APPLIANCE))
                .toList();
        Set<Appliance.Energy> energy = EnumSet.noneOf(Appliance.Energy.class);
        said.forEach(it -> energy.addAll(it.facts().all(DeviceFacts.ENERGY)));
        Set<Appliance.Energy> always = EnumSet.allOf(Appliance.Energy.class);
        said.forEach(it -> always.retainAll(it.facts().all(DeviceFacts.ALWAYS)));
        Set<String> called = new LinkedHashSet<>();
        said.forEach(it -> called.addAll(it.facts().all(DeviceFacts.CALLED)));
        Set<DeviceFacts.Warms> warms = EnumSet.noneOf(DeviceFacts.Warms.class);
        said.forEach(it -> warms.addAll(it.facts().all(DeviceFacts.WARMS)));
        return new Device(
                word,
                kinds.size() == 1 ? kinds.get(0).name() : word.replace('-', ' '),
                Set.copyOf(energy),
                Set.copyOf(always),
                called.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Pattern.compile(
                                called.stream().map(Pattern::quote).collect(Collectors.joining("|")),
                                Pattern.CASE_INSENSITIVE)),
                said.stream()
                        .allMatch(it -> it.facts().find(DeviceFacts.IN_THE_ROOM).orElse(false)),
                said.stream()
                        .allMatch(it -> it.facts().find(DeviceFacts.ON_THE_ROOF).orElse(false)),
                said.stream().allMatch(it -> it.facts().find(DeviceFacts.DRY).orElse(false)),
                said.stream()
                        .anyMatch(it -> it.facts()
                                .find(DeviceFacts.HOLDS_DRINKING_WATER)
                                .orElse(false)),
                said.stream()
                        .anyMatch(it -> it.facts().find(DeviceFacts.COOLS_ROOMS).orElse(false)),
                kinds.stream()
                        .anyMatch(kind -> kind.facts().all(Equipment.GIVES).contains(Equipment.Gives.DC)),
                Set.copyOf(warms));
    }

    /** Whether it heats rooms, not only water. */
    public boolean heats() {
        return warms.contains(DeviceFacts.Warms.ROOMS);
    }

    public boolean warmsTanks() {
        return warms.contains(DeviceFacts.Warms.TANKS);
    }

    public boolean is(String other) {
        return word.equals(other);
    }

    /** Of which nobody says what it is. */
    public boolean unnamed() {
        return word.equals(OTHER);
    }

    @Override
    public String toString() {
        return word;
    }
}
