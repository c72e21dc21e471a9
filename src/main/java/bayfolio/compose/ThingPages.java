package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.drawing.PanelView;
import bayfolio.model.Compartment;
import bayfolio.model.Thing;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Pages that are the home of things: each thing lives on exactly one of them. A compartment has a page, with the trays,
 * switches and gauges that one works standing before it; so has each connection, and each switch and gauge in the open.
 */
final class ThingPages {
    /** What is worked or read where its compartment is, and stands on the page of that. */
    private static final List<String> AT_ITS_BAY = List.of("tray", "switch", "gauge");

    private final CoachView view;
    private final ThingSection section;

    /** @param sketched what there are small drawings of */
    ThingPages(CoachView view, Set<Target> sketched) {
        this.view = view;
        this.section = new ThingSection(view, sketched);
    }

    Stream<Page> pages() {
        return Stream.of(
                        Stream.of(
                                list(PageKind.WALK_ROUND),
                                list(PageKind.SWITCHES),
                                list(PageKind.CONNECTIONS),
                                sections(PageKind.DOORS_AND_SLIDES),
                                numbers(),
                                sections(PageKind.ON_BOARD)),
                        compartments(),
                        inTheOpen("tray", PageKind.TRAY),
                        inTheOpen("switch", PageKind.SWITCH),
                        inTheOpen("gauge", PageKind.GAUGE),
                        view.things("connection").stream()
                                .map(thing -> section.page(PageKind.CONNECTION, thing, List.of())),
                        view.things("film").stream().map(thing -> section.page(PageKind.FILM, thing, List.of())))
                .flatMap(pages -> pages);
    }

    private Stream<Page> compartments() {
        Map<String, List<Thing>> inside = new LinkedHashMap<>();
        for (String kind : AT_ITS_BAY) {
            for (Thing thing : view.things(kind)) {
                view.coach()
                        .around(thing)
                        .ifPresent(bay -> inside.computeIfAbsent(bay.id(), it -> new ArrayList<>())
                                .add(thing));
            }
        }
        return view.things(Compartment.SHAPE.name()).stream()
                .map(bay -> section.page(PageKind.COMPARTMENT, bay, inside.getOrDefault(bay.id(), List.of())));
    }

    private Stream<Page> inTheOpen(String thing, PageKind kind) {
        return view.things(thing).stream()
                .filter(it -> view.coach().around(it).isEmpty())
                .map(it -> section.page(kind, it, List.of()));
    }

    /** What has pages of its own, in walking order; addresses that once led to a section of this page lead on. */
    private Page list(PageKind kind) {
        Stamp page = view.stamp(kind);
        List<Section> sections = new ArrayList<>();
        if (kind == PageKind.SWITCHES) {
            sections.addAll(panels(page));
        }
        for (String things : kind.things()) {
            List<Thing> all = view.things(things);
            if (!all.isEmpty()) {
                Stamp heading = page.child("kind-" + things);
                Stamp list = heading.child("list");
                sections.add(Section.of(
                        heading,
                        view.word("kind." + things),
                        List.of(new Content.LinkList(
                                list,
                                Optional.empty(),
                                all.stream().map(thing -> entry(list, thing)).toList()))));
            }
        }
        Plans plans = new Plans(view);
        List<Content> opening = kind == PageKind.WALK_ROUND
                ? Stream.of(
                                films(page.child("films")),
                                plans.of(page.child("plan")),
                                plans.inDanger(page.child("danger")))
                        .flatMap(Optional::stream)
                        .toList()
                : List.of();
        return page(kind, page, opening, sections);
    }

    private Optional<Content> films(Stamp list) {
        List<Thing> films = view.things("film");
        return films.isEmpty()
                ? Optional.empty()
                : Optional.of(new Content.LinkList(
                        list,
                        Optional.of(view.word("kind.film")),
                        films.stream().map(film -> view.entry(list, film, "")).toList()));
    }

    /** The panels of the coach, each with all that is on it. */
    private List<Section> panels(Stamp page) {
        List<Section> sections = new ArrayList<>();
        Sketches.panels(view).forEach((name, things) -> {
            Stamp section = page.child("panel-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"));
            sections.add(Section.of(
                    section,
                    name,
                    List.of(new Content.Drawn(
                            section.child("drawing").from(From.thing(things.get(0))),
                            view.word("drawing.panel"),
                            PanelView.of(Sketches.cells(view, name, Optional.empty())),
                            things.stream().map(CoachView::link).toList()))));
        });
        return sections;
    }

    private Content.LinkList.Entry entry(Stamp list, Thing thing) {
        Content.LinkList.Entry entry = view.entry(list, thing, view.wording().place(thing));
        return new Content.LinkList.Entry(
                entry.stamp(), entry.link(), entry.note(), Optional.of(ThingSection.anchor(thing)));
    }

    private Page sections(PageKind kind) {
        Stamp page = view.stamp(kind);
        return withContents(kind, page, things(kind, page));
    }

    private Page numbers() {
        Stamp page = view.stamp(PageKind.NUMBERS);
        List<Section> sections = new ArrayList<>(new NumberSections(view, page).sections());
        sections.addAll(things(PageKind.NUMBERS, page));
        Stamp notes = page.child("notes");
        List<Content> texts = view.texts(notes, view.notesAboutNothing());
        if (!texts.isEmpty()) {
            sections.add(Section.of(notes, view.word("notes"), texts));
        }
        return withContents(PageKind.NUMBERS, page, sections);
    }

    /** Each kind under a heading of its own. */
    private List<Section> things(PageKind kind, Stamp page) {
        List<Section> sections = new ArrayList<>();
        for (String things : kind.things()) {
            List<Thing> all = view.things(things);
            if (!all.isEmpty()) {
                sections.add(Section.of(page.child("kind-" + things), view.word("kind." + things), List.of()));
                all.forEach(thing -> sections.add(section.section(page, thing, 3)));
            }
        }
        return sections;
    }

    /** With what is on the page, in its order. */
    private Page withContents(PageKind kind, Stamp page, List<Section> sections) {
        Stamp list = page.child("on-this-page");
        Content contents = new Content.LinkList(
                list,
                Optional.of(view.word("on-this-page")),
                sections.stream()
                        .filter(section -> section.home().isPresent())
                        .map(section -> new Content.LinkList.Entry(
                                list.child(section.anchor())
                                        .from(section.stamp().from())
                                        .seenBy(section.stamp().audience()),
                                view.link(section.home().orElseThrow(), section.title()),
                                ""))
                        .toList());
        return page(kind, page, List.of(contents), sections);
    }

    private Page page(PageKind kind, Stamp page, List<Content> contents, List<Section> sections) {
        List<Content> opening = new ArrayList<>();
        opening.add(Content.Text.of(page.child("note"), new Inline.Text(view.word("page." + kind.id() + ".note"))));
        opening.addAll(contents);
        return new Page(page, kind, kind.target(), view.word("page." + kind.id()), opening, sections, false);
    }
}
