package bayfolio.check.notice;

import bayfolio.check.FleetRule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Recall;
import bayfolio.model.Recalled;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.stream.Stream;

/** Flags a notice that ends before it begins, and a coach that was ticked off before the recall was told. */
public final class NoticeDaysOutOfOrder implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Written.all(fleet)
                .flatMap(written -> written.fact(Notice.SINCE).stream()
                        .flatMap(since -> Stream.concat(
                                        written.fact(Notice.UNTIL).stream().map(day -> new Dated(Notice.UNTIL, day)),
                                        ticked(written))
                                .filter(later -> later.day().value().isBefore(since.value()))
                                .flatMap(later -> written.told(Finding.error(
                                                "notice-days-out-of-order",
                                                later.day().at(),
                                                "`%s` of %s is %s, before `since`, %s"
                                                        .formatted(
                                                                later.key().name(),
                                                                written.named(),
                                                                later.day().value(),
                                                                since.value()))
                                        .mend("One of the two days is another one.")))));
    }

    private record Dated(Key<LocalDate> key, Located<LocalDate> day) {}

    private static Stream<Dated> ticked(Written written) {
        return written.fact(Notice.RECALL).stream()
                .flatMap(recall -> recall.value().facts().ifRead(Recall.COACHES).stream())
                .flatMap(coaches -> coaches.value().stream())
                .flatMap(coach -> coach.value().facts().ifRead(Recalled.DONE_ON).stream())
                .map(day -> new Dated(Recalled.DONE_ON, day));
    }
}
