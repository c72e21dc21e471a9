package bayfolio.compose;

import bayfolio.check.Case;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.handbook.Content;
import bayfolio.handbook.Copy;
import bayfolio.model.Coach;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Walk;
import bayfolio.model.Wording;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.ScreenWords;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** One copy of the handbook of a coach while it is composed: what pages ask for in common. */
final class Draft {
    private final Coach coach;
    private final Copy copy;
    private final List<Procedure> procedures;
    private final List<Procedure> stages;
    private final ScreenWords screen;
    private final Wording wording;
    private final WorkedOut workedOut;
    private final Map<Target, Set<Procedure>> uses = new LinkedHashMap<>();
    private final Map<Target, Set<Thing>> mentions = new LinkedHashMap<>();

    Draft(Case checked, ScreenWords screen, Copy copy) {
        this.coach = checked.coach();
        this.copy = copy;
        List<Procedure> seen = checked.procedures().stream()
                .filter(procedure ->
                        copy == Copy.STAFF || procedure.head().who().forRenters())
                .toList();
        this.procedures =
                seen.stream().filter(procedure -> procedure.form().hasSteps()).toList();
        this.stages =
                seen.stream().filter(procedure -> !procedure.form().hasSteps()).toList();
        this.screen = screen;
        this.wording = new Wording(coach);
        for (Procedure procedure : procedures) {
            procedure
                    .links()
                    .forEach(link -> uses.computeIfAbsent(link.target(), it -> new LinkedHashSet<>())
                            .add(procedure));
        }
        coach.things().filter(this::shows).forEach(this::mention);
        this.workedOut = new WorkedOut(this);
    }

    private void mention(Thing thing) {
        Walkthrough.of(thing.facts(), (type, value) -> {
            if (type instanceof Type.Reference reference) {
                wording.referred(reference, value.value().toString())
                        .ifPresent(named -> mentions.computeIfAbsent(target(named), it -> new LinkedHashSet<>())
                                .add(thing));
            }
        });
    }

    WorkedOut workedOut() {
        return workedOut;
    }

    Copy copy() {
        return copy;
    }

    /** Whether readers of this copy may see it. */
    boolean shows(Described record) {
        return copy == Copy.STAFF || !record.forStaff();
    }

    boolean shows(Key<?> key) {
        return copy == Copy.STAFF || !key.forStaff();
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

    /** Those that the reader of this copy may see, trouble guides too. */
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

    String word(String key) {
        return screen.of(key);
    }

    /** Screen words as a paragraph. */
    Content paragraph(String key) {
        return new Content.Text(new Block.Paragraph(List.of(new Inline.Text(word(key)))));
    }

    Optional<String> maybeWord(String key) {
        return screen.find(key);
    }

    /** Things of a kind in walking order, those of the site last. */
    List<Thing> things(String kind) {
        List<Thing> things = new ArrayList<>(new Walk(unit())
                .order(coach.unit()
                        .things()
                        .filter(thing -> thing.kind().equals(kind))
                        .toList()));
        coach.fleet().siteThings().filter(thing -> thing.kind().equals(kind)).forEach(things::add);
        return things.stream().filter(this::shows).toList();
    }

    List<Note> notes(Thing about) {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note ->
                        note.facts().find(Note.ABOUT).filter(about.id()::equals).isPresent())
                .filter(this::shows)
                .toList();
    }

    List<Note> notesAboutNothing() {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note -> !note.facts().has(Note.ABOUT))
                .filter(this::shows)
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

    List<Procedure> uses(Target target) {
        return List.copyOf(uses.getOrDefault(target, Set.of()));
    }

    List<Thing> mentions(Thing thing) {
        return List.copyOf(mentions.getOrDefault(target(thing), Set.of()));
    }
}
