package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Quantity;
import bayfolio.measure.Symbol;
import bayfolio.model.Region;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Published;
import bayfolio.reckon.Question;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The words in which one question is explained: messages of the catalog below its id. */
record Voice(Catalog words, Question question, Region region) {
    MeasureSystem first() {
        return region.first();
    }

    String say(String key, Object... with) {
        return words.say(question.id() + "." + key, with);
    }

    /** A message that differs from region to region. */
    String regional(String key, Object... with) {
        return say(key + "." + Type.word(region), with);
    }

    /** A message that several questions have in common. */
    String common(String key, Object... with) {
        return words.say("common." + key, with);
    }

    String asked() {
        return say("asked");
    }

    String amount(Amount amount) {
        return words.amount(amount);
    }

    /** Several alike: {@code 2 × 11 kg (24 lb)}. */
    String times(int count, Amount each) {
        return count > 1 ? common("times", "count", count, "each", each) : amount(each);
    }

    List<String> heads(String... keys) {
        return List.of(keys).stream().map(key -> say("head." + key)).toList();
    }

    /**
     * @param key below {@code input}
     * @param value with its origin
     * @param with what the message of the key wants
     */
    Input input(String key, Given<Amount> value, Object... with) {
        return input(key, amount(value.value()), value.origin(), with);
    }

    Input input(String key, String value, Origin origin, Object... with) {
        return new Input(say("input." + key, with), value, origin);
    }

    /** In the measures of the region. */
    <Q extends Quantity> Given<Amount> shown(Given<Q> given) {
        return given.map(quantity -> quantity.amount(first()));
    }

    /** A stated quantity as its writer put it. */
    static <Q extends Quantity> Given<Amount> written(Given<Q> given) {
        return given.origin() instanceof Origin.Stated stated
                ? given.map(quantity -> stated.facts()
                        .located(stated.key())
                        .map(fact -> quantity.asWritten(fact.written()))
                        .orElseThrow())
                : given.map(quantity -> quantity.amount(MeasureSystem.METRIC));
    }

    /** What readers are told of where a figure comes from. */
    String source(Published<?> figure) {
        return words.say("source." + figure.told());
    }

    /**
     * Messages for a script that fills them itself.
     *
     * @param keys below the id of the question
     * @param units of the amounts that it shows
     */
    Map<String, Object> scripted(List<String> keys, Symbol... units) {
        Map<String, Object> messages = new LinkedHashMap<>();
        keys.forEach(key -> messages.put(key, words.script(question.id() + "." + key)));
        Map<String, Object> symbols = new LinkedHashMap<>();
        List.of(units).forEach(unit -> symbols.put(Type.word(unit), words.script(Catalog.key(unit))));
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("language", words.language());
        all.put("decimal", words.say("number.decimal"));
        all.put("thousands", words.say("number.thousands"));
        all.put("messages", messages);
        all.put("units", symbols);
        return all;
    }

    Explained lacking(List<Missing> facts) {
        return new Explained.Lacking(
                question,
                asked(),
                facts.stream().map(fact -> missing(fact, words)).toList());
    }

    static String missing(Missing fact, Catalog words) {
        return fact.of()
                .map(name -> words.say("lacking." + fact.what(), "name", name, "inside", inside(name)))
                .orElseGet(() -> words.say("lacking." + fact.what()));
    }

    /** A name as some languages write it inside a sentence: {@code microwave}, {@code USB outlets}. */
    static String inside(String name) {
        boolean shouted = name.length() > 1 && Character.isUpperCase(name.charAt(1));
        return shouted ? name : Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
