package bayfolio.edition;

import bayfolio.check.CheckedCoach;
import bayfolio.document.DocumentJson;
import bayfolio.document.Handbook;
import bayfolio.explain.HangsOn;
import bayfolio.reckon.Question;
import bayfolio.source.Digest;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A state of a coach's handbook that can be compared with another one.
 *
 * @param facts each by the way to it: one text for a single value, one each for a list
 * @param scripts digests of the procedures, guides and stages that it is made of, by form and id: {@code procedure/dump-tanks}
 * @param answers the ways to the facts that each answer hangs on, by the word of its question
 * @param document its normal form; empty where something was wrong with the coach, and it had none
 */
public record Snapshot(
        String unit,
        SortedMap<String, List<String>> facts,
        SortedMap<String, String> scripts,
        SortedMap<String, SortedSet<String>> answers,
        Optional<JsonObject> document) {
    public Snapshot {
        facts = Collections.unmodifiableSortedMap(facts);
        scripts = Collections.unmodifiableSortedMap(scripts);
        answers = Collections.unmodifiableSortedMap(answers);
    }

    /** @param handbook for all readers; empty where something is wrong with the coach */
    public static Snapshot of(CheckedCoach coach, Optional<Handbook> handbook) {
        StatedFacts facts = StatedFacts.of(coach.coach().fleet(), coach.unit());
        SortedMap<String, String> scripts = new TreeMap<>();
        coach.library()
                .of(coach.unit())
                .forEach(script -> scripts.put(
                        script.form().scheme() + "/" + script.id(),
                        Digest.of(script.file().text())));
        SortedMap<String, SortedSet<String>> answers = new TreeMap<>();
        if (handbook.isPresent()) {
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

    private static SortedSet<String> hangsOn(Question question, CheckedCoach coach, StatedFacts facts) {
        SortedSet<String> ways = new TreeSet<>();
        for (HangsOn.Fact fact : HangsOn.of(question, coach.coach(), coach.words())) {
            facts.way(fact.at(), fact.key(), fact.stated()).ifPresent(ways::add);
        }
        return ways;
    }

    /** Its parts by their names, in reading order; none where it has no document. */
    Map<String, Part> parts() {
        return document.map(Parts::of).orElse(Map.of());
    }
}
