package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Door;
import bayfolio.model.Thing;
import bayfolio.procedure.EmergencyNumbers;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What fits on one side of a card: danger and the first hour, what a helper on the phone asks for, what is looked at through
 * the windshield.
 */
final class CardPages {
    /** What a helper asks for, by its role, in the order in which it counts. */
    private static final List<String> AT_HAND = List.of(
            "fire-extinguisher",
            "first-aid-kit",
            "lp-main-valve",
            "gas-cylinder-valve",
            "house-battery-switch",
            "chassis-battery-switch",
            "coach-main-breaker");

    private static final List<String> HOSES = List.of("drinking-hose", "sewer-hose");

    /** On a card stands what may hurt; what may only break stands with the steps themselves. */
    private static final Set<Signal> HURTING = EnumSet.of(Signal.DANGER, Signal.WARNING);

    private final CoachView view;
    private final List<Page> procedures;
    private final EmergencyNumbers numbers;

    /** @param procedures their pages, as they were composed */
    CardPages(CoachView view, List<Page> procedures) {
        this.view = view;
        this.procedures = procedures;
        this.numbers = new EmergencyNumbers(view.coach(), view.words());
    }

    Stream<Page> pages() {
        return Stream.of(night(), phone(), quick());
    }

    private Page page(PageKind kind, List<Section> sections) {
        return new Page(
                view.stamp(kind), kind, kind.target(), view.word("page." + kind.id()), List.of(), sections, false);
    }

    private Page night() {
        Stamp page = view.stamp(PageKind.NIGHT_CARD);
        List<Section> sections = new ArrayList<>();
        sections.add(call(page.child("call")));
        view.procedures().stream()
                .filter(procedure -> procedure.head().facts().find(Head.ON_CARD).orElse(false))
                .sorted(Comparator.comparing(procedure -> procedure.head().stage() != Stage.EMERGENCY))
                .map(procedure -> inShort(page.child("do-" + procedure.id()), procedure))
                .forEach(sections::add);
        Stream<Thing> ways = view.things(Door.SHAPE.name()).stream()
                .filter(door -> CoachView.audience(door) != Audience.STAFF)
                .filter(door -> door.roles().contains("entry-door")
                        || door.facts().find(Door.EMERGENCY).orElse(false));
        places(
                        page.child("ways-out"),
                        "card.ways-out",
                        Stream.concat(ways, holding(List.of("fire-extinguisher", "first-aid-kit"))))
                .ifPresent(sections::add);
        return page(PageKind.NIGHT_CARD, sections);
    }

    /** The steps of a procedure with where and how it looks; all else stands with the steps themselves. */
    private Section inShort(Stamp section, Procedure procedure) {
        Stamp from = section.from(CoachView.from(procedure)).in(procedure.head().language());
        Target home = new Target.OfProcedure(procedure.id());
        List<Content.Steps.Step> steps = procedures.stream()
                .filter(page -> page.home().equals(home)
                        || page.home() instanceof Target.OfPart part
                                && part.procedure().equals(procedure.id()))
                .flatMap(Node::walk)
                .filter(Content.Steps.Step.class::isInstance)
                .map(Content.Steps.Step.class::cast)
                .map(step -> inShort(from, step))
                .toList();
        Stamp list = from.child("list");
        if (procedure.head().stage() == Stage.EMERGENCY) {
            return Section.of(from, procedure.head().title(), List.of(inOneGo(list, steps)));
        }
        return Section.of(
                from,
                procedure.head().title(),
                List.of(new Content.Steps(
                        list, false, List.of(new Content.Steps.Part(list.child("steps"), Optional.empty(), steps)))));
    }

    /** In danger nobody reads a list: one act after the other, what may hurt before what it guards. */
    private Content inOneGo(Stamp text, List<Content.Steps.Step> steps) {
        List<Inline> all = new ArrayList<>();
        for (Content.Steps.Step step : steps) {
            step.hazards().forEach(hazard -> {
                all.add(new Inline.Strong(
                        List.of(new Inline.Text(view.word("signal." + Type.word(hazard.signal())) + ": "))));
                add(hazard.text(), all);
            });
            add(step.act(), all);
        }
        return Content.Text.of(text, all.toArray(Inline[]::new));
    }

    private void add(List<Block> blocks, List<Inline> to) {
        blocks.forEach(block -> {
            if (block instanceof Block.Paragraph paragraph) {
                // Those of other countries stand at the head of the card, once for all.
                to.addAll(numbers.atHome(paragraph.text()));
                to.add(new Inline.Text(" "));
            }
        });
    }

    private static Content.Steps.Step inShort(Stamp section, Content.Steps.Step step) {
        Stamp stamp = section.child(step.id().within());
        return new Content.Steps.Step(
                stamp,
                List.of(),
                step.hazards().stream()
                        .filter(hazard -> HURTING.contains(hazard.signal()))
                        .map(hazard -> new Content.Steps.Hazard(
                                within(stamp, hazard.id().within()), hazard.signal(), hazard.text()))
                        .toList(),
                step.act(),
                step.any(),
                step.where().stream()
                        .map(where -> new Content.Steps.Where(
                                within(stamp, where.id().within()),
                                where.thing(),
                                where.place(),
                                where.pieces().stream()
                                        .filter(piece -> piece.sort() == Block.Sort.LOOK)
                                        .toList()))
                        .toList(),
                List.of(),
                List.of(),
                List.of());
    }

    /** Below a step, by the last part of the name that it has with the step itself. */
    private static Stamp within(Stamp step, String name) {
        return step.child(name.substring(name.lastIndexOf('.') + 1));
    }

    private Page phone() {
        Stamp page = view.stamp(PageKind.PHONE_CARD);
        Stamp read = page.child("read-out");
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of(
                read,
                view.word("home.read-out"),
                List.of(new Content.FactTable(
                        read.child("list"),
                        Stream.concat(
                                        new ReadOut(view).helper(read.child("list")).stream(),
                                        holding(HOSES).map(thing -> place(read.child("list"), thing)))
                                .toList()))));
        places(page.child("places"), "card.places", holding(AT_HAND)).ifPresent(sections::add);
        sections.add(call(page.child("call")));
        return page(PageKind.PHONE_CARD, sections);
    }

    private Page quick() {
        Stamp page = view.stamp(PageKind.QUICK_CARD);
        Stamp glance = page.child("glance");
        return page(
                PageKind.QUICK_CARD,
                List.of(
                        Section.of(
                                glance,
                                view.word("card.glance"),
                                List.of(new Content.FactTable(
                                        glance.child("list"), new ReadOut(view).glance(glance.child("list"))))),
                        call(page.child("call"))));
    }

    private Section call(Stamp call) {
        return Section.of(call, view.word("home.call"), List.of(new Phones(view).content(call.child("list"))));
    }

    /** What renters know of, in the order of the roles, each once. */
    private Stream<Thing> holding(List<String> roles) {
        return roles.stream()
                .flatMap(role ->
                        view.coach().walked().filter(thing -> thing.roles().contains(role)))
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .distinct();
    }

    /** Things and where they are; none where there is nothing. */
    private Optional<Section> places(Stamp section, String title, Stream<Thing> things) {
        Stamp list = section.child("list");
        List<Content.FactTable.Row> rows =
                things.map(thing -> place(list, thing)).toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(section, view.word(title), List.of(new Content.FactTable(list, rows))));
    }

    private Content.FactTable.Row place(Stamp table, Thing thing) {
        String place = view.wording().place(thing);
        return Content.FactTable.Row.of(
                table.child(thing.kind() + "-" + thing.id())
                        .from(From.thing(thing))
                        .in(view.language(thing)),
                thing.name(),
                place.isEmpty() ? view.word("card.no-place") : place);
    }
}
