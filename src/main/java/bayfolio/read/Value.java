package bayfolio.read;

import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** What a file says or is to say, without regard to how it is written there. */
public sealed interface Value {

    /** @param bare whether it stands without quotes and is no text: a number, or nothing */
    record Scalar(String text, boolean bare) implements Value {}

    /** A record, in the order in which its keys are written. */
    record Entries(Map<String, Value> values) implements Value {
        public Entries {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }
    }

    /** A list. */
    record Elements(List<Value> values) implements Value {
        public Elements {
            values = List.copyOf(values);
        }

        boolean plain() {
            return values.stream().allMatch(Scalar.class::isInstance);
        }
    }

    static Scalar text(String text) {
        return new Scalar(text, false);
    }

    /** As it is written: a number is no text. */
    static Scalar written(String text) {
        return new Scalar(text, !Yaml.isText(text));
    }

    static Elements list(String... texts) {
        return new Elements(Stream.of(texts).<Value>map(Value::text).toList());
    }

    static Entries record(String key, Value value) {
        return new Entries(Map.of(key, value));
    }

    /** What it says at a place in it; empty where it says nothing there. */
    default Optional<Value> at(Steps steps) {
        Optional<Value> at = Optional.of(this);
        for (Steps.Step step : steps.all()) {
            at = at.flatMap(it -> it.in(step));
        }
        return at.filter(it -> !it.nothing());
    }

    private Optional<Value> in(Steps.Step step) {
        if (this instanceof Entries record) {
            return step instanceof Steps.Key
                    ? Optional.ofNullable(record.values.get(step.toString()))
                    : Optional.empty();
        }
        int index = this instanceof Elements list ? Rewrite.index(list.values, step, Rewrite::names) : -1;
        return index < 0 ? Optional.empty() : Optional.of(((Elements) this).values.get(index));
    }

    /** Whether it says nothing: a key with nothing behind it. */
    default boolean nothing() {
        return this instanceof Scalar scalar && scalar.bare && (scalar.text.isEmpty() || scalar.text.equals("null"));
    }

    /** Of a key that is said twice, the first. */
    static Value of(Node node) {
        if (node instanceof MappingNode record) {
            Map<String, Value> values = new LinkedHashMap<>();
            for (NodeTuple entry : record.getValue()) {
                values.putIfAbsent(key(entry), of(entry.getValueNode()));
            }
            return new Entries(values);
        }
        if (node instanceof SequenceNode list) {
            List<Value> values = new ArrayList<>();
            list.getValue().forEach(each -> values.add(of(each)));
            return new Elements(values);
        }
        ScalarNode scalar = (ScalarNode) node;
        return new Scalar(
                scalar.getValue(),
                !scalar.getTag().equals(Tag.STR) && !scalar.getTag().equals(Tag.ENV_TAG));
    }

    /** What stands before the colon; nothing for what is no text. */
    static String key(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
