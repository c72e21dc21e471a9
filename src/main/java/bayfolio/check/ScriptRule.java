package bayfolio.check;

import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import java.util.stream.Stream;

/** Looks for one fault in a script as it is written, whatever the fleet and the coach. */
public interface ScriptRule {
    Stream<Finding> check(Script script);
}
