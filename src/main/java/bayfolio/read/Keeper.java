package bayfolio.read;

import bayfolio.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

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
    }

    /** A result with what was found on the way to it. */
    record Kept<T>(T result, List<Finding> findings) {}

    /** @param asked with the answers */
    private record Entry(Kept<?> kept, Map<Question<?>, Object> asked) {}

    /** The question for a result. */
    private record Wanted<T>(Keeper keeper, Reader<T> reader, String name) implements Question<Kept<T>> {
        @Override
        public Kept<T> answer(Folder folder) {
            return keeper.answer(this, folder);
        }
    }

    private final Map<Wanted<?>, Entry> entries = new ConcurrentHashMap<>();

    /** As they were seen last: while a text is the same, so is the file that places name. */
    private final Map<String, Folder.Texted> texts = new ConcurrentHashMap<>();

    <T> Question<Kept<T>> wanted(Reader<T> reader, String name) {
        return new Wanted<>(this, reader, name);
    }

    @SuppressWarnings("unchecked") // a reader always reads one type
    private <T> Kept<T> answer(Wanted<T> wanted, Folder folder) {
        Entry entry = entries.get(wanted);
        if (entry != null
                && entry.asked.entrySet().stream()
                        .allMatch(each -> folder.ask(each.getKey()).equals(each.getValue()))) {
            return (Kept<T>) entry.kept;
        }
        Map<Question<?>, Object> asked = new ConcurrentHashMap<>();
        List<Finding> findings = new ArrayList<>();
        T result = wanted.reader.of(folder.written(asked), wanted.name, findings::add);
        Kept<T> kept = new Kept<>(result, List.copyOf(findings));
        // Who asked for it need not work again if it came out the same.
        if (entry != null && entry.kept.equals(kept)) {
            kept = (Kept<T>) entry.kept;
        }
        entries.put(wanted, new Entry(kept, Map.copyOf(asked)));
        return kept;
    }

    /** The file that it was before, if it says the same. */
    Folder.Texted same(String path, Folder.Texted now) {
        return Objects.requireNonNull(texts.merge(path, now, (before, after) -> before.says(after) ? before : after));
    }

    /** What was not asked for at a moment is forgotten. */
    void forgetAllBut(Set<Question<?>> asked) {
        entries.keySet().retainAll(asked);
        texts.keySet().removeIf(path -> !asked.contains(new Folder.Text(path)));
    }
}
