package bayfolio.procedure;

import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;

/** Whether there is something of that id or role: {@code any.switch.water-pump-switch}, said once. */
record AnyNames(KindNames things) implements Names {
    @Override
    public Value find(String idOrRole) {
        Value found = things.find(idOrRole);
        return found instanceof Value.Unknown || found instanceof Value.Withheld
                ? found
                : new Value.Flag(found instanceof Value.Many);
    }

    @Override
    public Collection<String> known() {
        return things.known();
    }
}
