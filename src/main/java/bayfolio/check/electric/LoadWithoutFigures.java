package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Load;
import java.util.stream.Stream;

/** Flags a load of which neither watts nor amps are known. */
public final class LoadWithoutFigures implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().loads().stream()
                .filter(load -> !load.facts().has(Load.WATTS) && !load.facts().has(Load.AMPS))
                .map(load -> Finding.warning(
                                "load-without-figures",
                                load.at(),
                                "load `%s` has neither watts nor amps".formatted(load.id()))
                        .mend("Read its plate, or measure it, and state `source`."));
    }
}
