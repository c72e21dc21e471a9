package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.check.CheckedCoach;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Facts;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.CoachSystem;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.WalkingOrder;
import bayfolio.model.Word;
import bayfolio.model.Wording;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What pages ask for in common while the handbook of a coach is composed. */
final class CoachView {
    private final Coach coach;
    private final List<Procedure> procedures;
    private final List<Procedure> stages;
    private final Catalog screen;
    private final Wording wording;
    private final WorkedOut workedOut;
    private final Predicate<Located<?>> made;
    private final Map<String, List<Thing>> byKind = new HashMap<>();
    private final Map<Target, Set<Procedure>> uses = new LinkedHashMap<>();
    private final Map<Target, Map<Thing, Audience>> mentions = new LinkedHashMap<>();

    CoachView(CheckedCoach checked) {
        this.coach = checked.told();
        this.made = checked.library().translations().facts()::made;
        this.procedures = checked.procedures().stream()
                .filter(procedure -> procedure.form().hasSteps())
                .toList();
        this.stages = checked.procedures().stream()
                .filter(procedure -> !procedure.form().hasSteps())
                .toList();
        this.screen = checked.words();
        this.wording = new Wording(coach, screen);
        for (Procedure procedure : procedures) {
            procedure
                    .links()
                    .forEach(link -> uses.computeIfAbsent(link.target(), it -> new LinkedHashSet<>())
                            .add(procedure));
        }
        coach.things().forEach(thing -> {
            mention(thing, thing.facts().forRenters(), audience(thing));
            mention(thing, thing.facts(), Audience.STAFF);
        });
        this.workedOut = new WorkedOut(this);
    }

    /** What a fact for staff alone names, is named for them alone. */
    private void mention(Thing thing, Facts facts, Audience audience) {
        FactVisitor.of(facts, (type, value) -> {
            if (type instanceof Type.Reference reference) {
                coach.referred(reference, value.value().toString())
                        .ifPresent(named -> mentions.computeIfAbsent(target(named), it -> new LinkedHashMap<>())
                                .putIfAbsent(thing, audience));
            }
        });
    }

    /** Where a page stands, and who reads it. */
    Stamp stamp(NodeId page, Audience audience, From from) {
        return new Stamp(page, audience, from, screen.language());
    }

    Stamp stamp(PageKind kind) {
        return stamp(kind.node(), kind.audience(), From.PROGRAM);
    }

    static Audience audience(Described record) {
        return Audience.staffIf(record.forStaff());
    }

    static Audience audience(Procedure procedure) {
        return Audience.staffIf(!procedure.head().who().forRenters());
    }

    static From from(Procedure procedure) {
        return From.text(
                procedure.form().scheme(),
                procedure.id(),
                !procedure.head().who().forRenters(),
                procedure.head().facts().at());
    }

    WorkedOut workedOut() {
        return workedOut;
    }

    Coach coach() {
        return coach;
    }

    Unit unit() {
        return coach.unit();
    }

    Wording wording() {
        return wording;
    }

    /** All of them, trouble guides too. */
    List<Procedure> procedures() {
        return procedures;
    }

    /** What a fleet writes about a part of the trip: questions and where they are answered. */
    Optional<Procedure> about(Stage stage) {
        return stages.stream().filter(it -> it.head().stage() == stage).findFirst();
    }

    Stream<Procedure> procedures(Form form) {
        return procedures.stream().filter(procedure -> procedure.form() == form);
    }

    /** Of the text of a fact of the coach or the fleet. */
    String language(Located<?> text) {
        return made.test(text)
                ? screen.language()
                : unit().facts().find(Unit.WRITTEN_IN).orElse(screen.language());
    }

    /** Of the name of a thing. */
    String language(Thing thing) {
        return thing.facts()
                .located(thing.identity().name())
                .map(this::language)
                .orElseGet(screen::language);
    }

    /** Of the text of a word, which all fleets share; that of a region reads the others. */
    String language(Word word) {
        boolean translated = word.facts().located(Word.MEANING).filter(made).isPresent();
        return translated || !foreign(Head.LANGUAGE_OF_SHARED) ? screen.language() : Head.LANGUAGE_OF_SHARED;
    }

    /** That not all of a page is in the language of the handbook. */
    Content notice(Page page, Audience reader) {
        return new Content.Mark(
                page.stamp().child("foreign").in(screen.language()).seenBy(reader), "foreign", word("foreign-in-part"));
    }

    /** Whether a text is in another language than the handbook; a regional one is not. */
    boolean foreign(String language) {
        return !language.equals(screen.language()) && !Catalogs.main(language).equals(Catalogs.main(screen.language()));
    }

    Catalog words() {
        return screen;
    }

    String word(String key) {
        return screen.say(key);
    }

    /** A section of links; none where there is nothing to link to. */
    Optional<Section> links(Stamp section, String key, Function<Stamp, Stream<Content.LinkList.Entry>> entries) {
        Stamp list = section.child("list");
        List<Content.LinkList.Entry> all = entries.apply(list).toList();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Section.of(section, word(key), List.of(new Content.LinkList(list, Optional.empty(), all))));
    }

    /** What something belongs to, in a word that must be seen at once. */
    Content chip(Stamp stamp, CoachSystem system) {
        String word = Type.word(system);
        return new Content.Mark(stamp.child("system"), "system-" + word, word("system." + word));
    }

    /** Words of the catalog as a paragraph. */
    Content paragraph(Stamp stamp, String key) {
        return Content.Text.of(stamp, new Inline.Text(word(key)));
    }

    Optional<String> maybeWord(String key) {
        return screen.find(key);
    }

    /** Things of a kind in walking order, those of the site last. */
    List<Thing> things(String kind) {
        return byKind.computeIfAbsent(kind, this::inOrder);
    }

    private List<Thing> inOrder(String kind) {
        List<Thing> things = new ArrayList<>(new WalkingOrder(unit())
                .order(coach.unit()
                        .things()
                        .filter(thing -> thing.kind().equals(kind))
                        .toList()));
        coach.fleet().siteThings().filter(thing -> thing.kind().equals(kind)).forEach(things::add);
        return List.copyOf(things);
    }

    List<Note> notes(Thing about) {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note ->
                        note.facts().find(Note.ABOUT).filter(about.id()::equals).isPresent())
                .toList();
    }

    List<Note> notesAboutNothing() {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note -> !note.facts().has(Note.ABOUT))
                .toList();
    }

    /** Notes as paragraphs, those for staff by themselves. */
    List<Content> texts(Stamp stamp, List<Note> notes) {
        return Stream.of(Audience.EVERYBODY, Audience.STAFF)
                .flatMap(audience -> {
                    List<Block> paragraphs = notes.stream()
                            .filter(note -> audience(note) == audience)
                            .<Block>map(note -> new Block.Paragraph(
                                    List.of(new Inline.Text(note.facts().get(Note.TEXT)))))
                            .toList();
                    return paragraphs.isEmpty()
                            ? Stream.of()
                            : Stream.<Content>of(new Content.Text(
                                    stamp.child(audience == Audience.STAFF ? "notes-for-staff" : "notes")
                                            .seenBy(audience)
                                            .in(language(notes.get(0)
                                                    .facts()
                                                    .located(Note.TEXT)
                                                    .orElseThrow())),
                                    paragraphs));
                })
                .toList();
    }

    static Target target(Thing thing) {
        return new Target.OfThing(thing.kind(), thing.id());
    }

    static Inline.Link link(Thing thing) {
        return link(target(thing), thing.name(), thing.at());
    }

    static Inline.Link link(Procedure procedure) {
        return link(
                new Target.OfProcedure(procedure.id()),
                procedure.head().title(),
                procedure.head().facts().at());
    }

    static Inline.Link link(Target target, String words, Place at) {
        return new Inline.Link(target, List.of(new Inline.Text(words)), at);
    }

    /** A link that no writer wrote. */
    Inline.Link link(Target target, String words) {
        return link(target, words, unit().facts().at());
    }

    /** An entry of a list of things. */
    Content.LinkList.Entry entry(Stamp list, Thing thing, String note) {
        return new Content.LinkList.Entry(
                list.child(thing.kind() + "-" + thing.id())
                        .from(From.thing(thing))
                        .seenBy(audience(thing))
                        .in(language(thing)),
                link(thing),
                note);
    }

    /** An entry of a list of procedures. */
    Content.LinkList.Entry entry(Stamp list, Procedure procedure, String note) {
        return new Content.LinkList.Entry(
                list.child(procedure.form().scheme() + "-" + procedure.id())
                        .from(from(procedure))
                        .seenBy(audience(procedure))
                        .in(procedure.head().language()),
                link(procedure),
                note);
    }

    List<Procedure> uses(Target target) {
        return List.copyOf(uses.getOrDefault(target, Set.of()));
    }

    /** What names a thing, and to whom. */
    Map<Thing, Audience> mentions(Thing thing) {
        return mentions.getOrDefault(target(thing), Map.of());
    }
}
