package bayfolio.read;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A value that somebody wants to write, before it is written. */
public final class ValueReader {
    private ValueReader() {}

    /** As it would stand in a file: digits are a number where a number is meant. */
    public static Value.Scalar written(Key<?> key, String text) {
        return key.type() instanceof Type.Whole ? Value.written(text) : Value.text(text);
    }

    /**
     * What would be wrong with it behind a key, in the words in which it would be told there.
     *
     * @param at where it comes from
     */
    public static List<Finding> faults(Shape<?> shape, Key<?> key, Value.Scalar value, Place at) {
        List<Finding> findings = new ArrayList<>();
        String text = key.name() + ": " + Spelling.of(value, false);
        Yaml.compose(new SourceFile("", text), text, 1, findings::add)
                .ifPresent(node -> new Decoder(it -> at, Lists.ANY, Optional.empty(), findings::add).part(node, shape));
        return findings;
    }
}
