package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** What holds of an appliance of a kind on any coach; see {@link Device}. */
public record DeviceFacts(Facts facts) implements Described {
    /** What a heater is there for. */
    public enum Warms {
        ROOMS,
        TANKS
    }

    private static final Shape.Draft<DeviceFacts> DRAFT =
            Shape.draft("device", "What holds of such an appliance on any coach.");
    public static final Key<String> WHAT = DRAFT.optional(
            "what", Type.ID, "The word that descriptions write as `what`; the kind's own id where left out.");
    public static final Key<List<Located<Appliance.Energy>>> ENERGY = DRAFT.optional(
            "energy", Type.list(Type.choice(Appliance.Energy.class)), "All that such a device may run on.");
    public static final Key<List<Located<Appliance.Energy>>> ALWAYS =
            DRAFT.optional("always", Type.list(Type.choice(Appliance.Energy.class)), "What every such device runs on.");
    public static final Key<List<Located<String>>> CALLED =
            DRAFT.optional("called", Type.list(Type.TEXT), "Parts of words, one of which its name or its note holds.");
    public static final Key<Boolean> IN_THE_ROOM =
            DRAFT.optional("in-the-room", Type.YES_NO, "Whether it stands in the room on any coach.");
    public static final Key<Boolean> ON_THE_ROOF =
            DRAFT.optional("on-the-roof", Type.YES_NO, "Whether it is on the roof of any coach.");
    public static final Key<List<Located<Warms>>> WARMS =
            DRAFT.optional("warms", Type.list(Type.choice(Warms.class)), "What it warms besides itself.");
    public static final Key<Boolean> COOLS_ROOMS =
            DRAFT.optional("cools-rooms", Type.YES_NO, "Whether it cools rooms, and not only food.");
    public static final Key<Boolean> HOLDS_DRINKING_WATER = DRAFT.optional(
            "holds-drinking-water", Type.YES_NO, "Whether what it holds is hot drinking water, to be drawn off.");
    public static final Key<Boolean> DRY = DRAFT.optional("dry", Type.YES_NO, "Whether no water runs through it.");
    public static final Shape<DeviceFacts> SHAPE = DRAFT.done(DeviceFacts::new);
}
