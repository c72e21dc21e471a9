package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content.FactTable.Line;
import bayfolio.document.Content.FactTable.Row;
import bayfolio.document.From;
import bayfolio.document.Stamp;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.model.Backed;
import bayfolio.model.Country;
import bayfolio.model.EmergencyNumber;
import bayfolio.model.ForCoaches;
import bayfolio.model.ForSomeCoaches;
import bayfolio.model.PublicRule;
import bayfolio.prose.Inline;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a country says, as far as it holds for this coach: a row for each subject, each value in a sentence that tells how
 * sure it is. What is only remembered is for staff, and so is who says it.
 */
final class CountryRows {
    private final CoachView view;
    private final FactRows rows;

    CountryRows(CoachView view) {
        this.view = view;
        this.rows = new FactRows(view);
    }

    /** All that a country says of a subject, where that is something. */
    <V> Optional<Row> row(Stamp table, Country country, Key<V> key) {
        List<Line> lines = country.facts().located(key).stream()
                .flatMap(value -> lines(key, value))
                .toList();
        boolean staff = lines.stream().allMatch(line -> line.audience() == Audience.STAFF);
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Row(
                        table.child(key.name()).from(From.fact(country, key)).seenBy(Audience.staffIf(staff)),
                        rows.label(Country.SHAPE, key),
                        lines));
    }

    /** What of a row a renter reads. */
    static List<String> told(Optional<Row> row) {
        return row.stream()
                .flatMap(it -> it.lines().stream())
                .filter(line -> line.audience() != Audience.STAFF)
                .map(line -> Inline.plain(line.words()))
                .toList();
    }

    private Stream<Line> lines(Key<?> key, Located<?> value) {
        if (value.value() instanceof Backed backed) {
            return lines(backed);
        }
        if (value.value() instanceof List<?> all) {
            return all.stream().map(each -> ((Located<?>) each).value()).flatMap(each -> lines((Backed) each));
        }
        return Stream.of(line(Audience.staffIf(key.forStaff()), view.wording().of(key.type(), value)));
    }

    private Stream<Line> lines(Backed value) {
        Optional<Boolean> holds = value instanceof ForSomeCoaches some ? some.holds(view.unit()) : Optional.of(true);
        if (holds.equals(Optional.of(false))) {
            return Stream.empty();
        }
        String said = said(value);
        String limited = value instanceof ForSomeCoaches some && holds.isEmpty() ? limited(some, said) : said;
        String told = told(value, limited);
        return Stream.concat(
                Stream.of(
                        value.fromMemory()
                                ? line(Audience.STAFF, view.words().say("country.from-memory", "rule", told))
                                : line(Audience.EVERYBODY, told)),
                backed(value).map(line -> line(Audience.STAFF, line)));
    }

    private static Line line(Audience audience, String words) {
        return new Line(audience, List.of(new Inline.Text(words)));
    }

    private String said(Backed value) {
        if (value instanceof PublicRule) {
            return value.facts().get(PublicRule.RULE);
        }
        if (value instanceof EmergencyNumber number) {
            return number.number() + number.reaches().map(whom -> ": " + whom).orElse("");
        }
        Set<Key<?>> elsewhere = elsewhere(value);
        List<String> facts = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        value.facts().each((key, fact) -> {
            String words = view.wording().of(key.type(), fact);
            if (key.type() == Type.TEXT && !elsewhere.contains(key)) {
                sentences.add(words);
            } else if (!elsewhere.contains(key)) {
                facts.add(rows.label(value.facts().shape(), key) + ": " + words);
            }
        });
        return Stream.concat(
                        facts.isEmpty() ? Stream.of() : Stream.of(String.join("; ", facts) + "."), sentences.stream())
                .collect(Collectors.joining(" "));
    }

    private static Set<Key<?>> elsewhere(Backed value) {
        return Stream.concat(
                        value.backing().all(),
                        value instanceof ForSomeCoaches some ? some.forCoaches().all() : Stream.<Key<?>>of())
                .collect(Collectors.toSet());
    }

    /** Where nobody knows whether it holds, for which coaches it does. */
    private String limited(ForSomeCoaches value, String said) {
        ForCoaches keys = value.forCoaches();
        String empty = value.facts().find(keys.empty()).orElse(false) ? "yes" : "no";
        String rule = said;
        for (Key<?> key : List.of(keys.upTo(), keys.above())) {
            Optional<? extends Located<?>> limit = value.facts().located(key);
            if (limit.isPresent()) {
                rule = view.words()
                        .say(
                                "country." + key.name(),
                                "limit",
                                view.wording().of(key.type(), limit.get()),
                                "empty",
                                empty,
                                "rule",
                                rule);
            }
        }
        return rule;
    }

    private String told(Backed value, String rule) {
        Facts facts = value.facts();
        Stream<String> year = facts.find(value.backing().asReported()).stream()
                .map(reported -> view.words().say("country.as-reported", "year", reported));
        Stream<String> disputed = facts.find(value.backing().disputed()).filter(it -> it).stream()
                .map(it -> view.word("country.disputed"));
        String doubt = Stream.concat(year, disputed).collect(Collectors.joining("; "));
        return doubt.isEmpty() ? rule : rule + " (" + doubt + ")";
    }

    /** Who says so, and when that was last looked up. */
    private Stream<String> backed(Backed value) {
        return Stream.of(value.backing().source(), value.backing().checkedOn())
                .flatMap(key -> fact(value, key).stream());
    }

    private <V> Optional<String> fact(Described record, Key<V> key) {
        return record.facts()
                .located(key)
                .map(fact -> rows.label(record.facts().shape(), key) + ": "
                        + view.wording().of(key.type(), fact));
    }
}
