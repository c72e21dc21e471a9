package bayfolio.compose;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.prose.Inline;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The stated facts of a record as rows of a table; references become links, what is for staff stays
 * out.
 */
final class FactRows {
    private final Draft draft;

    FactRows(Draft draft) {
        this.draft = draft;
    }

    /**
     * @param elsewhere names of keys that are told in another form
     */
    List<Content.FactTable.Row> of(Facts facts, Set<String> elsewhere) {
        List<Content.FactTable.Row> rows = new ArrayList<>();
        for (Key<?> key : facts.shape().keys()) {
            if (draft.shows(key) && !elsewhere.contains(key.name())) {
                row(facts, key).ifPresent(rows::add);
            }
        }
        return rows;
    }

    private <V> Optional<Content.FactTable.Row> row(Facts facts, Key<V> key) {
        return facts.located(key)
                .map(value -> lines(key.type(), value))
                .filter(lines -> !lines.isEmpty())
                .map(lines -> new Content.FactTable.Row(label(facts.shape(), key), lines));
    }

    /** A list has a line for each element, everything else one; a reference to what is for staff has none. */
    private List<List<Inline>> lines(Type<?> type, Located<?> fact) {
        List<?> values = fact.value() instanceof List<?> list ? list : List.of(fact);
        Type<?> each = type instanceof Type.ListOf<?> list ? list.element() : type;
        return values.stream()
                .map(element -> line(each, (Located<?>) element))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    String label(Shape<?> shape, Key<?> key) {
        return draft.maybeWord("fact." + shape.name() + "." + key.name())
                .or(() -> draft.maybeWord("fact." + key.name()))
                .orElse(key.label());
    }

    private List<Inline> line(Type<?> type, Located<?> fact) {
        Object value = fact.value();
        if (type instanceof Type.Reference reference) {
            // What is for staff is not named to renters, not even as something that belongs to theirs.
            return draft.wording()
                    .referred(reference, value.toString())
                    .filter(draft::shows)
                    .map(thing -> List.<Inline>of(Draft.link(thing)))
                    .orElse(List.of());
        }
        if (value instanceof Described record) {
            return sentence(record.facts());
        }
        return List.of(new Inline.Text(draft.wording().of(type, fact)));
    }

    /** A record within a record: its facts one after the other. */
    private List<Inline> sentence(Facts facts) {
        List<Inline> all = new ArrayList<>();
        for (Content.FactTable.Row row : of(facts, Set.of())) {
            all.add(new Inline.Text((all.isEmpty() ? "" : "; ") + row.label() + ": "));
            row.lines().forEach(all::addAll);
        }
        return all;
    }
}
