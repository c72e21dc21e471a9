package bayfolio.publish;

import bayfolio.check.CheckedCoach;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Wording;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Texts about a coach that are written for staff, so that the audit can look for them in renters' files: what was typed
 * a second time for renters is found in no other way.
 */
final class StaffTexts {
    /** Shorter ones, such as a count, stand on pages for other reasons; {@link Disclosures} finds them. */
    private static final int SHORTEST = 16;

    private final Wording wording;
    private final Predicate<Type<?>> types;
    private final List<Located<String>> facts = new ArrayList<>();

    private StaffTexts(Wording wording, Predicate<Type<?>> types) {
        this.wording = wording;
        this.types = types;
    }

    static Set<String> of(CheckedCoach coach) {
        Stream<String> sentences = coach.procedures().stream()
                .filter(it -> !it.head().who().forRenters())
                .flatMap(StaffTexts::sentences);
        Set<String> texts = Stream.concat(
                        facts(new Wording(coach.coach(), coach.words()), Type.Text.class::isInstance).stream()
                                .map(Located::value),
                        sentences)
                .map(StaffTexts::plain)
                .filter(text -> text.length() >= SHORTEST)
                .collect(Collectors.toCollection(HashSet::new));
        // What a renter's procedure says in the same words is no secret, nor is a step that only names one.
        String open = coach.procedures().stream()
                .filter(it -> it.head().who().forRenters())
                .flatMap(it -> Stream.concat(sentences(it), Stream.of(it.head().title() + ".")))
                .map(StaffTexts::plain)
                .collect(Collectors.joining("\n"));
        texts.removeIf(open::contains);
        return texts;
    }

    /** Every single fact for staff of some types, as pages print it. */
    static List<Located<String>> facts(Wording wording, Predicate<Type<?>> types) {
        Coach coach = wording.coach();
        StaffTexts staff = new StaffTexts(wording, types);
        staff.facts(coach.unit().facts(), false);
        staff.facts(coach.fleet().facts().facts(), false);
        coach.country().ifPresent(country -> staff.facts(country.facts(), false));
        return staff.facts;
    }

    private void facts(Facts record, boolean all) {
        record.each((key, value) -> fact(key.type(), value, all || key.forStaff()));
    }

    private void fact(Type<?> type, Located<?> value, boolean staff) {
        if (value.value() instanceof Described record) {
            facts(record.facts(), staff || record.forStaff());
        } else if (type instanceof Type.ListOf<?> list) {
            ((List<?>) value.value()).forEach(each -> fact(list.element(), (Located<?>) each, staff));
        } else if (staff && types.test(type)) {
            facts.add(new Located<>(wording.of(type, value.value()), value.at()));
        }
    }

    private static Stream<String> sentences(Procedure procedure) {
        return Stream.concat(
                        procedure.steps().flatMap(step -> step.text().stream()),
                        procedure.endings().stream().flatMap(ending -> ending.text().stream()))
                .filter(Block.Paragraph.class::isInstance)
                .map(block -> Inline.plain(((Block.Paragraph) block).text()));
    }

    private static String plain(String text) {
        return Phrases.spaced(text.strip());
    }
}
