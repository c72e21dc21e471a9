package bayfolio.issue;

import bayfolio.document.Audience;
import bayfolio.document.PageKind;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.Part;
import java.util.Map;
import java.util.stream.Stream;

/** Pages for renters that are there in one state alone: mails and notes may lead there. */
final class LinksOf implements Consequent {
    private final Compared compared;

    LinksOf(Compared compared) {
        this.compared = compared;
    }

    @Override
    public Stream<Consequence.Link> of(Changed changed) {
        Map<String, Part> was = compared.before().parts();
        Map<String, Part> is = compared.after().parts();
        if (!compared.before().composed()) {
            return Stream.empty();
        }
        if (!compared.after().composed()) {
            return Stream.of(changed.change())
                    .filter(Change.Removed.class::isInstance)
                    .map(change -> ((Change.Removed) change).thing())
                    .map(thing -> thing.kind() + "/" + thing.id())
                    .filter(was::containsKey)
                    .filter(LinksOf::isForRenters)
                    .map(page -> new Consequence.Link(page, true));
        }
        return changed.pages().stream()
                .filter(page -> was.containsKey(page) != is.containsKey(page))
                .filter(LinksOf::isForRenters)
                .map(page -> new Consequence.Link(page, was.containsKey(page)));
    }

    private static boolean isForRenters(String page) {
        return PageKind.of(page)
                .filter(kind -> kind.audience() != Audience.STAFF)
                .isPresent();
    }
}
