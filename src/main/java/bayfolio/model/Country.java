package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;

/**
 * A country that coaches are driven in: what its law and its public bodies say, a file of its own. What was not found is
 * left out, and never taken from the country next to it.
 */
public record Country(Facts facts) implements Described {
    private static final Shape.Draft<Country> DRAFT = Shape.draft(
            "country",
            "A country that coaches are driven in. What is not known is left out, never taken from another.");
    public static final Key<String> NAME =
            DRAFT.required("name", Type.NAME, "Its name as it stands within a sentence: `the United States`.");
    public static final Key<List<Located<EmergencyNumber>>> EMERGENCY = DRAFT.required(
            "emergency",
            Type.list(Type.nested(EmergencyNumber.SHAPE)),
            "Whom to call when somebody is in danger, the best number first.");
    public static final Key<List<Located<PublicRule>>> TEXT_FOR_HELP = rules(
            "text-for-help", "How somebody who cannot hear or speak gets help, and what must be done before the trip.");
    public static final Key<List<Located<PublicRule>>> DRIVE_ON = rules("drive-on", "The side of the road.");
    public static final Key<List<Located<SpeedLimit>>> SPEEDS = DRAFT.optional(
            "speeds", Type.list(Type.nested(SpeedLimit.SHAPE)), "How fast a coach may go where no sign says less.");
    public static final Key<List<Located<PublicRule>>> LICENSE = rules("license", "Who may drive it.");
    public static final Key<List<Located<PublicRule>>> BELTS =
            rules("belts", "Who must sit belted, and where nobody may ride.");
    public static final Key<List<Located<PublicRule>>> CHILD_SEAT = rules("child-seat", "Which children need a seat.");
    public static final Key<List<Located<PublicRule>>> ROADSIDE =
            rules("roadside", "What is carried and done after a breakdown: vest, triangle, lamp.");
    public static final Key<SizeLimit> LARGEST =
            DRAFT.optional("largest", Type.nested(SizeLimit.SHAPE), "The largest coach that may be on its roads.");
    public static final Key<List<Located<PublicRule>>> SIGNS =
            rules("signs", "In which measures signs of height and length are.");
    public static final Key<List<Located<PublicRule>>> TOLLS = rules("tolls", "Tolls, stickers and zones.");
    public static final Key<List<Located<PublicRule>>> WINTER_TIRES =
            rules("winter-tires", "Which tires are wanted in winter, and when.");
    public static final Key<List<Located<PublicRule>>> OVERNIGHT =
            rules("overnight", "Whether people may sleep in it beside the road.");
    public static final Key<List<Located<PublicRule>>> GRAY_WATER =
            rules("gray-water", "Where waste water may go, and where not.");
    public static final Key<List<Located<PublicRule>>> POST =
            rules("post", "Power at a site: volts, amps, plug, and what guards it.");
    public static final Key<List<Located<PublicRule>>> POWER_CORD =
            rules("power-cord", "How long and how thick a cord may be.");
    public static final Key<FoodLimit> FOOD =
            DRAFT.optional("food", Type.nested(FoodLimit.SHAPE), "How cold food is kept.");
    public static final Key<List<Located<PublicRule>>> ALARMS =
            rules("alarms", "Which alarms a coach has: smoke, carbon monoxide, gas.");
    public static final Key<PublicRule> GAS_TANK = DRAFT.optional(
            "gas-tank", Type.nested(PublicRule.SHAPE), "Who may fill a gas tank that is fixed in place.");
    public static final Key<PublicRule> GAS_BOTTLES =
            DRAFT.optional("gas-bottles", Type.nested(PublicRule.SHAPE), "Who may fill gas cylinders, and where not.");
    public static final Key<List<Located<PublicRule>>> GAS_ON_ROAD =
            rules("gas-on-road", "Whether gas may be open while driving.");
    public static final Key<List<Located<PublicRule>>> GAS_CROSSINGS =
            rules("gas-crossings", "Gas in tunnels and on ferries.");
    public static final Key<PublicRule> TORNADO = DRAFT.optional(
            "tornado",
            Type.nested(PublicRule.SHAPE),
            "What its weather service says to do in a tornado when no building is near.");
    public static final Key<List<Located<PublicRule>>> WEATHER =
            rules("weather", "What its public bodies say of flood, fire and storm.");
    public static final Key<List<Located<PublicRule>>> OWN_WORDS = rules("own-words", "What things are called there.");
    public static final Key<LocalDate> CHECKED_ON =
            DRAFT.forStaff("checked-on", Type.DAY, "When all of this was last compared with its sources.");
    public static final Shape<Country> SHAPE = DRAFT.done(Country::new);

    private static final String ENDING = ".yaml";

    private static Key<List<Located<PublicRule>>> rules(String key, String about) {
        return DRAFT.optional(key, Type.list(Type.nested(PublicRule.SHAPE)), about);
    }

    /** By the name of its file, so that no two have the same. */
    public String id() {
        String path = facts.at().file().path();
        return path.substring(path.lastIndexOf('/') + 1).replace(ENDING, "");
    }

    public String name() {
        return facts.get(NAME);
    }

    /** Those that a renter is told. */
    public List<EmergencyNumber> emergency() {
        return facts.all(EMERGENCY).stream()
                .filter(number -> number.facts().whole() && !number.forStaff())
                .toList();
    }
}
