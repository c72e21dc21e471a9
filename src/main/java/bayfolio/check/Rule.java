package bayfolio.check;

import bayfolio.finding.Finding;
import java.util.stream.Stream;

/**
 * Looks for one fault of a coach. Stateless; a class is named after what it flags, and its name in
 * kebab-case is the code of its findings and the name of its page.
 */
public interface Rule {
    Stream<Finding> check(CheckedCoach coach);
}
