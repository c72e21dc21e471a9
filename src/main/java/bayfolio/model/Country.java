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
    public static final Key<FoodLimit> FOOD =
            DRAFT.optional("food", Type.nested(FoodLimit.SHAPE), "How cold food is kept.");
    public static final Key<PublicRule> TORNADO = DRAFT.optional(
            "tornado",
            Type.nested(PublicRule.SHAPE),
            "What its weather service says to do in a tornado when no building is near.");
    public static final Key<PublicRule> GAS_TANK = DRAFT.optional(
            "gas-tank", Type.nested(PublicRule.SHAPE), "Who may fill a gas tank that is fixed in place.");
    public static final Key<PublicRule> GAS_BOTTLES =
            DRAFT.optional("gas-bottles", Type.nested(PublicRule.SHAPE), "Who may fill gas cylinders, and where not.");
    public static final Key<LocalDate> CHECKED_ON =
            DRAFT.forStaff("checked-on", Type.DAY, "When all of this was last compared with its sources.");
    public static final Shape<Country> SHAPE = DRAFT.done(Country::new);

    private static final String ENDING = ".yaml";

    /** By the name of its file, so that no two have the same. */
    public String id() {
        String path = facts.at().file().path();
        return path.substring(path.lastIndexOf('/') + 1).replace(ENDING, "");
    }

    public List<EmergencyNumber> emergency() {
        return facts.all(EMERGENCY).stream()
                .filter(number -> number.facts().whole())
                .toList();
    }
}
