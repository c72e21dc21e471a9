package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * What files said when they were read last, for as long as they say the same: a program that checks
 * again after an edit need not read all of it anew. Of each path the last is kept.
 *
 * @param result all of it immutable
 */
record FileCache(SourceFile file, Object given, Optional<?> result, List<Finding> findings) {
    private static final Map<String, FileCache> BY_PATH = new ConcurrentHashMap<>();

    /**
     * @param read looks at nothing but the file, whose path tells what it is read as
     */
    static <T> Optional<T> read(
            SourceFile file, BiFunction<SourceFile, Consumer<Finding>, Optional<T>> read, Consumer<Finding> findings) {
        return read(file, "", read, findings);
    }

    /** @param given all that the result depends on besides the file; it is the same when it is equal */
    @SuppressWarnings("unchecked") // a path is always read as one type
    static <T> Optional<T> read(
            SourceFile file,
            Object given,
            BiFunction<SourceFile, Consumer<Finding>, Optional<T>> read,
            Consumer<Finding> findings) {
        FileCache kept = BY_PATH.get(file.path());
        if (kept == null || !kept.file.text().equals(file.text()) || !kept.given.equals(given)) {
            List<Finding> told = new ArrayList<>();
            Optional<T> result = read.apply(file, told::add);
            kept = new FileCache(file, given, result, List.copyOf(told));
            BY_PATH.put(file.path(), kept);
        }
        kept.findings.forEach(findings);
        return (Optional<T>) kept.result;
    }
}
