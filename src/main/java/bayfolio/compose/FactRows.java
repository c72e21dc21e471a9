package bayfolio.compose;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.measure.Quantity;
import bayfolio.model.Thing;
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
            if (!key.forStaff() && !elsewhere.contains(key.name())) {
                row(facts, key).ifPresent(rows::add);
            }
        }
        return rows;
    }

    private <V> Optional<Content.FactTable.Row> row(Facts facts, Key<V> key) {
        return facts.located(key)
                .map(value -> value(key.type(), value.value()))
                .filter(words -> !words.isEmpty())
                .map(words -> new Content.FactTable.Row(label(facts.shape(), key), words));
    }

    String label(Shape<?> shape, Key<?> key) {
        return draft.maybeWord("fact." + shape.name() + "." + key.name())
                .or(() -> draft.maybeWord("fact." + key.name()))
                .orElse(key.label());
    }

    private <V> List<Inline> value(Type<V> type, Object value) {
        return type.accept(
                new Type.Visitor<List<Inline>>() {
                    private List<Inline> words() {
                        return List.of(new Inline.Text(draft.wording().of(type, value)));
                    }

                    @Override
                    public List<Inline> text(Type.Text text) {
                        return words();
                    }

                    @Override
                    public <Q extends Quantity> List<Inline> measured(Type.Measured<Q> measured) {
                        return words();
                    }

                    @Override
                    public <E> List<Inline> choice(Type.Choice<E> choice) {
                        return words();
                    }

                    @Override
                    public List<Inline> yesNo(Type.YesNo yesNo) {
                        return words();
                    }

                    @Override
                    public List<Inline> whole(Type.Whole whole) {
                        return words();
                    }

                    @Override
                    public List<Inline> day(Type.Day day) {
                        return words();
                    }

                    @Override
                    public List<Inline> reference(Type.Reference reference) {
                        Optional<Thing> thing =
                                draft.wording().referred(reference, value.toString());
                        // What is for staff is not named to renters, not even as something that
                        // belongs to theirs.
                        return thing.filter(it -> !it.forStaff())
                                .map(it -> List.<Inline>of(Draft.link(it)))
                                .orElse(List.of());
                    }

                    @Override
                    public List<Inline> role(Type.Role role) {
                        return words();
                    }

                    @Override
                    public <E> List<Inline> list(Type.ListOf<E> list) {
                        List<Inline> all = new ArrayList<>();
                        for (Object element : (List<?>) value) {
                            List<Inline> words =
                                    value(list.element(), ((Located<?>) element).value());
                            if (!all.isEmpty() && !words.isEmpty()) {
                                all.add(new Inline.Text(", "));
                            }
                            all.addAll(words);
                        }
                        return all;
                    }

                    @Override
                    public <E extends Described> List<Inline> record(Type.Nested<E> nested) {
                        List<Inline> all = new ArrayList<>();
                        for (Content.FactTable.Row row :
                                of(((Described) value).facts(), Set.of())) {
                            all.add(
                                    new Inline.Text(
                                            (all.isEmpty() ? "" : "; ")
                                                    + row.label().toLowerCase(java.util.Locale.ROOT)
                                                    + " "));
                            all.addAll(row.value());
                        }
                        return all;
                    }
                });
    }
}
