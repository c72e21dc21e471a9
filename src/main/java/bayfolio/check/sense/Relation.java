package bayfolio.check.sense;

import bayfolio.fact.Described;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.Severity;
import bayfolio.measure.Quantity;
import bayfolio.model.Coach;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/**
 * Two facts that must agree: where they are, when they do, and what is told when they do not. Each has a page of
 * examples under its code, as a rule has.
 *
 * @param message with {@code {about}}, {@code {1}} and {@code {2}} for what states the first, and both as written
 */
record Relation<A, B>(
        String code,
        Severity severity,
        Pairs<A, B> pairs,
        BiPredicate<? super A, ? super B> agree,
        String message,
        String mend) {

    /** What cannot be. */
    static <A, B> Relation<A, B> error(
            String code, Pairs<A, B> pairs, BiPredicate<? super A, ? super B> agree, String message, String mend) {
        return new Relation<>(code, Severity.ERROR, pairs, agree, message, mend);
    }

    /** What hardly ever is. */
    static <A, B> Relation<A, B> warning(
            String code, Pairs<A, B> pairs, BiPredicate<? super A, ? super B> agree, String message, String mend) {
        return new Relation<>(code, Severity.WARNING, pairs, agree, message, mend);
    }

    /** What is worth a question. */
    static <A, B> Relation<A, B> note(
            String code, Pairs<A, B> pairs, BiPredicate<? super A, ? super B> agree, String message, String mend) {
        return new Relation<>(code, Severity.NOTE, pairs, agree, message, mend);
    }

    Stream<Finding> check(Records records) {
        return pairs.of(records)
                .filter(pair -> !agree.test(pair.first().value(), pair.second().value()))
                .map(pair -> finding(pair, records.coach()));
    }

    private Finding finding(Pairs.Pair<A, B> pair, Coach coach) {
        Place at = pair.first().at();
        String told = message.replace("{about}", pair.about())
                .replace("{1}", shown(pair.first(), coach))
                .replace("{2}", shown(pair.second(), coach));
        return new Finding(code, severity, at, told, List.of(), Optional.of(mend), List.of());
    }

    private static String shown(Located<?> fact, Coach coach) {
        Object value = fact.value();
        if (value instanceof Quantity quantity) {
            return quantity.in(coach.unit().region().first());
        }
        if (value instanceof Described record) {
            return Records.naming(record);
        }
        if (value instanceof Enum<?> word) {
            return "`" + Type.word(word) + "`";
        }
        return value instanceof Boolean yes ? (yes ? "`yes`" : "`no`") : "`" + value + "`";
    }
}
