package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Content.FactTable.Row;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.model.Country;
import bayfolio.model.Gas;
import bayfolio.model.Unit;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What holds where the coach is hired out; and a page for each other country that it may be taken to: its emergency numbers
 * first, then what is otherwise there, and what nobody knows of it.
 */
final class CountryPages {
    /** Told in another form. */
    private static final Set<Key<?>> NOT_COMPARED = Set.of(Country.NAME, Country.EMERGENCY);

    /** Of the country of the hire, renters are told these where they need them, with the coach's own things beside. */
    private static final Set<Key<?>> IN_TEXTS = Set.of(
            Country.EMERGENCY,
            Country.SIGNS,
            Country.POST,
            Country.POWER_CORD,
            Country.FOOD,
            Country.ALARMS,
            Country.GAS_TANK,
            Country.GAS_BOTTLES,
            Country.GAS_ON_ROAD,
            Country.TORNADO);

    private final CoachView view;
    private final CountryRows rows;

    CountryPages(CoachView view) {
        this.view = view;
        this.rows = new CountryRows(view);
    }

    /** All that the country of the hire says, and the way to the others. */
    Optional<Section> home(Stamp section) {
        return view.coach().country().map(country -> {
            Stamp table = section.child("facts");
            List<Row> all = Country.SHAPE.keys().stream()
                    .filter(key -> key != Country.NAME && concerns(key))
                    .flatMap(key -> rows.row(table, country, key).stream()
                            .map(row -> IN_TEXTS.contains(key) ? forStaff(row) : row))
                    .toList();
            return Section.of(
                    section,
                    title(country),
                    Stream.concat(
                                    Stream.of(
                                            view.paragraph(section.child("local"), "country.local"),
                                            new Content.FactTable(table, all)),
                                    ways(section.child("abroad")).stream())
                            .toList());
        });
    }

    private static Row forStaff(Row row) {
        return new Row(row.stamp().seenBy(Audience.STAFF), row.label(), row.lines());
    }

    /** To the pages of the other countries; none where it stays at home. */
    Optional<Content> ways(Stamp list) {
        List<Content.LinkList.Entry> entries = view.coach().abroad().stream()
                .map(country -> new Content.LinkList.Entry(
                        list.child(country.id()), view.link(target(country), title(country)), ""))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(new Content.LinkList(list, Optional.empty(), entries));
    }

    Stream<Page> pages() {
        return view.coach().abroad().stream().map(this::page);
    }

    private static Target target(Country country) {
        return new Target.OfPage("country-" + country.id());
    }

    private String title(Country country) {
        return view.words().say("page.country", "country", country.name());
    }

    private Page page(Country country) {
        Stamp page = view.stamp(PageKind.COUNTRY.node(country.id()), Audience.EVERYBODY, From.PROGRAM);
        Stamp call = page.child("call");
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of(
                call,
                view.word("call.emergency"),
                List.of(new Content.Text(
                        call.child("list"), List.of(new Block.Bullets(new Phones(view).of(country)))))));
        sections.addAll(compared(page, country));
        return new Page(
                page,
                PageKind.COUNTRY,
                target(country),
                title(country),
                List.of(view.paragraph(page.child("local"), "country.local")),
                sections,
                false);
    }

    /** Subject by subject: what is otherwise, what is the same, and what is known of the country of the hire alone. */
    private List<Section> compared(Stamp page, Country country) {
        Stamp differs = page.child("differs");
        Stamp table = differs.child("facts");
        List<Row> otherwise = new ArrayList<>();
        List<String> same = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Key<?> key : Country.SHAPE.keys()) {
            if (!NOT_COMPARED.contains(key) && concerns(key)) {
                Optional<Row> there = rows.row(table, country, key);
                Optional<Row> here = view.coach().country().flatMap(home -> rows.row(table, home, key));
                List<String> told = CountryRows.told(there);
                List<String> known = CountryRows.told(here);
                if (!told.isEmpty() && told.equals(known)) {
                    same.add(there.orElseThrow().label());
                } else {
                    there.ifPresent(otherwise::add);
                    if (told.isEmpty() && !known.isEmpty()) {
                        unknown.add(here.orElseThrow().label());
                    }
                }
            }
        }
        return Stream.of(
                        otherwise.isEmpty()
                                ? Optional.<Section>empty()
                                : Optional.of(Section.of(
                                        differs,
                                        view.word("country.otherwise"),
                                        List.of(new Content.FactTable(table, otherwise)))),
                        labels(page.child("same"), "country.same", same),
                        labels(page.child("unknown"), "country.unknown", unknown))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What is said of gas tells a coach without it nothing. */
    private boolean concerns(Key<?> key) {
        Optional<Gas.Kind> gas =
                view.unit().facts().find(Unit.GAS).map(it -> it.facts().get(Gas.KIND));
        if (key == Country.GAS_TANK) {
            return gas.filter(Gas.Kind.TANK::equals).isPresent();
        }
        if (key == Country.GAS_BOTTLES) {
            return gas.filter(Gas.Kind.CYLINDERS::equals).isPresent();
        }
        return key != Country.GAS_ON_ROAD && key != Country.GAS_CROSSINGS || gas.isPresent();
    }

    private Optional<Section> labels(Stamp section, String title, List<String> labels) {
        return labels.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        section,
                        view.word(title),
                        List.of(Content.Text.of(
                                section.child("list"),
                                new Inline.Text(view.words().row(labels))))));
    }
}
