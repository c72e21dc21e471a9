package bayfolio.edition;

import bayfolio.check.CheckedCoach;
import bayfolio.document.Audience;
import bayfolio.document.DocumentJson;
import bayfolio.document.Handbook;
import bayfolio.explain.HangsOn;
import bayfolio.fact.Type;
import bayfolio.reckon.Question;
import bayfolio.source.Digest;
import bayfolio.source.Lazy;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.Collections;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** A state of a coach's handbook that can be compared with another one. */
public final class Snapshot {
    /** Fields without which what holds them is nothing. */
    private static final Set<String> HOLDING = Set.of("rows", "lines", "entries", "tiles", "inside", "contents");

    private final String unit;
    private final SortedMap<String, List<String>> facts;
    private final SortedMap<String, String> scripts;
    private final SortedMap<String, SortedSet<String>> answers;
    private final Optional<JsonObject> document;

    /** One state is often compared with several. */
    private final Lazy<Map<String, Part>> parts;

    Snapshot(
            String unit,
            SortedMap<String, List<String>> facts,
            SortedMap<String, String> scripts,
            SortedMap<String, SortedSet<String>> answers,
            Optional<JsonObject> document) {
        this.unit = unit;
        this.facts = Collections.unmodifiableSortedMap(facts);
        this.scripts = Collections.unmodifiableSortedMap(scripts);
        this.answers = Collections.unmodifiableSortedMap(answers);
        this.document = document;
        this.parts = new Lazy<>(() -> document.map(Parts::of).orElse(Map.of()));
    }

    /** The id of the coach. */
    public String unit() {
        return unit;
    }

    /** Each by the way to it: one text for a single value, one each for a list. */
    public SortedMap<String, List<String>> facts() {
        return facts;
    }

    /** Digests of the procedures, guides and stages that it is made of, by form and id: {@code procedure/dump-tanks}. */
    public SortedMap<String, String> scripts() {
        return scripts;
    }

    /** The ways to the facts that each answer hangs on, by the word of its question. */
    public SortedMap<String, SortedSet<String>> answers() {
        return answers;
    }

    /** Its normal form; empty where something was wrong with the coach, and it had none. */
    public Optional<JsonObject> document() {
        return document;
    }

    /** Its parts by their names, in reading order; none where it has no document. */
    Map<String, Part> parts() {
        return parts.get();
    }

    /** @param handbook for all readers; empty where something is wrong with the coach */
    public static Snapshot of(CheckedCoach coach, Optional<Handbook> handbook) {
        return of(coach, handbook, true);
    }

    /** What readers are told of it; figures are not asked for what they hang on, which takes long. */
    public static Snapshot told(CheckedCoach coach, Handbook handbook) {
        return of(coach, Optional.of(handbook), false);
    }

    private static Snapshot of(CheckedCoach coach, Optional<Handbook> handbook, boolean why) {
        StatedFacts facts = StatedFacts.of(coach.coach().fleet(), coach.unit());
        SortedMap<String, String> scripts = new TreeMap<>();
        coach.library()
                .of(coach.unit())
                .forEach(script -> scripts.put(
                        script.form().scheme() + "/" + script.id(),
                        Digest.of(script.file().text())));
        SortedMap<String, SortedSet<String>> answers = new TreeMap<>();
        if (why && handbook.isPresent()) {
            for (Question question : Question.values()) {
                answers.put(question.id(), hangsOn(question, coach, facts));
            }
        }
        return new Snapshot(
                coach.unit().id(),
                facts.values(),
                scripts,
                answers,
                handbook.map(it -> JsonParser.parseString(DocumentJson.of(it)).getAsJsonObject()));
    }

    /**
     * What renters see of it: the parts that are theirs, and of the facts those that some part of theirs came from, or that
     * are declared for them and are of a thing that they see. So nothing of a comparison of two such can tell them more.
     */
    public Snapshot forRenters() {
        if (document.isEmpty()) {
            return this;
        }
        JsonObject theirs = document.get().deepCopy();
        withoutStaff(theirs);
        Set<String> shown = new HashSet<>();
        Parts.of(theirs).values().forEach(part -> shown.addAll(part.from()));
        SortedMap<String, List<String>> seen = new TreeMap<>(facts);
        seen.keySet().removeIf(way -> {
            Declared declared = Declared.of(way);
            boolean ofThing = shown.contains("thing:" + declared.record() + "/" + declared.id())
                    && declared.key().filter(key -> !key.forStaff()).isPresent();
            return !ofThing && !shown.contains("fact:" + declared.source());
        });
        return new Snapshot(unit, seen, scripts, answers, Optional.of(theirs));
    }

    /**
     * As {@link Handbook#seenBy} does it.
     *
     * @return whether anything is left of it: a list of which nobody sees an entry is gone with its heading
     */
    private static boolean withoutStaff(JsonElement value) {
        if (value instanceof JsonArray array) {
            boolean any = array.isEmpty();
            for (Iterator<JsonElement> each = array.iterator(); each.hasNext(); ) {
                JsonElement element = each.next();
                if (isForStaff(element) || !withoutStaff(element)) {
                    each.remove();
                } else {
                    any = true;
                }
            }
            return any;
        } else if (value instanceof JsonObject object) {
            boolean any = true;
            for (Map.Entry<String, JsonElement> field : object.entrySet()) {
                any &= withoutStaff(field.getValue()) || !HOLDING.contains(field.getKey());
            }
            return any;
        }
        return true;
    }

    private static boolean isForStaff(JsonElement element) {
        return element instanceof JsonObject object
                && object.get("audience") instanceof JsonPrimitive audience
                && audience.getAsString().equals(Type.word(Audience.STAFF));
    }

    private static SortedSet<String> hangsOn(Question question, CheckedCoach coach, StatedFacts facts) {
        SortedSet<String> ways = new TreeSet<>();
        for (HangsOn.Fact fact : HangsOn.of(question, coach.coach(), coach.words())) {
            facts.way(fact.at(), fact.key(), fact.stated()).ifPresent(ways::add);
        }
        return ways;
    }
}
