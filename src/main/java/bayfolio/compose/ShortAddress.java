package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.model.Coach;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import java.net.URI;
import java.util.Locale;

/** An address that fits on a label, or that can be told over the phone. */
final class ShortAddress {
    private ShortAddress() {}

    /**
     * All in capitals, which makes the smallest code; scheme and host are the same in capitals, and what follows is named
     * in them.
     *
     * @param of by what it ends
     * @see <a href="https://www.rfc-editor.org/rfc/rfc3986#section-6.2.2.1">RFC 3986, 6.2.2.1</a>
     */
    static String of(Coach coach, String of) {
        URI base = URI.create(coach.fleet().facts().facts().get(FleetFacts.BASE_ADDRESS));
        return (base.getScheme() + "://" + base.getRawAuthority()).toUpperCase(Locale.ROOT)
                + coach.fleet().basePath()
                + below(coach.unit(), of);
    }

    /** Below the root of the renters' copy: {@code L/KNOT/L4}. */
    static String below(Unit unit, String of) {
        return Content.Label.SHORT + "/" + unit.id().toUpperCase(Locale.ROOT) + "/" + of.toUpperCase(Locale.ROOT);
    }
}
