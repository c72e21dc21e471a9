package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.LeastUnit;
import bayfolio.fact.Type;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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
    private static final Map<Feature, String> FACTS = new LinkedHashMap<>();

    static {
        FACTS.put(Feature.CORD_REEL_HAND, "cord: {kind: reel-hand}");
        FACTS.put(Feature.LOAD_MANAGEMENT, "load-management: yes");
        FACTS.put(Feature.GENERATOR_AUTOSTART, "generator: {autostart: yes}");
        FACTS.put(Feature.GENERATOR_ON_LP, "generator: {fuel: lp-gas}");
        FACTS.put(Feature.FILL_VALVE, role("switches", "water-fill-valve", "make: lever, access: free"));
        FACTS.put(Feature.WATER_FILTER_FITTED, appliance("water-filter"));
        FACTS.put(Feature.HYDRONIC, appliance("hydronic-heater"));
        FACTS.put(Feature.HEAT_PUMP, appliance("heat-pump"));
        FACTS.put(Feature.TANK_HEATERS, appliance("tank-heater"));
        FACTS.put(Feature.MACERATOR, appliance("macerator"));
        FACTS.put(Feature.FRIDGE_RESIDENTIAL, appliance("fridge-residential"));
        FACTS.put(Feature.FRIDGE_COMPRESSOR, appliance("fridge-compressor"));
        FACTS.put(Feature.HOB_INDUCTION, appliance("hob-induction"));
        FACTS.put(
                Feature.SLIDE_LOCKS,
                "slides: [{id: a, name: A, side: left, from-front: 1 m, width: 1 m, depth: 1 m, travel-locks: yes}]");
        FACTS.put(Feature.KEYLESS_ENTRY, role("switches", "entry-keypad", "make: keypad, access: free"));
        FACTS.put(Feature.ANTENNA_RAISED, role("switches", "antenna-control", "make: crank, access: free"));
        FACTS.put(Feature.AIR_BRAKES, "engine: {air-brakes: yes}");
        FACTS.put(Feature.EXHAUST_BRAKE, "engine: {exhaust-brake: yes}");
        FACTS.put(Feature.SECOND_FUEL_FILLER, """
                connections:
                  - {id: a, name: A, what: fuel fill, access: free, roles: [fuel-filler]}
                  - {id: b, name: B, what: fuel fill, access: free, roles: [fuel-filler]}
                """);
        FACTS.put(
                Feature.HITCH_BALL_AND_CABLE,
                role("connections", "tow-hitch", "what: a trailer, access: free, side: rear"));
        FACTS.put(
                Feature.HITCH_PIN_AND_CHAINS,
                role(
                        "connections",
                        "tow-hitch",
                        "what: a trailer, access: free, side: rear, coupling: pin-and-chains"));
        FACTS.put(Feature.FLUSH_VALVE_SHUT, "water: {flush-valve: shut}");
        FACTS.put(Feature.WATER_IN_FROST, "hire: {lowest-night: 31 °F}");
        FACTS.put(Feature.TOWING_ALLOWED, "hire: {towing: yes}");
    }

    @TempDir
    private Path folder;

    @Test
    void demoCoachesHaveWhatTheirDescriptionsSay() {
        for (Unit unit : FleetReader.read(new Folder(Path.of("."))).fleet().units()) {
            assertThat(words(unit))
                    .as(unit.id())
                    .isEqualTo(new TreeSet<>(
                            List.of(DEMO.getOrDefault(unit.id(), "").strip().split("\\s+"))));
        }
    }

    @Test
    void everyFeatureIsHeldByACoachHereAndNotByAnother() {
        TreeSet<String> held = new TreeSet<>();
        DEMO.values().forEach(words -> held.addAll(List.of(words.strip().split("\\s+"))));
        FACTS.keySet().forEach(feature -> held.add(feature.word()));

        assertThat(held).isEqualTo(new TreeSet<>(Feature.words()));
    }

    @ParameterizedTest
    @EnumSource
    void aCoachOfWhichNothingIsSaidHasNoFeature(Feature feature) throws Exception {
        assertThat(feature.of(unit(""))).isFalse();
    }

    @Test
    void oneFactGivesTheFeature() throws Exception {
        for (Map.Entry<Feature, String> fact : FACTS.entrySet()) {
            assertThat(fact.getKey().of(unit(fact.getValue())))
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

    @Test
    void wordsAreThoseOfTheTypeAndFindTheFeature() {
        for (Feature feature : Feature.values()) {
            assertThat(feature.word()).isEqualTo(Type.word(feature)).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(Feature.named(feature.word())).contains(feature);
        }
        assertThat(Feature.words()).doesNotHaveDuplicates().hasSize(Feature.values().length);
        assertThat(Feature.named("SOLAR")).isEmpty();
    }

    private static TreeSet<String> words(Unit unit) {
        return new TreeSet<>(Arrays.stream(Feature.values())
                .filter(it -> it.of(unit))
                .map(Feature::word)
                .toList());
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
