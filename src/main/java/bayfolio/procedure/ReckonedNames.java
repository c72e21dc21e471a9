package bayfolio.procedure;

import bayfolio.explain.ExtensionCordRule;
import bayfolio.measure.Liters;
import bayfolio.model.Tank;
import bayfolio.model.Wording;
import bayfolio.reckon.clearance.Clearances;
import bayfolio.reckon.water.Bleach;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is worked out from the facts of the coach: {@code reckoned.bleach-for-50ppm}, {@code reckoned.lowest-sign}. */
record ReckonedNames(Wording wording) implements Names {
    private static final String LOWEST_SIGN = "lowest-sign";
    private static final String EXTENSION_CORD = "extension-cord";
    private static final Map<String, Double> DOSES = doses();

    private static Map<String, Double> doses() {
        Map<String, Double> doses = new LinkedHashMap<>();
        doses.put("bleach-for-50ppm", 50.0);
        doses.put("bleach-for-100ppm", 100.0);
        return doses;
    }

    static List<String> words() {
        return Stream.concat(DOSES.keySet().stream(), Stream.of(LOWEST_SIGN, EXTENSION_CORD))
                .toList();
    }

    @Override
    public Value find(String word) {
        if (word.equals(LOWEST_SIGN)) {
            return Clearances.lowestSign(wording.coach())
                    .<Value>map(sign -> new Value.Text(wording.words().amount(sign)))
                    .orElse(new Value.Absent(
                            "the height of this coach is not stated", "Guard the text with {{#unit.size.height}}."));
        }
        if (word.equals(EXTENSION_CORD)) {
            return new Value.Text(ExtensionCordRule.of(wording.coach().unit(), wording.words()));
        }
        Double dose = DOSES.get(word);
        if (dose == null) {
            return new Value.Unknown();
        }
        List<Tank> tanks = wording.coach().unit().tanks().stream()
                .filter(it -> it.contents() == Tank.Contents.FRESH)
                .toList();
        if (tanks.isEmpty()) {
            return new Value.Absent("this coach has no fresh-water tank", "Guard the text with {{#has.gravity-fill}}.");
        }
        return new Value.Text(tanks.stream()
                .map(it -> (tanks.size() > 1 ? it.name() + ": " : "")
                        + dose(dose, it.facts().get(Tank.CAPACITY)))
                .collect(Collectors.joining("; ")));
    }

    @Override
    public Collection<String> known() {
        return words();
    }

    /** {@code 0.9 cup (210 mL) of 5.25 % bleach, or 130 mL of 8.25 %}: the strength is on the bottle. */
    private String dose(double milligramsPerLiter, Liters tank) {
        return wording.words()
                .say(
                        "bleach",
                        "weak",
                        amount(Bleach.WEAK, milligramsPerLiter, tank),
                        "strong",
                        amount(Bleach.STRONG, milligramsPerLiter, tank));
    }

    private String amount(Bleach bleach, double milligramsPerLiter, Liters tank) {
        return wording.words()
                .say(
                        "bleach.one",
                        "amount",
                        bleach.toReach(milligramsPerLiter, tank)
                                .both(wording.coach().unit().region().first()),
                        "strength",
                        wording.words().digits(String.valueOf(bleach.percent())));
    }
}
