package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.explain.Begin;
import bayfolio.fact.Type;
import bayfolio.model.Access;
import bayfolio.model.Phone;
import bayfolio.model.Reach;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.procedure.EmergencyNumbers;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.OnThePhone;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.procedure.Step;
import bayfolio.procedure.Who;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One procedure: steps, how to tell that it worked, what to do if not, and the things that it uses.
 */
final class ProcedurePage {
    private final CoachView view;

    ProcedurePage(CoachView view) {
        this.view = view;
    }

    Stream<Page> pages() {
        return view.procedures().stream().flatMap(procedure -> new Pages(procedure).pages());
    }

    /** The pages of one procedure: a new one begins wherever a reader may stop. */
    private final class Pages {
        private final Procedure procedure;
        private final PageKind kind;
        private final boolean urgent;
        private final List<List<Procedure.Part>> parts;

        /** That of the text; titles of sections and labels are in that of the handbook. */
        private final String language;

        Pages(Procedure procedure) {
            this.procedure = procedure;
            this.kind = procedure.form() == Form.TROUBLE ? PageKind.GUIDE : PageKind.PROCEDURE;
            this.urgent = procedure.head().stage() == Stage.EMERGENCY;
            this.parts = procedure.pages();
            this.language = procedure.head().language();
        }

        Stream<Page> pages() {
            return IntStream.range(0, parts.size()).mapToObj(this::page);
        }

        private Page page(int number) {
            boolean first = number == 0;
            boolean last = number == parts.size() - 1;
            Stamp page = view.stamp(
                    kind.node(procedure.id() + (first ? "" : PageKind.GOES_ON + anchor(number))),
                    CoachView.audience(procedure),
                    CoachView.from(procedure));
            List<Section> sections = new ArrayList<>();
            List<Thing> used = used(number);
            Stamp steps = page.child("steps");
            sections.add(Section.of(
                    steps,
                    view.word("steps"),
                    List.of(steps(steps.child("list").in(language), page.in(language), number))));
            if (last) {
                for (Procedure.Ending ending : procedure.endings()) {
                    String id = id(ending);
                    Stamp section = page.child(id);
                    sections.add(new Section(
                            section,
                            Optional.of(new Target.OfPart(procedure.id(), id)),
                            view.word(id),
                            2,
                            List.of(new Content.Text(
                                    section.child("text").in(language), urgent ? shorter(ending) : ending.text()))));
                }
            } else {
                sections.add(rest(page.child("safe-to-stop"), number, used.isEmpty()));
            }
            if (!urgent) {
                if (first) {
                    procedure.head().facts().all(Head.ANSWERS).stream()
                            .flatMap(question -> view
                                    .workedOut()
                                    .quoted(
                                            page,
                                            question,
                                            procedure
                                                    .head()
                                                    .facts()
                                                    .find(Head.BEGINS_WITH)
                                                    .orElse(Begin.USUAL))
                                    .stream())
                            .forEach(sections::add);
                }
                view.links(
                                page.child("things"),
                                "things",
                                list -> used.stream()
                                        .map(thing -> view.entry(
                                                list, thing, view.wording().place(thing))))
                        .ifPresent(sections::add);
            }
            return new Page(
                    page.in(language), kind, target(number), title(number), opening(page, number), sections, urgent);
        }

        /** In danger nobody scrolls: the steps have said already whom to phone abroad. */
        private List<Block> shorter(Procedure.Ending ending) {
            return ending.text().stream()
                    .map(block -> stepsDial() && block instanceof Block.Paragraph paragraph
                            ? new Block.Paragraph(
                                    new EmergencyNumbers(view.coach(), view.words()).atHome(paragraph.text()))
                            : block)
                    .toList();
        }

        private boolean stepsDial() {
            return procedure
                    .steps()
                    .flatMap(step -> step.text().stream())
                    .flatMap(Block::links)
                    .anyMatch(link -> link.target() instanceof Target.OfPhone phone
                            && phone.id().equals(Phone.EMERGENCY));
        }

        private List<Content> opening(Stamp page, int number) {
            List<Content> opening = new ArrayList<>();
            if (view.foreign(language)) {
                opening.add(new Content.Mark(page.child("foreign"), "foreign", view.word("foreign")));
            }
            if (!urgent) {
                procedure
                        .head()
                        .facts()
                        .find(Head.SYSTEM)
                        .map(system -> view.chip(page, system))
                        .ifPresent(opening::add);
                marks(procedure).map(who -> mark(page, who)).forEach(opening::add);
            }
            if (number > 0) {
                opening.add(Content.Text.of(
                        page.child("after"),
                        new Inline.Text(view.word("steps.after") + " "),
                        view.link(target(number - 1), title(number - 1)),
                        new Inline.Text(".")));
                return opening;
            }
            if (procedure.head().facts().has(Head.SOURCES)) {
                opening.add(sources(page.child("sources").seenBy(Audience.STAFF), procedure));
            }
            if (!procedure.opening().isEmpty()) {
                opening.add(new Content.Text(page.child("opening").in(language), procedure.opening()));
            }
            return opening;
        }

        /** Why a reader may stop here, the way on, and the way out. */
        private Section rest(Stamp section, int number, boolean usesNothing) {
            List<Procedure.Part> page = parts.get(number);
            Stamp list = section.child("list");
            List<Content.LinkList.Entry> ways = new ArrayList<>();
            ways.add(new Content.LinkList.Entry(
                    list.child("next"),
                    view.link(target(number + 1), title(number + 1)),
                    view.word("steps.next"),
                    Optional.of("things").filter(it -> number == 0 && usesNothing)));
            // Before the page was divided its endings were here.
            procedure.endings().forEach(ending -> {
                String id = id(ending);
                ways.add(new Content.LinkList.Entry(
                        list.child(id),
                        view.link(new Target.OfPart(procedure.id(), id), view.word(id)),
                        "",
                        Optional.of(id).filter(it -> number == 0)));
            });
            return Section.of(
                    section,
                    view.word("safe-to-stop"),
                    List.of(
                            new Content.Text(
                                    section.child("text").in(language),
                                    page.get(page.size() - 1).rest()),
                            new Content.LinkList(list, Optional.empty(), ways)));
        }

        private Target target(int number) {
            return number == 0
                    ? new Target.OfProcedure(procedure.id())
                    : new Target.OfPart(procedure.id(), anchor(number));
        }

        private String title(int number) {
            return number == 0
                    ? procedure.head().title()
                    : parts.get(number).get(0).title().orElse(procedure.head().title());
        }

        /** A page that a writer named by none is told, and not published. */
        private String anchor(int number) {
            return parts.get(number).get(0).anchor().orElse("page-" + (number + 1));
        }

        /** A step is named after the page, since links lead to it. */
        private Content steps(Stamp list, Stamp page, int number) {
            List<Procedure.Part> shown = parts.get(number);
            return new Content.Steps(
                    list,
                    procedure.head().facts().find(Head.TICKED).orElse(false),
                    shown.stream()
                            .map(part -> new Content.Steps.Part(
                                    list.child(part.name()),
                                    // The page bears the title of its first part.
                                    part.title().filter(title -> number == 0 || part != shown.get(0)),
                                    part.steps().stream()
                                            .map(step -> step(page.child("step-" + step.id()), step, procedure.head()))
                                            .toList()))
                            .toList());
        }

        /** The things that a page speaks of, each once. */
        private List<Thing> used(int number) {
            Stream<Block> blocks = Stream.of(
                            number == 0 ? procedure.opening().stream() : Stream.<Block>of(),
                            parts.get(number).stream().flatMap(Procedure::blocks),
                            number == parts.size() - 1
                                    ? procedure.endings().stream().flatMap(ending -> ending.text().stream())
                                    : Stream.<Block>of())
                    .flatMap(it -> it);
            return blocks.flatMap(Block::links)
                    .map(Inline.Link::target)
                    .filter(Target.OfThing.class::isInstance)
                    .map(Target.OfThing.class::cast)
                    .distinct()
                    .flatMap(target -> view.coach().thing(target.kind(), target.id()).stream())
                    .toList();
        }
    }

    private static String id(Procedure.Ending ending) {
        return ending.title().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private Content.Steps.Step step(Stamp stamp, Step step, Head head) {
        Map<Signal, Integer> told = new EnumMap<>(Signal.class);
        ActAndPlaces parts = new ActAndPlaces(stamp, step.text(), view::word);
        return new Content.Steps.Step(
                stamp,
                List.of(),
                step.hazards().stream()
                        .map(hazard -> new Content.Steps.Hazard(
                                stamp.child(Type.word(hazard.signal())
                                        + (told.merge(hazard.signal(), 1, Integer::sum) == 1
                                                ? ""
                                                : "-" + told.get(hazard.signal()))),
                                hazard.signal(),
                                hazard.text()))
                        .toList(),
                parts.act(),
                parts.any(),
                parts.where(),
                parts.known(),
                parts.answers(),
                parts.more(),
                readOut(stamp, step, head));
    }

    /** What staff have to say to a renter at this step. */
    private List<Content.Steps.ReadOut> readOut(Stamp stamp, Step step, Head head) {
        return head.facts().all(Head.ON_THE_PHONE).stream()
                .filter(each -> each.facts().get(OnThePhone.STEP).equals(step.id()))
                .flatMap(each -> each.said(view.coach()))
                .map(said -> readOut(stamp, said))
                .toList();
    }

    private Content.Steps.ReadOut readOut(Stamp step, OnThePhone.Said said) {
        Optional<Thing> thing =
                Optional.of(said.record()).filter(Thing.class::isInstance).map(Thing.class::cast);
        return new Content.Steps.ReadOut(
                step.child("read-out-" + said.key().name()
                                + thing.map(it -> "-" + it.id()).orElse(""))
                        .from(From.fact(said.record(), said.key()))
                        .seenBy(Audience.STAFF)
                        .in(view.language(
                                said.record().facts().located(said.key()).orElseThrow())),
                thing.map(it -> view.words().say("step.on-the-phone-of", "thing", it.name()))
                        .orElseGet(() -> view.word("step.on-the-phone")),
                new FactRows(view).plain(said.record(), said.key()));
    }

    /** Who may do it; alone only where nothing in it takes a second person or a call to us. */
    private Stream<String> marks(Procedure procedure) {
        boolean renter = procedure.head().who() == Who.RENTER;
        boolean helper = needsHelper(procedure) || renter && goesOnWith(procedure, ProcedurePage::needsHelper);
        boolean calls = renter
                && (procedure
                                .links()
                                .map(Inline.Link::target)
                                .anyMatch(Reach.all(Access.ON_CALL, view.coach())::contains)
                        || goesOnWith(procedure, it -> it.head().who() == Who.ON_CALL));
        return Stream.of(
                        renter && (helper || calls)
                                ? ""
                                : Type.word(procedure.head().who()),
                        helper ? "helper" : "",
                        calls ? "calls" : "")
                .filter(mark -> !mark.isEmpty());
    }

    private static boolean needsHelper(Procedure procedure) {
        return procedure.head().facts().find(Head.HELPER).orElse(false);
    }

    /** Whether a step goes on with another procedure that is so. */
    private boolean goesOnWith(Procedure procedure, Predicate<Procedure> so) {
        Set<Target> targets = new HashSet<>();
        procedure
                .steps()
                .forEach(step -> step.text().forEach(block -> block.links(link -> targets.add(link.target()))));
        return view.procedures().stream()
                .anyMatch(it -> targets.contains(new Target.OfProcedure(it.id())) && so.test(it));
    }

    private Content mark(Stamp page, String who) {
        return new Content.Mark(page.child("who-" + who), "who-" + who, view.word("who." + who));
    }

    /** What backs it, for staff to look up. */
    private Content sources(Stamp table, Procedure procedure) {
        List<Content.FactTable.Line> titles = procedure.head().facts().all(Head.SOURCES).stream()
                .flatMap(id -> view.coach().fleet().source(id).stream())
                .map(source -> new Content.FactTable.Line(
                        Audience.EVERYBODY,
                        List.of(new Inline.Text(source.status()
                                .map(status -> view.words()
                                        .say(
                                                "cited",
                                                "source",
                                                source.title(),
                                                "status",
                                                view.word(Wording.key(status))))
                                .orElseGet(source::title)))))
                .toList();
        String label = new FactRows(view).label(Head.SHAPE, Head.SOURCES);
        return new Content.FactTable(table, List.of(new Content.FactTable.Row(table.child("titles"), label, titles)));
    }
}
