package bayfolio.check.notice;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/** Flags a notice whose last day is over: it is not published any more, and either it is still true or it is to be taken out. */
public final class NoticeRunOut implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Written.all(fleet)
                .flatMap(written -> written.fact(Notice.UNTIL).stream()
                        .filter(until ->
                                fleet.asOf().filter(until.value()::isBefore).isPresent())
                        // A slip, which is told as such.
                        .filter(until -> written.fact(Notice.SINCE)
                                .filter(since -> until.value().isBefore(since.value()))
                                .isEmpty())
                        .flatMap(until -> written.told(Finding.warning(
                                        "notice-run-out",
                                        until.at(),
                                        "%s held until %s and is not published any more, as of %s"
                                                .formatted(
                                                        written.named(),
                                                        until.value(),
                                                        fleet.asOf().orElseThrow()))
                                .mend("Take it out, or say until when it holds now."))));
    }
}
