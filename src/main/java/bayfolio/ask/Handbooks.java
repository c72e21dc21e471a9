package bayfolio.ask;

import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.Handbook;
import bayfolio.fact.UnreadException;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import org.jspecify.annotations.Nullable;

/** The handbooks of a fleet, each composed when it is asked for; the fleet is checked before the first. */
final class Handbooks {
    private final FleetReader.Reading reading;
    private final Catalogs catalogs;
    private @Nullable Check check;

    Handbooks(FleetReader.Reading reading, Catalogs catalogs) {
        this.reading = reading;
        this.catalogs = catalogs;
    }

    /** @throws UnreadException when something is wrong with the coach: no handbook is made of it then */
    Handbook of(Unit unit) {
        Check known = check;
        if (known == null) {
            known = Check.of(reading.fleet(), reading.library(), catalogs, reading.findings());
            check = known;
        }
        if (!known.findings().stopping(unit.id(), false).isEmpty()) {
            throw new UnreadException("it has no pages while the check finds errors in it");
        }
        return Composer.compose(known.of(unit));
    }
}
