package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.fact.FactVisitor;
import bayfolio.model.Appliance;
import bayfolio.model.Engine;
import bayfolio.model.Feature;
import bayfolio.model.Features;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/** A handbook speaks of its own coach: nothing that may or may not be there, nothing that is not there. */
final class OnlyThisCoachTest {
    /** How texts for many coaches hedge. */
    private static final Pattern HEDGES = Pattern.compile(
            "\\bif (?:so )?(?:equipped|fitted)\\b|\\b(?:where|when) (?:equipped|fitted)\\b|\\bmay be fitted\\b"
                    + "|\\bif (?:your|the|this) coach has\\b|\\bif you have (?:a|an) (?:generator|inverter|slide|jack)"
                    + "|\\bsome coaches\\b|\\bon some (?:models|coaches)\\b|\\bdepending on (?:the )?(?:model|equipment)\\b"
                    + "|\\boptional(?:ly)? (?:equipment|extra)\\b|\\bif present\\b|\\bif there is one\\b|\\bas fitted\\b",
            Pattern.CASE_INSENSITIVE);

    /** That something is not there, a coach may say: `There is no slide-out`, `Air brakes no`. */
    private static final Pattern DENIED_BEFORE = Pattern.compile("\\b[Nn]o\\s+$");

    /**
     * What a coach may have or do and another not, as a text would speak of it.
     *
     * @param there whether a coach has it
     */
    private record Part(Pattern spoken, Predicate<Unit> there) {
        static Part of(String spoken, Predicate<Unit> there) {
            return new Part(Pattern.compile("\\b(?:" + spoken + ")\\b", Pattern.CASE_INSENSITIVE), there);
        }

        static Part of(String spoken, Feature... features) {
            return of(spoken, unit -> Features.of(unit).had().stream().anyMatch(List.of(features)::contains));
        }

        /** A part, or a sign that it gives, that has no key of its own: the description must use the word itself. */
        static Part described(String spoken) {
            Pattern word = Pattern.compile("\\b(?:" + spoken + ")", Pattern.CASE_INSENSITIVE);
            return of(
                    "(?:" + spoken + ")\\w*",
                    unit -> word.matcher(described(unit)).find());
        }

        /** The lines that its facts stand in, be it in its own file or in that of its model. */
        private static String described(Unit unit) {
            Set<String> lines = new LinkedHashSet<>();
            FactVisitor.of(unit.facts(), (type, value) -> {
                for (int line = value.at().line(); line <= value.at().endLine(); line++) {
                    lines.add(value.at().file().line(line).replace('-', ' '));
                }
            });
            return String.join("\n", lines);
        }
    }

    private static final List<Part> PARTS = List.of(
            Part.of("(?<!microwave )ovens?", Feature.OVEN_GAS),
            Part.of("cooktop|hob", Feature.HOB_GAS, Feature.HOB_INDUCTION),
            Part.of(
                    "glass lid",
                    unit -> unit.appliances().stream()
                            .anyMatch(it -> it.facts().find(Appliance.LID).orElse(false))),
            Part.of("automatic start", Feature.GENERATOR_AUTOSTART),
            Part.of("(?:shows?|showing) AC|AC is in", unit -> unit.facts().has(Unit.AC_SHOWN)),
            Part.of("number [A-Z]+ ?\\d+, on the", unit -> unit.facts().has(Unit.NUMBER_SHOWN)),
            Part.of("two air conditioners|one unit at a time", Feature.SEVERAL_AIR_CONDITIONERS),
            Part.of(
                    "preheat lamp|this lamp goes out",
                    unit -> unit.facts()
                            .find(Unit.ENGINE)
                            .filter(it -> it.facts().has(Engine.PREHEAT_LAMP))
                            .isPresent()),
            Part.described("grab handle"),
            Part.described("click"),
            Part.described("blink"),
            Part.described("beep"),
            Part.described("buzzer"),
            Part.described("deadbolt"),
            Part.described("air button"),
            Part.described("pilot"),
            Part.described("closet"),
            Part.described("curtain"),
            Part.described("kettle"),
            Part.described("ladder"),
            Part.described("flue"),
            Part.of(
                    "the blinds|front blinds|blinds on",
                    unit -> Part.described(unit).contains("blind")));

    private static final Pattern DENIED_AFTER = Pattern.compile("^ no\\b");

    private final FleetReader.Reading reading = FleetReader.read(new Folder(Path.of("")));
    private final Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());

    @Test
    void nothingIsHedged() {
        List<String> hedged = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            texts(unit).forEach((path, text) -> find(HEDGES, text).ifPresent(it -> hedged.add(path + ": " + it)));
        }

        assertThat(hedged).isEmpty();
    }

    @Test
    void nothingThatTheCoachLacksIsSpokenOf() throws IOException {
        List<String> spoken = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            Set<Feature> lacking = EnumSet.allOf(Feature.class);
            lacking.removeAll(Features.of(unit).had());
            Map<String, String> texts = texts(unit);
            for (Feature feature : lacking) {
                word(feature, unit)
                        .map(word -> Pattern.compile("\\b(?:" + word + ")\\b", Pattern.CASE_INSENSITIVE))
                        .ifPresent(pattern -> texts.forEach((path, text) -> find(pattern, text)
                                .ifPresent(it -> spoken.add(path + " lacks " + feature.word() + ": " + it))));
            }
        }

        assertThat(spoken).isEmpty();
    }

    @Test
    void noPartAndNoSignIsSpokenOfThatTheCoachHasNot() {
        List<String> spoken = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            Map<String, String> texts = texts(unit);
            PARTS.stream()
                    .filter(part -> !part.there().test(unit))
                    .forEach(part -> texts.forEach(
                            (path, text) -> find(part.spoken(), text).ifPresent(it -> spoken.add(path + ": " + it))));
        }

        assertThat(spoken).isEmpty();
    }

    /** The pages of a coach, without its glossary, which explains words that renters hear elsewhere, too. */
    private Map<String, String> texts(Unit unit) {
        Map<String, String> texts = new java.util.TreeMap<>();
        files.forEach((path, bytes) -> {
            if (path.startsWith(unit.id() + "/")
                    && path.endsWith(".html")
                    && !path.endsWith("/words.html")
                    && !path.contains("/letter/")) {
                texts.put(
                        path,
                        Jsoup.parse(new String(bytes, StandardCharsets.UTF_8))
                                .select("main")
                                .text());
            }
        });
        assertThat(texts).hasSizeGreaterThan(30);
        return texts;
    }

    private static Optional<String> find(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            boolean denied = DENIED_BEFORE
                            .matcher(text.substring(0, matcher.start()))
                            .find()
                    || DENIED_AFTER.matcher(text.substring(matcher.end())).find();
            if (!denied) {
                return Optional.of("…"
                        + text.substring(
                                Math.max(0, matcher.start() - 50), Math.min(text.length(), matcher.end() + 30)));
            }
        }
        return Optional.empty();
    }

    /** How texts call it, as a pattern; nothing where it has no word of its own. */
    private static Optional<String> word(Feature feature, Unit unit) {
        return Optional.ofNullable(
                switch (feature) {
                    case SHORE_50A -> "50 A pedestal";
                    case GENERATOR -> "your generator|the generator|generators?";
                    case INVERTER -> "inverter";
                    case SOLAR -> "solar";
                    case HOUSE_LITHIUM -> "lithium";
                    case BATTERY_BOOST -> "boost";
                    case LP_TANK -> "LP tank";
                    case GAS_CYLINDERS -> "gas cylinders?";
                    case CITY_WATER -> "city water";
                    case OUTSIDE_SHOWER -> "outside shower";
                    case FURNACE -> "furnace";
                    case HYDRONIC -> "hydronic";
                    case FROST_PROTECTION_VALVE -> "frost valve|freeze protection valve";
                    case ROOF_AC -> "air conditioner|air conditioning";
                    case HEAT_PUMP -> "heat pump";
                    case TANK_HEATERS -> "tank heaters?";
                    case BLACK_TANK -> "black (?:water )?(?:tank|valve)";
                    case CASSETTE_TOILET -> "cassette";
                    case MACERATOR -> "macerator";
                    case TANK_FLUSH -> "tank flush";
                    case FRIDGE_RESIDENTIAL -> "residential fridge";
                    case FRIDGE_COMPRESSOR -> "compressor fridge";
                    case HOB_INDUCTION -> "induction";
                    case MICROWAVE -> "microwave";
                    case SLIDE_OUT -> "slide-outs?";
                    case SLIDE_LOCKS -> "slide-out locks?";
                    case JACKS -> "leveling jacks?|jack control|jack pads?|on jacks|the jacks|or jacks";
                    case LEVELING_RAMPS -> "leveling ramps?";
                    case AWNING_ELECTRIC, AWNING_MANUAL ->
                        unit.facts().all(Unit.AWNINGS).isEmpty() ? "awning" : null;
                    case KEYLESS_ENTRY -> "keypad";
                    case ANTENNA_RAISED -> "antenna";
                    case DROP_DOWN_BED -> "drop-down bed";
                    case SLIDING_TRAYS -> "sliding tray";
                    case DIESEL -> "diesel engine";
                    case DEF -> "exhaust fluid|DEF";
                    case AIR_BRAKES -> "air brakes?";
                    case EXHAUST_BRAKE -> "exhaust brake";
                    case REAR_CAMERA -> "rear camera|backup camera";
                    case SPARE_WHEEL -> null; // a coach without says so
                    case HITCH -> "tow hitch";
                    case SURGE_PROTECTION -> "surge protect(?:or|ion)";
                    case LOAD_MANAGEMENT -> "load (?:management|shedding)";
                    case CORD_REEL_HAND, CORD_REEL_POWERED -> reel(unit) ? null : "cord reel";
                    default -> null; // of no word of its own, or only of one that others share
                });
    }

    private static boolean reel(Unit unit) {
        Set<Feature> has = Features.of(unit).had();
        return has.contains(Feature.CORD_REEL_HAND) || has.contains(Feature.CORD_REEL_POWERED);
    }
}
