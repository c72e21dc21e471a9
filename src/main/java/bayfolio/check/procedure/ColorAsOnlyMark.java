package bayfolio.check.procedure;

import bayfolio.check.FleetRule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Gauge;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.procedure.SourceBlock;
import bayfolio.source.Located;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a step or the look of a switch that tells a state by its color and by nothing else: no
 * position, mark, letter or sound. Two looks that differ in a color only are flagged, too.
 */
public final class ColorAsOnlyMark implements FleetRule {
    private static final List<String> COLORS =
            List.of("red", "green", "yellow", "orange", "amber", "blue", "white", "purple");

    private static final String COLOR = "\\b(" + String.join("|", COLORS) + ")\\b";

    private static final Pattern ANY_COLOR = Pattern.compile(COLOR, Pattern.CASE_INSENSITIVE);

    /** In steps many things have a color; only what shines or is marked tells a state by it. */
    private static final Pattern STATE = Pattern.compile(
            COLOR + "\\s+(?:lamp|light|LED|dot|mark|field|zone|ring|band|indicator)\\b"
                    + "|\\b(?:is|are|turns?|glows?|goes|shows?)\\s+" + COLOR,
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OTHER_MARK = Pattern.compile(
            "(?i:\\b(?:up|down|left|right|top|bottom|upper|lower|middle|high|low|in|out|inside|outside|flush|flat|across"
                    + "|along|crosswise|beside|above|below|toward|away|points?|faces?|meets?|needle|pointer|tongue"
                    + "|words?|letters?|figures?|numbers?|says?|reads?|label|symbol|arrow|dots?|lines?|stripe|slot|bars?"
                    + "|blinks?|blinking|flash(?:es)?|flashing|steady|steadily|lit|unlit|dark|off|on|lights up|goes out"
                    + "|hums?|clicks?|beeps?|buzz(?:es|er)?|sounds?|silent|flame|turns freely)\\b)|\\b[A-Z]{2,}\\b|\\d|`");

    private static final List<Key<String>> LOOKS = List.of(Switch.ON_LOOK, Switch.OFF_LOOK, Switch.LAMP);

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Stream<Finding> steps = library.scripts().stream()
                .flatMap(script -> script.passages().stream())
                .filter(passage -> passage.part() == SourceBlock.Part.STEP)
                .flatMap(passage -> check(passage).stream());
        Stream<Switch> switches =
                Stream.concat(fleet.units().stream().flatMap(unit -> unit.switches().stream()), siteSwitches(fleet));
        Stream<Gauge> gauges = fleet.units().stream().flatMap(unit -> unit.facts().all(Unit.GAUGES).stream());
        return Stream.of(
                        steps,
                        switches.flatMap(it -> check(it)),
                        gauges.flatMap(gauge -> look(gauge.facts(), Gauge.NORMAL, "gauge").stream()))
                .flatMap(findings -> findings);
    }

    private static Stream<Switch> siteSwitches(Fleet fleet) {
        return fleet.siteThings().filter(Switch.class::isInstance).map(Switch.class::cast);
    }

    private static Optional<Finding> check(SourceBlock step) {
        String own = step.own();
        if (!mayHoldOne(own)) {
            return Optional.empty();
        }
        Matcher state = STATE.matcher(own);
        if (!state.find() || marked(state.replaceAll(" "))) {
            return Optional.empty();
        }
        state.reset();
        state.find();
        return Optional.of(finding(Finding.warning(
                "color-as-only-mark",
                step.at(state.start(), state.end()),
                "this step tells a state by its color alone: `" + state.group() + "`")));
    }

    /** Most steps name no color, which is told sooner so than by the pattern. */
    private static boolean mayHoldOne(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        return COLORS.stream().anyMatch(small::contains);
    }

    private static Stream<Finding> check(Switch it) {
        List<Finding> alone = LOOKS.stream()
                .flatMap(look -> look(it.facts(), look, "switch").stream())
                .toList();
        return alone.isEmpty() ? twoLooks(it).stream() : alone.stream();
    }

    private static Optional<Finding> look(Facts facts, Key<String> key, String kind) {
        return facts.located(key)
                .filter(look -> ANY_COLOR.matcher(look.value()).find())
                .filter(look -> !marked(ANY_COLOR.matcher(look.value()).replaceAll(" ")))
                .map(look -> finding(Finding.warning(
                        "color-as-only-mark",
                        look.at(),
                        "`" + key.name() + "` of this " + kind + " is a color alone: `" + look.value() + "`")));
    }

    private static Optional<Finding> twoLooks(Switch it) {
        Optional<Located<String>> on = it.facts().located(Switch.ON_LOOK);
        Optional<Located<String>> off = it.facts().located(Switch.OFF_LOOK);
        return off.filter(look -> on.isPresent() && colorless(look).equals(colorless(on.get())))
                .filter(look -> !look.value().equals(on.get().value()))
                .map(look -> finding(Finding.warning(
                        "color-as-only-mark",
                        look.at(),
                        "switch `" + it.id() + "` looks ON and OFF the same but for the color: `"
                                + on.get().value() + "` and `" + look.value() + "`")));
    }

    private static String colorless(Located<String> look) {
        return ANY_COLOR.matcher(look.value()).replaceAll("colored");
    }

    private static boolean marked(String rest) {
        return OTHER_MARK.matcher(rest).find();
    }

    private static Finding finding(Finding finding) {
        return finding.mend("Say where it stands, what is written there, or what is heard, besides the color.");
    }
}
