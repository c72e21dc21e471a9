package bayfolio.reckon;

import bayfolio.model.Unit;
import java.util.List;

/** Whether the power cord may be made longer: one answer wherever it is asked. */
public final class ExtensionCord {
    private ExtensionCord() {}

    /** {@code Use no extension cord.}, or the one on board that a renter may use. */
    public static String rule(Unit unit) {
        return rule(CordSet.extensions(unit));
    }

    static String rule(List<CordSet> extensions) {
        List<String> ours = extensions.stream().map(CordSet::name).toList();
        return ours.isEmpty()
                ? "Use no extension cord."
                : "Use no extension cord but ours, never with an adapter: " + String.join(" or ", ours) + ".";
    }
}
