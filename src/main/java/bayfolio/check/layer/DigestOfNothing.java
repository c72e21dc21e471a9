package bayfolio.check.layer;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import java.util.stream.Stream;

/** Flags a digest beside which nothing is said otherwise than in the model. */
public final class DigestOfNothing implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.difference().stream()
                .flatMap(difference -> difference.idle().stream())
                .map(said -> Finding.warning(
                                "digest-of-nothing",
                                said.digest().at(),
                                "`" + said.way() + "` says nothing that the model says otherwise")
                        .mend("Take the digest out, or run `bayfolio confirm "
                                + coach.unit().id() + "`."));
    }
}
