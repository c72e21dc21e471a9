package bayfolio.check.reference;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Fleet;
import bayfolio.model.PublishedSource;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import java.util.List;
import java.util.stream.Stream;

/** Flags a source in the head of a procedure that is not on the list of sources. */
public final class UnknownSource implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<String> ids = fleet.sources().stream().map(PublishedSource::id).toList();
        return library.scripts().stream()
                .flatMap(script -> script.head().facts().ifRead(Head.SOURCES).stream())
                .flatMap(named -> named.value().stream())
                .filter(named -> !ids.contains(named.value()))
                .map(named -> Finding.error("unknown-source", named.at(), "there is no source `" + named.value() + "`")
                        .near(NearNames.to(named.value(), ids))
                        .mend("Sources are listed in `units/shared/sources.yaml`."));
    }
}
