package bayfolio.check;

import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import java.util.stream.Stream;

/** Looks for one fault in what writers typed, one text at a time. */
public interface TextRule {
    Stream<Finding> check(Text text);

    /** The rule for the texts of this fleet, where it depends on what the fleet says. */
    default TextRule of(Fleet fleet) {
        return this;
    }
}
