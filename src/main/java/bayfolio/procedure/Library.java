package bayfolio.procedure;

import bayfolio.model.Feature;
import bayfolio.model.Unit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** All scripts of a fleet, procedures and trouble guides: shared ones and those of single coaches. */
public final class Library {
    private static final Comparator<Script> TRIP = Comparator.comparing(
                    (Script script) -> script.head().stage())
            .thenComparing(script -> script.head().title());

    private final List<Script> scripts;
    private final Map<Form, Set<String>> ids;
    // Asked for with every reference; conditions and features would be worked out anew each time.
    private final Map<Unit, Map<String, Script>> applying = new ConcurrentHashMap<>();
    private final Supplier<Set<Integer>> runs;

    public Library(List<Script> scripts) {
        this.scripts = List.copyOf(scripts);
        this.ids = scripts.stream()
                .collect(Collectors.groupingBy(Script::form, Collectors.mapping(Script::id, Collectors.toSet())));
        this.runs = new Once<>(() -> this.scripts.stream()
                .flatMap(script -> script.passages().stream())
                .flatMap(passage -> runs(passage.own()).boxed())
                .collect(Collectors.toUnmodifiableSet()));
    }

    /**
     * Numbers for all runs of three words in a text, in small letters and without the marks around them; equal runs have
     * equal numbers, and others hardly ever.
     */
    public static IntStream runs(String text) {
        IntStream.Builder runs = IntStream.builder();
        int first = 0;
        int second = 0;
        int word = 0;
        int words = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i < text.length() && inWord(text.charAt(i))) {
                word = 31 * word + Character.toLowerCase(text.charAt(i));
            } else if (word != 0) {
                if (++words > 2) {
                    runs.add((first * 131 + second) * 131 + word);
                }
                first = second;
                second = word;
                word = 0;
            }
        }
        return runs.build();
    }

    private static boolean inWord(char letter) {
        return Character.isLetterOrDigit(letter) || letter == '-' || letter == '\'' || letter == '\u2019';
    }

    /** Of all that writers have typed into scripts: what is not among them stands in none. */
    public Set<Integer> runs() {
        return runs.get();
    }

    public List<Script> scripts() {
        return scripts;
    }

    /** Those that apply to a coach, in the order of the trip, then of their titles. */
    public List<Script> of(Unit unit) {
        return List.copyOf(byId(unit).values());
    }

    private Map<String, Script> byId(Unit unit) {
        return applying.computeIfAbsent(unit, it -> {
            Set<Feature> features = Feature.all(it);
            return scripts.stream()
                    .filter(script -> script.head().facts().whole() && script.appliesTo(it, features))
                    .sorted(TRIP)
                    .collect(Collectors.toMap(
                            Script::id, script -> script, (first, second) -> first, LinkedHashMap::new));
        });
    }

    /** Of all there are, those too that apply to no coach. */
    Set<String> ids(Form form) {
        return ids.getOrDefault(form, Set.of());
    }

    public boolean knows(Form form, String id) {
        return ids(form).contains(id);
    }

    public Optional<Script> named(Unit unit, String id) {
        return Optional.ofNullable(byId(unit).get(id));
    }

    /** Worked out when first asked for. */
    private static final class Once<T> implements Supplier<T> {
        private final Supplier<T> work;
        private @Nullable T result;

        Once(Supplier<T> work) {
            this.work = work;
        }

        @Override
        public synchronized T get() {
            T known = result;
            if (known == null) {
                known = work.get();
                result = known;
            }
            return known;
        }
    }
}
