package bayfolio.compose;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.handbook.Content;
import bayfolio.handbook.Section;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The figures of the coach that belong to no single thing: size, weights, seats, tires, engine,
 * power, water, gas; and what holds in its country.
 */
final class NumberSections {
    private final Draft draft;

    NumberSections(Draft draft) {
        this.draft = draft;
    }

    List<Section> sections() {
        FactRows rows = new FactRows(draft);
        List<Section> sections = new ArrayList<>();
        Facts unit = draft.unit().facts();
        Set<String> records = Set.copyOf(Unit.SHAPE.keyNames().stream()
                .filter(name -> !SIMPLE.contains(name))
                .toList());
        sections.add(Section.of(
                "coach", draft.word("section.coach"), List.of(new Content.FactTable(rows.of(unit, records)))));
        draft.coach()
                .country()
                .ifPresent(country -> sections.add(Section.of(
                        "country",
                        draft.word("section.country"),
                        List.of(new Content.FactTable(rows.of(country.facts(), Set.of()))))));
        for (Key<?> key : Unit.SHAPE.keys()) {
            unit.find(key.name(), Described.class).ifPresent(record -> {
                List<Content.FactTable.Row> facts = rows.of(record.facts(), Set.of());
                if (!facts.isEmpty()) {
                    sections.add(
                            Section.of(key.name(), rows.label(Unit.SHAPE, key), List.of(new Content.FactTable(facts))));
                }
            });
        }
        return sections;
    }

    private static final Set<String> SIMPLE =
            Set.of("name", "number", "body", "model-year", "drive-side", "surge-protection", "load-management");
}
