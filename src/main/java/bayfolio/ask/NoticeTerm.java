package bayfolio.ask;

import bayfolio.model.Notice;
import java.util.List;

/**
 * Where a notice stands: {@code notice:oven-out-of-use}; of a recall, where it is still to be done.
 *
 * @param scheme as it was asked
 */
record NoticeTerm(Scheme scheme, String id) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.coach().fleet().notices(coach.coach().unit()).stream()
                .filter(notice -> notice.id().equals(id))
                .map(notice -> Answer.of(
                        coach.id(),
                        scheme.word() + ":" + id,
                        notice.recall()
                                .map(recall -> recall.campaign())
                                .orElseGet(() -> notice.facts().get(Notice.TEXT)),
                        notice.facts().at(Notice.ID)))
                .toList();
    }
}
