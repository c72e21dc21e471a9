package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.model.Features;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.source.Lazy;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All scripts of a fleet, procedures and trouble guides: shared ones and those of single coaches. */
public final class Library {
    private static final Comparator<Script> TRIP = Comparator.comparing(
                    (Script script) -> script.head().stage())
            .thenComparing(script -> script.head().title());

    /** So many bits that few of the runs of a library share one. */
    private static final int RUNS = 1 << 20;

    private final List<Script> scripts;
    private final List<Acts> acts;
    private final Map<Form, Set<String>> ids;

    /** Since each coach of a large fleet may have some of its own. */
    private final Map<Whose, List<Script>> byWhose;

    private final Map<String, List<Script>> byId;
    private final Map<Integer, List<Typed>> holding = new ConcurrentHashMap<>();
    private final Supplier<BitSet> runs;

    private final List<Whose> unread;
    private final Translations translations;

    public Library(List<Script> scripts) {
        this(scripts, List.of(), List.of(), Translations.NONE);
    }

    /**
     * @param scripts those that could be read
     * @param acts what kinds of equipment add to pages
     * @param unread whose others could not be read
     */
    public Library(List<Script> scripts, List<Acts> acts, List<Whose> unread, Translations translations) {
        this.acts = List.copyOf(acts);
        this.translations = translations;
        this.unread = List.copyOf(unread);
        this.scripts = List.copyOf(scripts);
        this.byWhose = scripts.stream().collect(Collectors.groupingBy(Script::whose));
        this.byId = scripts.stream().collect(Collectors.groupingBy(Script::id));
        this.ids = scripts.stream()
                .collect(Collectors.groupingBy(Script::form, Collectors.mapping(Script::id, Collectors.toSet())));
        this.runs = new Lazy<>(() -> {
            BitSet runs = new BitSet(RUNS);
            for (Script script : this.scripts) {
                for (int run : runs(script)) {
                    runs.set(run & RUNS - 1);
                }
            }
            return runs;
        });
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

    /** A passage of a script. */
    public record Typed(Script script, SourceBlock passage) {}

    /** Passages that hold a run of three words, or one with the same number. */
    public List<Typed> holding(int run) {
        // Most are held nowhere, which a set of them tells without a look at the scripts.
        return runs.get().get(run & RUNS - 1) ? holding.computeIfAbsent(run, this::held) : List.of();
    }

    private List<Typed> held(int run) {
        return scripts.stream()
                .filter(script -> Arrays.binarySearch(runs(script), run) >= 0)
                .flatMap(script -> script.passages().stream()
                        .filter(passage -> runs(passage.own()).anyMatch(it -> it == run))
                        .map(passage -> new Typed(script, passage)))
                .toList();
    }

    /** Sorted. */
    private static int[] runs(Script script) {
        return script.once(
                "",
                (it, nothing) -> it.passages().stream()
                        .flatMapToInt(passage -> runs(passage.own()))
                        .distinct()
                        .sorted()
                        .toArray());
    }

    /**
     * The scripts for one coach.
     *
     * @param byId those that apply, in the order of the trip, then of their titles
     * @param unread ids of those of which nobody knows whether they do
     */
    private record Applying(Map<String, Script> byId, Set<String> unread) {}

    /** Whether it is one of those that {@link #of} gives. */
    public boolean applies(Script script, Unit unit) {
        return applying(unit).byId.get(script.id()) == script;
    }

    public List<Script> scripts() {
        return scripts;
    }

    /** What each kind of equipment adds to pages, in the order of their files. */
    public List<Acts> acts() {
        return acts;
    }

    /** All texts that somebody wrote: the scripts, and the files of equipment. */
    public List<Script> texts() {
        return Stream.concat(scripts.stream(), acts.stream().map(Acts::script)).toList();
    }

    public Translations translations() {
        return translations;
    }

    /** The same with some scripts alone, and their translations. */
    public Library with(List<Script> others) {
        return new Library(others, acts, List.of(), translations.of(others));
    }

    /** Whether all could be read that a script of theirs may speak of. */
    boolean whole(Whose whose) {
        // Of a coach it is not known here which model it has.
        return whose.shared()
                ? unread.isEmpty()
                : unread.stream()
                        .noneMatch(other -> other.shared()
                                || other.equals(whose)
                                || other instanceof Whose.OfAModel && whose instanceof Whose.OfACoach);
    }

    /** The same for a coach. */
    private boolean whole(Unit unit) {
        return unread.stream().noneMatch(whose -> whose.has(unit));
    }

    /** Those that are known to apply to a coach, in the order of the trip, then of their titles. */
    public List<Script> of(Unit unit) {
        return List.copyOf(applying(unit).byId.values());
    }

    /**
     * All that apply to a coach, for those who judge by what is not among them.
     *
     * @throws UnreadException when a script could not be read that may be one of them
     */
    public List<Script> all(Unit unit) {
        if (!applying(unit).unread.isEmpty() || !whole(unit)) {
            throw new UnreadException("it could not be read which procedures are for this coach");
        }
        return of(unit);
    }

    /** Asked for with every reference; conditions and features would be worked out anew each time. */
    private Applying applying(Unit unit) {
        return unit.once(this, (it, library) -> library.scriptsOf(it));
    }

    /** What lies in the folders of all, of its model and of the coach itself, whether or not it applies. */
    private List<Script> writtenFor(Unit unit) {
        return Stream.of(
                        Optional.of(Whose.ALL),
                        unit.model().<Whose>map(Whose.OfAModel::new),
                        unit.facts().ifRead(Unit.ID).map(Located::value).<Whose>map(Whose.OfACoach::new))
                .flatMap(Optional::stream)
                .flatMap(whose -> byWhose.getOrDefault(whose, List.of()).stream())
                .toList();
    }

    private Applying scriptsOf(Unit unit) {
        Features features = unit.features();
        List<Script> those = new ArrayList<>();
        Set<String> unread = new HashSet<>();
        for (Script script : writtenFor(unit)) {
            try {
                if (script.appliesTo(unit, features)) {
                    those.add(script);
                }
            } catch (UnreadException nobodyKnows) {
                unread.add(script.id());
            }
        }
        return new Applying(
                those.stream()
                        .sorted(TRIP)
                        .collect(Collectors.toMap(
                                Script::id, script -> script, (first, second) -> first, LinkedHashMap::new)),
                unread);
    }

    /** Of all there are, those too that apply to no coach. */
    Set<String> ids(Form form) {
        return ids.getOrDefault(form, Set.of());
    }

    /** Whether there is such a script, if that is known to those who ask. */
    public boolean knows(Form form, String id, Whose whose) {
        boolean known = ids(form).contains(id);
        if (!known && !whole(whose)) {
            throw new UnreadException("it could not be read whether there is a " + form.called() + " " + id);
        }
        return known;
    }

    /**
     * The script with steps of an id that all coaches share.
     *
     * @param scheme of its form: {@code procedure}
     */
    public Optional<Script> shared(String scheme, String id) {
        return byId.getOrDefault(id, List.of()).stream()
                .filter(script ->
                        Form.ofSteps(scheme).filter(script.form()::equals).isPresent())
                .filter(script -> script.whose().shared())
                .findFirst();
    }

    /** Whether all of that id are read by staff alone. */
    boolean forStaff(Form form, String id) {
        List<Script> called = byId.getOrDefault(id, List.of()).stream()
                .filter(script -> script.form() == form)
                .toList();
        return !called.isEmpty() && called.stream().allMatch(Script::forStaff);
    }

    /** The script of that id that applies to a coach, if that is known. */
    public Optional<Script> named(Unit unit, String id) {
        Applying those = applying(unit);
        Script script = those.byId.get(id);
        boolean other =
                script == null && scripts.stream().noneMatch(it -> it.id().equals(id));
        if (script == null && those.unread.contains(id) || other && !whole(unit)) {
            throw new UnreadException("it could not be read whether " + id + " is for this coach");
        }
        return Optional.ofNullable(script);
    }
}
