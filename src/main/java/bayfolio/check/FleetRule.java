package bayfolio.check;

import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/** Looks for one fault of the fleet as a whole. */
public interface FleetRule {
    Stream<Finding> check(Fleet fleet, Library library);
}
