package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** The closed list of roles, a file of its own. */
public record Roles(Facts facts) implements Described {
    private static final Shape.Draft<Roles> DRAFT = Shape.draft("roles", "The closed list of roles.");
    public static final Key<List<Located<Role>>> ROLES =
            DRAFT.required("roles", Type.list(Type.nested(Role.SHAPE)), "All roles there are.");
    public static final Shape<Roles> SHAPE = DRAFT.done(Roles::new);
}
