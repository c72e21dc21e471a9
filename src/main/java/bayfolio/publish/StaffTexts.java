package bayfolio.publish;

import bayfolio.check.Case;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.source.Located;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything about a coach that is written for staff, so that the audit can look for it on renters'
 * pages.
 */
final class StaffTexts {
    /** Shorter ones, such as a count, stand on pages for other reasons. */
    private static final int SHORTEST = 16;

    private final Set<String> texts = new HashSet<>();

    private StaffTexts() {}

    static Set<String> of(Case coach) {
        StaffTexts staff = new StaffTexts();
        staff.facts(coach.unit().facts(), false);
        coach.unit().facts().all(Unit.NOTES).stream()
                .filter(note -> note.facts().find(Note.STAFF_ONLY).orElse(false))
                .forEach(note -> staff.add(note.facts().get(Note.TEXT)));
        coach.procedures().stream()
                .filter(it -> !it.head().who().forRenters())
                .flatMap(StaffTexts::sentences)
                .forEach(staff::add);
        // What a renter's procedure says in the same words is no secret.
        String open = coach.procedures().stream()
                .filter(it -> it.head().who().forRenters())
                .flatMap(StaffTexts::sentences)
                .map(StaffTexts::plain)
                .collect(Collectors.joining("\n"));
        staff.texts.removeIf(open::contains);
        return staff.texts;
    }

    private void facts(Facts facts, boolean all) {
        for (Key<?> key : facts.shape().keys()) {
            facts.located(key).ifPresent(value -> value(value.value(), all || key.forStaff()));
        }
    }

    private void value(Object value, boolean staff) {
        if (value instanceof Described record) {
            facts(record.facts(), staff || record instanceof Thing thing && thing.forStaff());
        } else if (value instanceof List<?> list) {
            list.forEach(each -> value(((Located<?>) each).value(), staff));
        } else if (staff && value instanceof String text) {
            add(text);
        }
    }

    private static Stream<String> sentences(Procedure procedure) {
        return Stream.concat(
                        procedure.steps().flatMap(step -> step.text().stream()),
                        procedure.endings().stream().flatMap(ending -> ending.text().stream()))
                .filter(Block.Paragraph.class::isInstance)
                .map(block -> Inline.plain(((Block.Paragraph) block).text()));
    }

    private void add(String text) {
        String plain = plain(text);
        if (plain.length() >= SHORTEST) {
            texts.add(plain);
        }
    }

    private static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }
}
