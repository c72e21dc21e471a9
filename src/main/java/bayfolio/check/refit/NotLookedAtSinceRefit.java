package bayfolio.check.refit;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Chapter;
import bayfolio.model.Film;
import bayfolio.model.Photo;
import bayfolio.model.Refit;
import bayfolio.model.Size;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Asks for a new look at what a refit changed, at what refers to that, at its photos and at the measures that it changed, for
 * as long as nothing says that somebody looked since. A switch that was moved by a hand's breadth cannot be seen from the
 * description; that nobody has looked can.
 */
public final class NotLookedAtSinceRefit implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        // What several refits changed is asked for once, by the newest of them.
        List<Refit> newestFirst = unit.facts().all(Unit.REFITS).stream()
                .sorted(Comparator.comparing((Refit refit) -> refit.facts().get(Refit.ON))
                        .reversed())
                .toList();
        Map<Place, Finding> byPlace = new LinkedHashMap<>();
        newestFirst.forEach(refit ->
                new Look(unit, refit).findings().forEach(finding -> byPlace.putIfAbsent(finding.at(), finding)));
        return byPlace.values().stream();
    }

    /** What one refit wants to be looked at. */
    private record Look(Unit unit, Refit refit) {
        Stream<Finding> findings() {
            List<Thing> changed = new ArrayList<>();
            refit.facts()
                    .all(Refit.THINGS)
                    .forEach(id -> unit.things()
                            .filter(thing -> thing.id().equals(id))
                            .findFirst()
                            .ifPresent(changed::add));
            List<Thing> hanging = unit.things()
                    .filter(thing -> !changed.contains(thing)
                            && !(thing instanceof Photo || thing instanceof Film)
                            && unseen(thing)
                            && changed.stream().anyMatch(it -> refersTo(thing, it)))
                    .toList();
            return Stream.of(
                            changed.stream()
                                    .filter(this::unseen)
                                    .map(thing -> ask(
                                            thing,
                                            naming(thing) + " was changed on "
                                                    + refit.facts().get(Refit.ON))),
                            hanging.stream()
                                    .map(thing -> ask(
                                            thing,
                                            naming(thing) + " hangs on "
                                                    + changed.stream()
                                                            .filter(it -> refersTo(thing, it))
                                                            .map(Look::naming)
                                                            .findFirst()
                                                            .orElseThrow()
                                                    + ", which was changed on "
                                                    + refit.facts().get(Refit.ON))),
                            changed.stream().flatMap(this::photos),
                            changed.stream().flatMap(this::films),
                            refit.facts().all(Refit.MEASURES).stream().flatMap(this::measures))
                    .flatMap(it -> it);
        }

        private boolean unseen(Thing thing) {
            return thing.facts()
                    .find(thing.identity().checkedOn())
                    .or(() -> unit.facts().find(Unit.CHECKED_ON))
                    .filter(day -> !day.isBefore(refit.facts().get(Refit.ON)))
                    .isEmpty();
        }

        private Finding ask(Thing thing, String what) {
            return told(thing.at(), what + " (" + said() + "), and nobody has looked at it since")
                    .mend("Compare it with the coach, mend what is said of it, and date that under `checked-on`.");
        }

        private Stream<Finding> photos(Thing thing) {
            return unit.photos().stream()
                    .filter(photo ->
                            refersTo(thing, photo) && older(photo.facts().find(Photo.TAKEN_ON)))
                    .map(photo -> told(
                                    photo.at(),
                                    naming(photo) + " shows " + naming(thing) + ", which was changed on "
                                            + refit.facts().get(Refit.ON) + " (" + said() + ")")
                            .mend("Take a new picture, and date it under `taken-on`."));
        }

        private Stream<Finding> films(Thing thing) {
            return unit.films().stream()
                    .filter(film -> older(film.facts().find(Film.TAKEN_ON)))
                    .flatMap(film -> film.chapters().stream()
                            .filter(chapter ->
                                    chapter.facts().get(Chapter.THING).equals(thing.id()))
                            .map(chapter -> told(
                                            chapter.facts().at(Chapter.THING),
                                            naming(film) + " shows " + naming(thing) + ", which was changed on "
                                                    + refit.facts().get(Refit.ON) + " (" + said() + ")")
                                    .mend("Film that again, and date the film under `taken-on`.")));
        }

        private Stream<Finding> measures(Refit.Measures measures) {
            return switch (measures) {
                case SIZE ->
                    measured(unit.facts().find(Unit.SIZE), Size.MEASURED_ON, "the coach was not measured since");
                case WEIGHTS ->
                    measured(
                            unit.facts()
                                    .find(Unit.WEIGHTS)
                                    .flatMap(it -> it.facts().find(Weights.AS_WEIGHED)),
                            Weighing.ON,
                            "the coach was not weighed since");
            };
        }

        private Stream<Finding> measured(Optional<? extends Described> record, Key<LocalDate> on, String what) {
            return record.stream()
                    .filter(it -> older(it.facts().find(on)))
                    .map(it -> told(
                                    it.facts().has(on)
                                            ? it.facts().at(on)
                                            : it.facts().at(),
                                    what + " " + refit.facts().get(Refit.ON) + " (" + said() + ")")
                            .mend("Measure it again, and date that under `" + on.name() + "`."));
        }

        private static Finding told(Place at, String message) {
            return Finding.warning("not-looked-at-since-refit", at, message);
        }

        private boolean older(Optional<LocalDate> day) {
            return day.filter(it -> !it.isBefore(refit.facts().get(Refit.ON))).isEmpty();
        }

        private String said() {
            String what = refit.facts().get(Refit.WHAT);
            return what.endsWith(".") ? what.substring(0, what.length() - 1) : what;
        }

        private static String naming(Thing thing) {
            return thing.kind() + " `" + thing.id() + "`";
        }

        /** Whether one of its references names the other. */
        private static boolean refersTo(Thing thing, Thing other) {
            boolean[] found = {false};
            FactVisitor.of(
                    thing.facts(),
                    (type, value) -> found[0] |= type instanceof Type.Reference reference
                            && reference.kinds().contains(other.kind())
                            && value.value().equals(other.id()));
            return found[0];
        }
    }
}
