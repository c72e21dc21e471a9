package bayfolio.read;

import bayfolio.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * What was read out of the files of a folder, kept for as long as all that was asked for it would be answered alike. What a
 * result depends on is written down while it is worked out, by the folder that is asked; nobody lists it. A keeper belongs
 * to the folder it was made for, and holds what was wanted of it last.
 */
final class Keeper {
    /** Works a result out of what it asks a folder, and of nothing else that could change. */
    interface Reader<T> {
        /**
         * @param name of what is read: of a file, a coach or a model
         */
        T of(Folder folder, String name, Consumer<Finding> findings);
    }

    /** What a folder can be asked; equal questions have one answer at one moment. */
    interface Question<A> {
        A answer(Folder folder);

        /** By what an answer is known again; it stays the same for as long as the answer does. */
        default Object known(A answer) {
            return answer;
        }

        /** Whether there may be so many answers, and so large, that not all of them can be kept in mind. */
        default boolean isLarge() {
            return false;
        }
    }

    /**
     * Reads what a large fleet has too much of: it is kept as long as there is room, and otherwise read again whenever somebody
     * wants it.
     *
     * @param bytes that a result takes, roughly
     */
    record Large<T>(Reader<T> reader, ToLongFunction<T> bytes) implements Reader<T> {
        @Override
        public T of(Folder folder, String name, Consumer<Finding> findings) {
            return reader.of(folder, name, findings);
        }
    }

    /**
     * A result with what was found on the way to it.
     *
     * @param mark by which it is known again
     */
    record Kept<T>(T result, List<Finding> findings, Object mark) {
        boolean says(Kept<?> other) {
            return Objects.equals(result, other.result) && findings.equals(other.findings);
        }
    }

    /**
     * @param asked with what the answers are known by
     * @param bytes that are counted for it
     */
    private record Entry(Kept<?> kept, Map<Question<?>, Object> asked, long bytes) {}

    /** The question for a result. */
    private record Wanted<T>(Keeper keeper, Reader<T> reader, String name) implements Question<Kept<T>> {
        @Override
        public Kept<T> answer(Folder folder) {
            return keeper.answer(this, folder);
        }

        @Override
        public Object known(Kept<T> answer) {
            return answer.mark;
        }

        @Override
        public boolean isLarge() {
            return reader instanceof Large;
        }

        long bytes(Kept<T> answer) {
            return reader instanceof Large<T> large ? large.bytes.applyAsLong(answer.result) : 0;
        }
    }

    private final Map<Wanted<?>, Entry> entries = new ConcurrentHashMap<>();

    /** Bytes of the large ones among them. */
    private final AtomicLong taken = new AtomicLong();

    /** As they were seen last: while a text is the same, so is the file that places name. */
    private final Map<String, Seen> texts = new ConcurrentHashMap<>();

    /**
     * A text with what the system said of its file.
     *
     * @param file empty where it may have changed since without a trace
     */
    private record Seen(Folder.Texted text, Optional<FileStamp> file) {}

    private final long room;

    /** With a part of what Java may have; the rest is for what is made of it. */
    Keeper() {
        this(Runtime.getRuntime().maxMemory() / 4);
    }

    /** @param room for what is large, in bytes */
    Keeper(long room) {
        this.room = room;
    }

    <T> Question<Kept<T>> wanted(Reader<T> reader, String name) {
        return new Wanted<>(this, reader, name);
    }

    @SuppressWarnings("unchecked") // a reader always reads one type
    private <T> Kept<T> answer(Wanted<T> wanted, Folder folder) {
        Entry entry = entries.get(wanted);
        if (entry != null
                && entry.asked.entrySet().stream().allMatch(each -> isKnown(folder, each.getKey(), each.getValue()))) {
            return (Kept<T>) entry.kept;
        }
        Map<Question<?>, Object> asked = new ConcurrentHashMap<>();
        List<Finding> findings = new ArrayList<>();
        T result = wanted.reader.of(folder.written(asked), wanted.name, findings::add);
        Kept<T> kept = new Kept<>(result, List.copyOf(findings), new Object());
        // Who asked for it need not work again if it came out the same.
        if (entry != null && entry.kept.says(kept)) {
            kept = (Kept<T>) entry.kept;
        }
        keep(wanted, new Entry(kept, Map.copyOf(asked), wanted.bytes(kept)));
        return kept;
    }

    private static <A> boolean isKnown(Folder folder, Question<A> question, Object known) {
        return question.known(folder.ask(question)).equals(known);
    }

    /** What there is no room for is not kept; what is kept stays, since a fleet is gone through from end to end, again and again. */
    private void keep(Wanted<?> wanted, Entry entry) {
        if (entry.bytes > 0) {
            forget(wanted);
            if (taken.addAndGet(entry.bytes) > room) {
                taken.addAndGet(-entry.bytes);
                return;
            }
        }
        forget(entries.put(wanted, entry));
    }

    private void forget(Wanted<?> wanted) {
        forget(entries.remove(wanted));
    }

    private void forget(@Nullable Entry entry) {
        if (entry != null) {
            taken.addAndGet(-entry.bytes);
        }
    }

    /** What a file said, if the system says of it what it said then. */
    Optional<Folder.Texted> unchanged(String path, Optional<FileStamp> now) {
        return Optional.ofNullable(texts.get(path))
                .filter(it -> it.file.isPresent() && it.file.equals(now))
                .map(Seen::text);
    }

    /**
     * The file that it was before, if it says the same.
     *
     * @param file what the system said of it before it was read
     */
    Folder.Texted same(String path, Folder.Texted now, Optional<FileStamp> file) {
        return Objects.requireNonNull(texts.compute(
                        path,
                        (it, before) -> new Seen(before != null && before.text.says(now) ? before.text : now, file)))
                .text;
    }

    /** What was not asked for at a moment is forgotten. */
    void forgetAllBut(Set<Question<?>> asked) {
        for (Wanted<?> each : List.copyOf(entries.keySet())) {
            if (!asked.contains(each)) {
                forget(each);
            }
        }
        texts.keySet().removeIf(path -> !asked.contains(new Folder.Text(path)));
    }
}
