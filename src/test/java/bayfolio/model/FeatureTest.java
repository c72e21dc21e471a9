package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.LeastUnit;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class FeatureTest {
    /** Read out of the descriptions by a person, key by key. */
    private static final Map<String, String> DEMO = Map.of(
            "whimbrel",
            """
                    shore-50a cord-reel-powered transfer-automatic surge-protection small-supply-adapter
                    generator inverter house-lead-acid battery-boost battery-switch-relay
                    lp-tank city-water gravity-fill water-heater-gas water-heater-electric outside-shower
                    furnace heater-gas roof-ac several-air-conditioners black-tank gray-tank-hose tank-flush
                    fridge-two-way hob-gas oven-gas microwave
                    slide-out jacks awning-electric step-electric sliding-trays
                    gasoline rear-camera dual-rear-wheels hitch hitch-pin-and-chains after-hours-pickup burns-fuel
                    """,
            "dunlin",
            """
                    shore-30a cord-fixed transfer-manual small-supply-adapter
                    generator house-lead-acid battery-switch-manual
                    lp-tank city-water gravity-fill water-heater-gas outside-shower
                    furnace heater-gas roof-ac black-tank gray-tank-hose
                    fridge-two-way hob-gas oven-gas microwave
                    leveling-ramps awning-manual step-electric
                    gasoline rear-camera dual-rear-wheels spare-wheel after-hours-pickup burns-fuel
                    """,
            "turnstone",
            """
                    hookup-230v cord-detachable small-supply-adapter solar house-lithium battery-switch-manual
                    gas-cylinders gas-crash-sensor gravity-fill
                    blown-air-heater combined-heater heater-gas heater-electric frost-protection-valve cassette-toilet gray-drain-floor
                    fridge-three-way hob-gas leveling-ramps awning-manual step-electric drop-down-bed
                    diesel def rear-camera after-hours-pickup winter-hire water-in-frost burns-fuel
                    """,
            "phalarope",
            """
                    shore-50a cord-reel-powered transfer-automatic surge-protection small-supply-adapter
                    generator generator-autostart inverter solar house-lithium battery-boost
                    battery-switch-relay city-water fill-valve outside-shower water-filter-fitted
                    hydronic heater-diesel heater-electric roof-ac several-air-conditioners heat-pump tank-heaters black-tank
                    gray-tank-hose macerator tank-flush fridge-residential hob-induction microwave
                    slide-out slide-locks jacks awning-electric step-electric keyless-entry
                    antenna-raised sliding-trays diesel def air-brakes exhaust-brake second-fuel-filler
                    rear-camera dual-rear-wheels hitch hitch-pin-and-chains after-hours-pickup towing-allowed water-in-frost
                    burns-fuel
                    """,
            "redpoll",
            """
                    hookup-230v cord-detachable small-supply-adapter solar house-lead-acid
                    battery-switch-manual gas-cylinders gravity-fill outside-shower blown-air-heater combined-heater
                    heater-diesel frost-protection-valve cassette-toilet gray-drain-floor
                    fridge-compressor hob-gas leveling-ramps awning-manual drop-down-bed diesel def
                    rear-camera spare-wheel winter-hire water-in-frost burns-fuel
                    """,
            "avocet",
            """
                    shore-30a cord-fixed transfer-automatic small-supply-adapter
                    generator house-lithium battery-switch-manual
                    lp-tank city-water gravity-fill water-heater-gas water-heater-electric
                    furnace heater-gas roof-ac black-tank gray-tank-hose
                    fridge-two-way hob-gas oven-gas microwave
                    leveling-ramps awning-electric
                    gasoline rear-camera dual-rear-wheels after-hours-pickup burns-fuel
                    """,
            "curlew",
            """
                    shore-30a cord-detachable transfer-automatic small-supply-adapter
                    generator house-lead-acid battery-switch-manual
                    lp-tank city-water gravity-fill water-heater-gas water-heater-electric
                    furnace heater-gas roof-ac black-tank gray-tank-hose
                    fridge-two-way hob-gas oven-gas microwave
                    leveling-ramps awning-electric
                    gasoline rear-camera dual-rear-wheels after-hours-pickup burns-fuel
                    """,
            "godwit",
            """
                    shore-30a cord-fixed transfer-automatic small-supply-adapter
                    generator house-lead-acid battery-switch-manual
                    lp-tank city-water gravity-fill water-heater-gas water-heater-electric
                    furnace heater-gas roof-ac black-tank gray-tank-hose
                    fridge-two-way hob-gas microwave
                    leveling-ramps awning-electric
                    gasoline rear-camera dual-rear-wheels after-hours-pickup burns-fuel
                    """);

    /** One fact for each feature that no coach of the demo fleet has, as it would be written. */
    private static final Map<String, String> FACTS = new LinkedHashMap<>();

    static {
        FACTS.put("cord-reel-hand", "cord: {kind: reel-hand}");
        FACTS.put("load-management", "load-management: yes");
        FACTS.put("generator-autostart", "generator: {autostart: yes}");
        FACTS.put("generator-on-lp", "generator: {fuel: lp-gas}");
        FACTS.put("fill-valve", role("switches", "water-fill-valve", "make: lever, access: free"));
        FACTS.put("water-filter-fitted", appliance("water-filter"));
        FACTS.put("hydronic", appliance("hydronic-heater"));
        FACTS.put("heat-pump", appliance("heat-pump"));
        FACTS.put("tank-heaters", appliance("tank-heater"));
        FACTS.put("macerator", appliance("macerator"));
        FACTS.put("fridge-residential", appliance("fridge-residential"));
        FACTS.put("fridge-compressor", appliance("fridge-compressor"));
        FACTS.put("hob-induction", appliance("hob-induction"));
        FACTS.put(
                "slide-locks",
                "slides: [{id: a, name: A, side: left, from-front: 1 m, width: 1 m, depth: 1 m, travel-locks: yes}]");
        FACTS.put("keyless-entry", role("switches", "entry-keypad", "make: keypad, access: free"));
        FACTS.put("antenna-raised", role("switches", "antenna-control", "make: crank, access: free"));
        FACTS.put("air-brakes", "engine: {air-brakes: yes}");
        FACTS.put("exhaust-brake", "engine: {exhaust-brake: yes}");
        FACTS.put("second-fuel-filler", """
                connections:
                  - {id: a, name: A, what: fuel fill, access: free, roles: [fuel-filler]}
                  - {id: b, name: B, what: fuel fill, access: free, roles: [fuel-filler]}
                """);
        FACTS.put(
                "hitch-ball-and-cable", role("connections", "tow-hitch", "what: a trailer, access: free, side: rear"));
        FACTS.put(
                "hitch-pin-and-chains",
                role(
                        "connections",
                        "tow-hitch",
                        "what: a trailer, access: free, side: rear, coupling: pin-and-chains"));
        FACTS.put("flush-valve-shut", "water: {flush-valve: shut}");
        FACTS.put("water-in-frost", "hire: {lowest-night: 31 °F}");
        FACTS.put("towing-allowed", "hire: {towing: yes}");
    }

    /** All words whose facts are told here. */
    static final TreeSet<String> WORDS = new TreeSet<>(FACTS.keySet());

    static {
        DEMO.values().forEach(words -> WORDS.addAll(List.of(words.strip().split("\\s+"))));
    }

    @TempDir
    private Path folder;

    @Test
    void demoCoachesHaveWhatTheirDescriptionsSay() {
        for (Unit unit : FleetReader.read(Folders.at(Path.of("."))).fleet().units()) {
            assertThat(words(unit))
                    .as(unit.id())
                    .isEqualTo(new TreeSet<>(
                            List.of(DEMO.getOrDefault(unit.id(), "").strip().split("\\s+"))));
        }
    }

    @Test
    void everyWordHereIsGivenByAFile() {
        assertThat(new TreeSet<>(FleetReader.read(Folders.at(Path.of(".")))
                        .fleet()
                        .equipment()
                        .features()))
                .containsAll(WORDS);
    }

    @ParameterizedTest
    @FieldSource("WORDS")
    void aCoachOfWhichNothingIsSaidHasNoFeature(String feature) throws Exception {
        assertThat(unit("").has(feature)).isFalse();
    }

    @Test
    void oneFactGivesTheFeature() throws Exception {
        for (Map.Entry<String, String> fact : FACTS.entrySet()) {
            assertThat(unit(fact.getValue()).has(fact.getKey()))
                    .as(fact.getValue())
                    .isTrue();
        }
    }

    @Test
    void theOtherWayRoundItIsNotGiven() throws Exception {
        assertThat(words(unit("engine: {fuel: gasoline, air-brakes: no, exhaust-brake: no, rear-camera: no}")))
                .containsExactly("gasoline");
        assertThat(words(unit("hire: {towing: no, winter: no, after-hours-pickup: no}")))
                .isEmpty();
        assertThat(words(unit("generator: {autostart: no, fuel: diesel}"))).containsExactly("burns-fuel", "generator");
        assertThat(words(unit("hire: {lowest-night: 32 °F}"))).isEmpty();
        assertThat(words(unit("water: {flush-valve: open}"))).isEmpty();
        assertThat(words(unit("appliances: [{id: a, name: A, what: other, energy: [ac, dc, hand]}]")))
                .isEmpty();
        assertThat(words(unit("appliances: [{id: a, name: A, what: other, energy: [dc, diesel]}]")))
                .containsExactly("burns-fuel");
        assertThat(words(unit("connections: [{id: a, name: A, what: fuel fill, access: free, roles: [fuel-filler]}]")))
                .isEmpty();
    }

    /** Those of the words here that a coach has; files of equipment give more. */
    private static TreeSet<String> words(Unit unit) {
        TreeSet<String> words = new TreeSet<>(unit.features().had());
        words.retainAll(WORDS);
        return words;
    }

    private Unit unit(String facts) throws Exception {
        FleetReader.Reading reading = LeastUnit.read(folder, facts);
        assertThat(new ArrayList<>(reading.findings()))
                .as(facts)
                .filteredOn(finding ->
                        finding.code().startsWith("unknown") || finding.code().startsWith("wrong"))
                .isEmpty();
        return reading.fleet().units().get(0);
    }

    private static String appliance(String what) {
        return "appliances: [{id: a, name: A, what: " + what + "}]";
    }

    private static String role(String list, String role, String facts) {
        return list + ": [{id: a, name: A, roles: [" + role + "], " + facts + "}]";
    }
}
