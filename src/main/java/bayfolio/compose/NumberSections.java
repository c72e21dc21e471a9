package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.model.Hire;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The figures of the coach that belong to no single thing: size, weights, seats, tires, engine,
 * power, water, gas; and what holds in its country.
 */
final class NumberSections {
    private static final Set<String> SIMPLE =
            Set.of("name", "number", "body", "model-year", "drive-side", "surge-protection", "load-management");

    private final CoachView view;
    private final Stamp page;
    private final FactRows rows;

    NumberSections(CoachView view, Stamp page) {
        this.view = view;
        this.page = page;
        this.rows = new FactRows(view);
    }

    List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        Unit unit = view.unit();
        section(
                sections,
                "coach",
                view.word("section.coach"),
                unit,
                Unit.SHAPE.keyNames().stream()
                        .filter(name -> !SIMPLE.contains(name))
                        .collect(Collectors.toUnmodifiableSet()));
        new CountryPages(view).home(page.child("country")).ifPresent(sections::add);
        for (Key<?> key : Unit.SHAPE.keys()) {
            unit.facts()
                    .find(key.name(), Described.class)
                    .ifPresent(record -> section(
                            sections, key.name(), rows.label(Unit.SHAPE, key), record, Set.of(Hire.ABROAD.name())));
        }
        return sections;
    }

    private void section(List<Section> sections, String id, String title, Described record, Set<String> elsewhere) {
        Stamp section = page.child(id);
        Stamp table = section.child("facts");
        List<Content.FactTable.Row> facts = rows.of(table, record, elsewhere);
        if (!facts.isEmpty()) {
            sections.add(Section.of(section, title, List.of(new Content.FactTable(table, facts))));
        }
    }
}
