package bayfolio.edition;

import bayfolio.finding.Finding;
import bayfolio.source.Lazy;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The last edition of a coach and the one before: each is large, and is read once, when it is asked for. */
public final class Issued {
    private final Supplier<Optional<One>> last;
    private final Supplier<Optional<One>> before;

    /** @param forRenters what renters see of it */
    public record One(Edition edition, Snapshot forRenters) {}

    /** @param findings of editions that are not as they were issued */
    public Issued(Editions editions, Consumer<Finding> findings) {
        this.last = new Lazy<>(() -> read(editions, editions.last(), findings));
        this.before = new Lazy<>(() -> read(editions, editions.last() - 1, findings));
    }

    private static Optional<One> read(Editions editions, int number, Consumer<Finding> findings) {
        return editions.read(number, findings)
                .map(edition -> new One(edition, edition.snapshot().forRenters()));
    }

    /** Empty where none was issued, or it could not be read. */
    public Optional<One> last() {
        return last.get();
    }

    public Optional<One> before() {
        return before.get();
    }
}
