package bayfolio.check.reference;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Phone;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/** Flags a phone of the fleet with the id by which texts refer to the emergency numbers of the country. */
public final class ReservedPhone implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return fleet.phones().stream()
                .flatMap(phone -> phone.facts().located(Phone.ID).stream())
                .filter(id -> id.value().equals(Phone.EMERGENCY))
                .map(
                        id -> Finding.error("reserved-phone", id.at(), "`" + id.value() + "` is no phone of the fleet")
                                .mend(
                                        "Take it out; the emergency number is that of the country. Name your own by another id."));
    }
}
