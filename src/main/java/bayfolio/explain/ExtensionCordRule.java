package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.model.Unit;
import bayfolio.reckon.cord.CordSet;
import java.util.List;
import java.util.Optional;

/** Whether the power cord may be made longer: one answer wherever it is asked. */
public final class ExtensionCordRule {
    private ExtensionCordRule() {}

    /** {@code Use no extension cord.}, or the one on board that a renter may use. */
    public static String of(Unit unit, Catalog words) {
        return of(CordSet.extensions(unit), words);
    }

    static String of(List<CordSet> extensions, Catalog words) {
        List<String> ours =
                extensions.stream().map(CordSet::name).flatMap(Optional::stream).toList();
        return ours.isEmpty()
                ? words.say("common.no-extension-cord")
                : words.say("common.our-extension-cord", "names", words.or(ours));
    }
}
