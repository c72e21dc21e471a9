package bayfolio.survey;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.read.Value;
import bayfolio.source.Digest;
import bayfolio.source.Located;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The records of a description, each with the way to it and the files that say it. */
public final class Records {
    /**
     * @param thing that it is or is within
     */
    public record Entry(Steps at, Facts facts, Optional<Thing> thing) {
        Steps at(Key<?> key) {
            return at.key(key.name());
        }
    }

    private final Unit unit;
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Map<String, SourceFile> files = new TreeMap<>();
    private final Map<SourceFile, Value> said = new HashMap<>();

    public Records(Unit unit) {
        this.unit = unit;
        add(new Steps(List.of()), unit, Optional.empty());
    }

    private void add(Steps at, Described record, Optional<Thing> around) {
        Optional<Thing> thing =
                record instanceof Thing it && it.facts().read(it.identity().id()) ? Optional.of(it) : around;
        entries.put(at.toString(), new Entry(at, record.facts(), thing));
        see(record.facts().at().file());
        record.facts().each((key, fact) -> {
            see(fact.at().file());
            if (fact.value() instanceof Described inner) {
                add(at.key(key.name()), inner, thing);
            } else if (fact.value() instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    if (((Located<?>) list.get(i)).value() instanceof Described inner) {
                        add(element(at.key(key.name()), inner.facts(), i), inner, thing);
                    }
                }
            }
        });
    }

    private void see(SourceFile file) {
        files.putIfAbsent(file.path(), file);
    }

    private static Steps element(Steps list, Facts facts, int index) {
        return facts.shape()
                .key("id")
                .flatMap(facts::ifRead)
                .map(id -> list.id(id.value().toString()))
                .orElseGet(() -> list.nth(index + 1));
    }

    /** Each behind the one that it is in. */
    public List<Entry> all() {
        return List.copyOf(entries.values());
    }

    Optional<Entry> find(String at) {
        return Optional.ofNullable(entries.get(at));
    }

    Optional<Entry> of(Facts facts) {
        return entries.values().stream().filter(it -> it.facts == facts).findFirst();
    }

    /** A fact that could be stated, whether it is or not. */
    record Slot(Entry record, Steps at, Shape<?> shape, Key<?> key) {}

    /** By the way to it; empty where there is no such key, or nothing of that id. */
    Optional<Slot> slot(String way) {
        int last = way.lastIndexOf(" / ");
        String of = last < 0 ? "" : way.substring(0, last);
        String name = last < 0 ? way : way.substring(last + 3);
        Optional<Entry> record = find(of);
        if (record.isPresent()) {
            return record.flatMap(
                    it -> it.facts.shape().key(name).map(key -> new Slot(it, it.at(key), it.facts.shape(), key)));
        }
        // A record that is not there yet.
        return slot(of).filter(it -> it.key.type() instanceof Type.Nested<?>).flatMap(it -> {
            Shape<?> shape = ((Type.Nested<?>) it.key.type()).shape();
            return shape.key(name).map(key -> new Slot(it.record, it.at.key(name), shape, key));
        });
    }

    /** Where a key would stand in records that are not there: the ways to it through single records. */
    Optional<Slot> missing(Key<?> key) {
        return missing(key, new Steps(List.of()), Unit.SHAPE);
    }

    private Optional<Slot> missing(Key<?> key, Steps at, Shape<?> shape) {
        if (has(shape, key)) {
            return slot(at.key(key.name()).toString());
        }
        for (Key<?> each : shape.keys()) {
            if (each.type() instanceof Type.Nested<?> nested) {
                Optional<Slot> found = missing(key, at.key(each.name()), nested.shape());
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a shape declares this very key. */
    static boolean has(Shape<?> shape, Key<?> key) {
        return shape.key(key.name()).filter(it -> it == key).isPresent();
    }

    /** The file of the coach itself. */
    SourceFile own() {
        return unit.facts().at().file();
    }

    /** The file that states a fact; nothing where none does. */
    Optional<SourceFile> stating(Slot slot) {
        SourceFile stated = slot.record
                .facts
                .ifRead(slot.key)
                .map(fact -> fact.at().file())
                .orElse(slot.record.facts.at().file());
        return List.of(stated, own()).stream()
                .filter(file -> said(file).at(slot.at).isPresent())
                .findFirst();
    }

    /** What is written there now; empty where nothing is, or what is no single value. */
    Optional<String> written(Slot slot) {
        return stating(slot)
                .flatMap(file -> said(file).at(slot.at))
                .filter(Value.Scalar.class::isInstance)
                .map(value -> ((Value.Scalar) value).text());
    }

    /** Whether a file on disk is the one that was read, but for its line ends. */
    boolean isSame(SourceFile raw) {
        String text = raw.text().startsWith("\uFEFF") ? raw.text().substring(1) : raw.text();
        SourceFile read = files.get(raw.path());
        return read == null || read.text().equals(text.replace("\r\n", "\n").replace('\r', '\n'));
    }

    private Value said(SourceFile file) {
        return said.computeIfAbsent(file, it -> {
            try {
                return Rewrite.read(it);
            } catch (RewriteException cannotBeRead) {
                return new Value.Elements(List.of());
            }
        });
    }

    /** Of all files that say something of the coach. */
    String digest() {
        List<byte[]> texts = new ArrayList<>();
        files.values().forEach(file -> texts.add(file.text().getBytes(StandardCharsets.UTF_8)));
        return Digest.of(texts);
    }
}
