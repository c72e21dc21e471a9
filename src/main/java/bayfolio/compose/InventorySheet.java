package bayfolio.compose;

import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Compartment;
import bayfolio.model.Item;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is on board: papers, keys and what is topped up first, then by place in walking order, so that nobody runs round
 * twice. What a thing is needed for, the procedures say.
 */
final class InventorySheet {
    /** Of the procedures that need a thing, those that are named; of the others the number. */
    private static final int NAMED = 2;

    private static final Set<String> SUPPLIES = Set.of("disposable-gloves", "toilet-fluid");

    private final CoachView view;
    private final Sheet sheet;

    InventorySheet(CoachView view) {
        this.view = view;
        this.sheet = new Sheet(view);
    }

    Page page() {
        return sheet.page(PageKind.INVENTORY, this::sections);
    }

    private List<Section> sections(Stamp page) {
        Map<Item.CountedWith, List<Thing>> bySort = new LinkedHashMap<>();
        Map<Optional<Compartment>, List<Thing>> byPlace = new LinkedHashMap<>();
        for (Thing item : view.things("item")) {
            countedWith(item)
                    .map(sort -> bySort.computeIfAbsent(sort, it -> new ArrayList<>()))
                    .orElseGet(() -> byPlace.computeIfAbsent(view.coach().around(item), it -> new ArrayList<>()))
                    .add(item);
        }
        List<Section> sections = new ArrayList<>();
        for (Item.CountedWith sort : Item.CountedWith.values()) {
            List<Thing> items = bySort.getOrDefault(sort, List.of());
            if (!items.isEmpty()) {
                String word = Type.word(sort);
                sections.add(section(page.child(word), view.word("sheet." + word), items));
            }
        }
        byPlace.forEach((place, items) -> sections.add(section(
                page.child("place-" + place.map(Thing::id).orElse("coach")),
                place.map(Thing::name).orElse(view.word("section.coach")),
                items)));
        return sections;
    }

    private static Optional<Item.CountedWith> countedWith(Thing item) {
        return item.facts()
                .find(Item.COUNTED_WITH)
                .or(() -> item.roles().contains("key-set")
                        ? Optional.of(Item.CountedWith.KEYS)
                        : Optional.of(Item.CountedWith.SUPPLIES)
                                .filter(it -> item.roles().stream().anyMatch(SUPPLIES::contains)));
    }

    private Section section(Stamp section, String title, List<Thing> items) {
        return sheet.section(
                section,
                title,
                List.of(
                        "sheet.item",
                        "sheet.count",
                        "sheet.bag",
                        "sheet.price",
                        "sheet.needed-by",
                        "sheet.out",
                        "sheet.back"),
                items.stream().map(this::line).toList());
    }

    private List<List<Inline>> line(Thing item) {
        return List.of(
                Sheet.cell(item),
                Sheet.cell(item.facts().find(Item.COUNT).map(String::valueOf).orElse("1")),
                Sheet.cell(item.facts()
                        .find(Item.BAG)
                        .map(Wording::key)
                        .map(view::word)
                        .orElse("")),
                Sheet.cell(item.facts().find(Item.REPLACEMENT_PRICE).orElse("")),
                neededBy(item),
                Sheet.cell(""),
                Sheet.cell(""));
    }

    /** The procedures that use it, in the order of the trip. */
    private List<Inline> neededBy(Thing item) {
        List<Procedure> all = view.uses(CoachView.target(item));
        List<Inline> cell = new ArrayList<>();
        for (Procedure procedure : all.subList(0, Math.min(NAMED, all.size()))) {
            if (!cell.isEmpty()) {
                cell.add(new Inline.Text("; "));
            }
            cell.add(CoachView.link(procedure));
        }
        if (all.size() > NAMED) {
            cell.add(new Inline.Text("; " + view.words().say("sheet.and-more", "count", all.size() - NAMED)));
        }
        return cell.isEmpty() ? Sheet.cell("") : cell;
    }
}
