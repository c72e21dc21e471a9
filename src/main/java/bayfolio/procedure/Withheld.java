package bayfolio.procedure;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.finding.Article;
import bayfolio.source.Place;
import bayfolio.template.Value;

/**
 * What names for renters do not give: facts, things and scripts for staff. Said in the same words whether a coach was
 * asked or the declarations alone, so that it is one finding.
 */
final class Withheld {
    private static final String FOR_STAFF = " is for staff, and this text is for renters";

    private Withheld() {}

    static Value.Withheld key(Shape<?> shape, Key<?> key) {
        return new Value.Withheld(
                "`" + key.name() + "` of " + Article.a(shape.name()) + FOR_STAFF,
                "Take the name out; renters never read that fact.");
    }

    /** A record that is for staff as it stands: what a country is said to want, and nobody has read. */
    static Value.Withheld record(Shape<?> shape, Key<?> key, Place at) {
        return new Value.Withheld(
                "`" + key.name() + "` of " + Article.a(shape.name()) + ", as it stands at " + at + "," + FOR_STAFF,
                "Read it where it is published and name that, or take it out there.");
    }

    /** @param name its id, or a role by which it was asked for */
    static Value.Withheld thing(String kind, String name) {
        return new Value.Withheld(
                kind + " `" + name + "`" + FOR_STAFF, "Take the name out; renters never see that " + kind + ".");
    }

    static Value.Withheld script(Form form, String id) {
        return new Value.Withheld(
                form.called() + " `" + id + "`" + FOR_STAFF, "Take the name out; renters never see that page.");
    }
}
