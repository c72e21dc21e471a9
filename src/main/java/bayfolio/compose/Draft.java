package bayfolio.compose;

import bayfolio.check.Case;
import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.model.Coach;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Walk;
import bayfolio.model.Wording;
import bayfolio.procedure.Procedure;
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

/** The renter's copy of one coach while it is composed: what pages ask for in common. */
final class Draft {
    private final Coach coach;
    private final List<Procedure> procedures;
    private final ScreenWords screen;
    private final Wording wording;
    private final Map<Target, Set<Procedure>> uses = new LinkedHashMap<>();
    private final Map<Target, Set<Thing>> mentions = new LinkedHashMap<>();

    Draft(Case checked, ScreenWords screen) {
        this.coach = checked.coach();
        this.procedures = checked.procedures().stream()
                .filter(procedure -> procedure.head().who().forRenters())
                .toList();
        this.screen = screen;
        this.wording = new Wording(coach);
        for (Procedure procedure : procedures) {
            procedure
                    .links()
                    .forEach(link -> uses.computeIfAbsent(link.target(), it -> new LinkedHashSet<>())
                            .add(procedure));
        }
        coach.things().filter(thing -> !thing.forStaff()).forEach(this::mention);
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

    Coach coach() {
        return coach;
    }

    Unit unit() {
        return coach.unit();
    }

    Wording wording() {
        return wording;
    }

    List<Procedure> procedures() {
        return procedures;
    }

    String word(String key) {
        return screen.of(key);
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
        return things.stream().filter(thing -> !thing.forStaff()).toList();
    }

    List<Note> notes(Thing about) {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note ->
                        note.facts().find(Note.ABOUT).filter(about.id()::equals).isPresent())
                .filter(note -> !note.facts().find(Note.STAFF_ONLY).orElse(false))
                .toList();
    }

    List<Note> notesAboutNothing() {
        return unit().facts().all(Unit.NOTES).stream()
                .filter(note -> !note.facts().has(Note.ABOUT))
                .filter(note -> !note.facts().find(Note.STAFF_ONLY).orElse(false))
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
