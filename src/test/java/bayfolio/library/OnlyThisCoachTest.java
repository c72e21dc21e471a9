package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.FactVisitor;
import bayfolio.model.Appliance;
import bayfolio.model.Engine;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
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

        static Part of(String spoken, String... features) {
            return of(spoken, unit -> unit.features().had().stream().anyMatch(List.of(features)::contains));
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
            Part.of("(?<!microwave )ovens?", "oven-gas"),
            Part.of("cooktop|hob", "hob-gas", "hob-induction"),
            Part.of(
                    "glass lid",
                    unit -> unit.appliances().stream()
                            .anyMatch(it -> it.facts().find(Appliance.LID).orElse(false))),
            Part.of("automatic start", "generator-autostart"),
            Part.of("(?:shows?|showing) AC|AC is in", unit -> unit.facts().has(Unit.AC_SHOWN)),
            Part.of("number [A-Z]+ ?\\d+, on the", unit -> unit.facts().has(Unit.NUMBER_SHOWN)),
            Part.of("two air conditioners|one unit at a time", "several-air-conditioners"),
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

    private final FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
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
            Set<String> lacking =
                    new LinkedHashSet<>(reading.fleet().equipment().features());
            lacking.removeAll(unit.features().had());
            Map<String, String> texts = texts(unit);
            for (String feature : lacking) {
                word(feature, unit)
                        .map(word -> Pattern.compile("\\b(?:" + word + ")\\b", Pattern.CASE_INSENSITIVE))
                        .ifPresent(pattern -> texts.forEach((path, text) -> find(pattern, text)
                                .ifPresent(it -> spoken.add(path + " lacks " + feature + ": " + it))));
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
    private static Optional<String> word(String feature, Unit unit) {
        return Optional.ofNullable(
                switch (feature) {
                    case "shore-50a" -> "50 A pedestal";
                    case "generator" -> "your generator|the generator|generators?";
                    case "inverter" -> "inverter";
                    case "solar" -> "solar";
                    case "house-lithium" -> "lithium";
                    case "battery-boost" -> "boost";
                    case "lp-tank" -> "LP tank";
                    case "gas-cylinders" -> "gas cylinders?";
                    case "city-water" -> "city water";
                    case "outside-shower" -> "outside shower";
                    case "furnace" -> "furnace";
                    case "hydronic" -> "hydronic";
                    case "frost-protection-valve" -> "frost valve|freeze protection valve";
                    case "roof-ac" -> "air conditioner|air conditioning";
                    case "heat-pump" -> "heat pump";
                    case "tank-heaters" -> "tank heaters?";
                    case "black-tank" -> "black (?:water )?(?:tank|valve)";
                    case "cassette-toilet" -> "cassette";
                    case "macerator" -> "macerator";
                    case "tank-flush" -> "tank flush";
                    case "fridge-residential" -> "residential fridge";
                    case "fridge-compressor" -> "compressor fridge";
                    case "hob-induction" -> "induction";
                    case "microwave" -> "microwave";
                    case "slide-out" -> "slide-outs?";
                    case "slide-locks" -> "slide-out locks?";
                    case "jacks" -> "leveling jacks?|jack control|jack pads?|on jacks|the jacks|or jacks";
                    case "leveling-ramps" -> "leveling ramps?";
                    case "awning-electric", "awning-manual" ->
                        unit.facts().all(Unit.AWNINGS).isEmpty() ? "awning" : null;
                    case "keyless-entry" -> "keypad";
                    case "antenna-raised" -> "antenna";
                    case "drop-down-bed" -> "drop-down bed";
                    case "sliding-trays" -> "sliding tray";
                    case "diesel" -> "diesel engine";
                    case "def" -> "exhaust fluid|DEF";
                    case "air-brakes" -> "air brakes?";
                    case "exhaust-brake" -> "exhaust brake";
                    case "rear-camera" -> "rear camera|backup camera";
                    case "spare-wheel" -> null; // a coach without says so
                    case "hitch" -> "tow hitch";
                    case "surge-protection" -> "surge protect(?:or|ion)";
                    case "load-management" -> "load (?:management|shedding)";
                    case "cord-reel-hand", "cord-reel-powered" -> reel(unit) ? null : "cord reel";
                    default -> null; // of no word of its own, or only of one that others share
                });
    }

    private static boolean reel(Unit unit) {
        Set<String> has = unit.features().had();
        return has.contains("cord-reel-hand") || has.contains("cord-reel-powered");
    }
}
