package bayfolio.rename;

import bayfolio.check.Check;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.issue.Consequences;
import bayfolio.issue.Now;
import bayfolio.issue.WorkList;
import bayfolio.model.Unit;
import bayfolio.read.Folder;
import bayfolio.read.Replacement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists of what is to be done about coaches: work that is ticked stays done under the new name, and is not due again. */
final class WorkLists {
    private final Folder folder;
    private final NewName name;
    private final Drafts drafts;

    WorkLists(Folder folder, NewName name, Drafts drafts) {
        this.folder = folder;
        this.name = name;
        this.drafts = drafts;
    }

    /**
     * @param before the fleet under the old name
     * @param after the same under the new one
     * @return of lists that cannot be read
     */
    List<Finding> carried(Check before, Check after) throws IOException {
        List<Finding> unread = new ArrayList<>();
        for (Unit unit : before.fleet().units()) {
            if (name.concerns(unit)) {
                Optional<WorkList> list = WorkList.read(folder.root(), unit.id(), unread::add);
                if (list.isPresent()) {
                    carried(list.get(), unit, before, after);
                }
            }
        }
        return unread;
    }

    private void carried(WorkList list, Unit unit, Check before, Check after) throws IOException {
        Editions editions = Editions.of(folder, unit, told -> {});
        // Lines that are not ticked are made anew; what is due is worked out for the others alone.
        Optional<Edition> since =
                list.ticked() ? editions.read(list.since(editions), told -> {}) : Optional.<Edition>empty();
        List<Replacement> renamed = list.renamed(name::listed, due(since, before, unit), due(since, after, unit));
        if (!renamed.isEmpty()) {
            drafts.replace(WorkList.path(unit.id()), renamed);
        }
    }

    private static List<Consequences> due(Optional<Edition> since, Check check, Unit unit) {
        return since.flatMap(edition -> check.fleet().units().stream()
                        .filter(it -> it.id().equals(unit.id()))
                        .findFirst()
                        .map(it -> Now.of(check, it))
                        .map(now -> Consequences.of(
                                Comparison.between(edition.snapshot(), now.snapshot()),
                                edition.date(),
                                Optional.empty(),
                                Optional.of(now.coach()))))
                .orElse(List.of());
    }
}
