package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content.FactTable.Line;
import bayfolio.document.Content.FactTable.Row;
import bayfolio.document.From;
import bayfolio.document.Stamp;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.model.Thing;
import bayfolio.prose.Inline;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The stated facts of a record as rows of a table; references become links. What is for staff is marked so. */
final class FactRows {
    private final CoachView view;

    FactRows(CoachView view) {
        this.view = view;
    }

    /**
     * @param table where the rows stand
     * @param elsewhere names of keys that are told in another form
     */
    List<Row> of(Stamp table, Described record, Set<String> elsewhere) {
        List<Row> rows = new ArrayList<>();
        for (Key<?> key : record.facts().shape().keys()) {
            if (!elsewhere.contains(key.name())) {
                row(table, record, key).ifPresent(rows::add);
            }
        }
        return rows;
    }

    /** One fact, where it is stated and says something. */
    <V> Optional<Row> row(Stamp table, Described record, Key<V> key) {
        Stamp stamp = table.child(key.name()).from(From.fact(record, key)).seenBy(Audience.staffIf(key.forStaff()));
        return record.facts().located(key).flatMap(value -> {
            List<Line> lines = lines(key.type(), value);
            return lines.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Row(
                            stamp.in(language(key.type(), value).orElse(table.language())),
                            label(record.facts().shape(), key),
                            lines));
        });
    }

    /** That of the first text in it; a figure or a name has none of its own. */
    private Optional<String> language(Type<?> type, Located<?> value) {
        if (Type.ofWords(type)) {
            return Optional.of(view.language(value));
        }
        return type instanceof Type.ListOf<?> list && value.value() instanceof List<?> all && !all.isEmpty()
                ? language(list.element(), (Located<?>) all.get(0))
                : Optional.empty();
    }

    /** One fact in words; empty where it is not stated. */
    <V> String plain(Described record, Key<V> key) {
        return record.facts().located(key).stream()
                .flatMap(value -> lines(key.type(), value).stream())
                .map(line -> Inline.plain(line.words()))
                .collect(Collectors.joining(" "));
    }

    /** A list has a line for each element, everything else one. */
    private List<Line> lines(Type<?> type, Located<?> fact) {
        List<?> values = fact.value() instanceof List<?> list ? list : List.of(fact);
        Type<?> each = type instanceof Type.ListOf<?> list ? list.element() : type;
        return values.stream()
                .flatMap(element -> line(each, (Located<?>) element))
                .toList();
    }

    String label(Shape<?> shape, Key<?> key) {
        return view.maybeWord("fact." + shape.name() + "." + key.name())
                .orElseGet(() -> view.word("fact." + key.name()));
    }

    private Stream<Line> line(Type<?> type, Located<?> fact) {
        Object value = fact.value();
        if (type instanceof Type.Reference reference) {
            // What is for staff is not named to renters, not even as something that belongs to theirs.
            return view.coach().referred(reference, value.toString()).stream()
                    .map((Thing thing) -> new Line(CoachView.audience(thing), List.of(CoachView.link(thing))));
        }
        if (value instanceof Described record) {
            return sentence(record);
        }
        return Stream.of(new Line(
                Audience.EVERYBODY,
                List.of(new Inline.Text(view.wording().of(type, fact))),
                value instanceof Quantity measured ? Optional.of(measured) : Optional.empty()));
    }

    /** A record within a record: its facts one after the other; in two wordings where some of them are for staff. */
    private Stream<Line> sentence(Described record) {
        List<Inline> all = sentence(record, it -> it != Audience.RENTERS);
        List<Inline> theirs = record.forStaff() ? List.of() : sentence(record, it -> it != Audience.STAFF);
        return all.equals(theirs)
                ? Stream.of(new Line(Audience.EVERYBODY, all))
                : Stream.of(new Line(Audience.RENTERS, theirs), new Line(Audience.STAFF, all))
                        .filter(line -> !line.words().isEmpty());
    }

    private List<Inline> sentence(Described record, Predicate<Audience> seen) {
        List<Inline> all = new ArrayList<>();
        for (Key<?> key : record.facts().shape().keys()) {
            if (seen.test(Audience.staffIf(key.forStaff()))) {
                words(record, key, seen).ifPresent(words -> {
                    all.add(new Inline.Text(
                            (all.isEmpty() ? "" : "; ") + label(record.facts().shape(), key) + ": "));
                    all.addAll(words);
                });
            }
        }
        return all;
    }

    private <V> Optional<List<Inline>> words(Described record, Key<V> key, Predicate<Audience> seen) {
        return record.facts()
                .located(key)
                .map(value -> lines(key.type(), value).stream()
                        .filter(line -> seen.test(line.audience()))
                        .flatMap(line -> line.words().stream())
                        .toList())
                .filter(words -> !words.isEmpty());
    }
}
