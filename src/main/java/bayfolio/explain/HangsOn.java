package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.reckon.Question;
import bayfolio.source.Place;
import java.util.Comparator;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The facts of a description that an answer hangs on: all that are asked for while it is worked out, so that none can be
 * forgotten. Another answer can come out only where one of them is otherwise.
 */
public final class HangsOn {
    /** What a thing is called changes words and no figure. */
    private static final Set<String> NAMES = Set.of("id", "name", "formerly");

    private HangsOn() {}

    /**
     * A fact that is stated, or one that was looked for and is not.
     *
     * @param record the kind of its record: {@code tank}
     * @param at where it stands, or the record that lacks it
     */
    public record Fact(String record, String key, Place at, boolean stated) implements Comparable<Fact> {
        private static final Comparator<Fact> ORDER =
                Comparator.comparing(Fact::at).thenComparing(Fact::record).thenComparing(Fact::key);

        @Override
        public int compareTo(Fact other) {
            return ORDER.compare(this, other);
        }
    }

    public static SortedSet<Fact> of(Question question, Coach coach, Catalog words) {
        SortedSet<Fact> facts = new TreeSet<>();
        // What is asked for while a coach is put together says nothing of the question.
        AtomicBoolean asking = new AtomicBoolean();
        Facts.Watch watch = (record, key) -> {
            if (asking.get() && !holdsRecords(key.type()) && !NAMES.contains(key.name())) {
                facts.add(new Fact(
                        record.shape().name(),
                        key.name(),
                        record.at(key),
                        record.ifRead(key).isPresent()));
            }
        };
        Coach watched = new Coach(
                watched(coach.fleet(), watch),
                coach.unit().with(coach.unit().facts().watched(watch)));
        asking.set(true);
        Explanations.of(question, watched, words);
        return facts;
    }

    private static Fleet watched(Fleet fleet, Facts.Watch watch) {
        return fleet.with(new FleetFacts(fleet.facts().facts().watched(watch)));
    }

    private static boolean holdsRecords(Type<?> type) {
        return type instanceof Type.Nested<?> || type instanceof Type.ListOf<?> list && holdsRecords(list.element());
    }
}
