package bayfolio.survey;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.check.feature.FeatureWithoutFact;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import bayfolio.model.Acceptance;
import bayfolio.model.Coach;
import bayfolio.model.Counted;
import bayfolio.model.Film;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Hire;
import bayfolio.model.Note;
import bayfolio.model.Own;
import bayfolio.model.Photo;
import bayfolio.model.Refit;
import bayfolio.model.Service;
import bayfolio.model.Setup;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Question;
import bayfolio.reckon.Reckonings;
import bayfolio.source.Steps;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What must be looked up at a coach, in walking order: what a procedure or a question lacks, what is each coach's own, what nobody has
 * looked at for long, and what was taken over from elsewhere.
 *
 * @param edition digest of the description that it was made from
 * @param stops first the coach as a whole, then its things as one meets them
 */
public record Survey(Coach coach, String edition, List<Stop> stops) {
    /** Where the fleet does not say after how many months one looks again. */
    private static final int MONTHS = 36;

    /** Who a thing is, and who looked: no fact that is found on the coach in front of one. */
    private static final Set<String> NOT_FOUND = Set.of("id", "checked-on", "checked-by", "country", "written-in");

    /** What a fleet has decided, or has heard elsewhere: it does not grow old on the coach. */
    private static final Set<String> DECIDED =
            Set.of("name", "access", "access-reason", "source", "note", "for", "region");

    /** Records of what was decided or done. */
    private static final Set<Shape<?>> DECISIONS =
            Set.of(Hire.SHAPE, Setup.SHAPE, Acceptance.SHAPE, Refit.SHAPE, Service.SHAPE, Note.SHAPE, Counted.SHAPE);

    /**
     * Where one stops on the walk.
     *
     * @param thing empty for the coach as a whole
     * @param at the way to it
     */
    public record Stop(Optional<Thing> thing, Steps at, List<Ask> asks) {
        public Stop {
            asks = List.copyOf(asks);
        }
    }

    public Survey {
        stops = List.copyOf(stops);
    }

    public static Survey of(Check check, Unit unit) {
        return new Draft(check.of(unit)).done();
    }

    public int count() {
        return stops.stream().mapToInt(stop -> stop.asks.size()).sum();
    }

    /** A survey that is being put together. */
    private static final class Draft {
        private final CheckedCoach checked;
        private final Unit unit;
        private final Records records;
        private final Map<String, Ask> asks = new LinkedHashMap<>();
        private final Map<String, Records.Entry> of = new LinkedHashMap<>();

        Draft(CheckedCoach checked) {
            this.checked = checked;
            this.unit = checked.unit();
            this.records = new Records(unit);
        }

        Survey done() {
            procedures();
            questions();
            UnreadException.upTo(() -> FeatureWithoutFact.lacking(unit).forEach(this::feature));
            records.all()
                    .forEach(record -> record.facts().shape().keys().forEach(key -> {
                        required(record, key);
                        own(record, key);
                        old(record, key);
                        toConfirm(record, key);
                    }));
            return new Survey(checked.coach(), records.digest(), stops());
        }

        /** What is marked as such, and what is written and could not be read. */
        private void toConfirm(Records.Entry record, Key<?> key) {
            Why why = new Why(Why.Reason.TO_CONFIRM, "");
            if (record.facts().toConfirm(key)
                    && key.type() instanceof Type.Nested<?> nested
                    && record.facts().ifRead(key).isEmpty()) {
                nested.shape().keys().stream()
                        .filter(each -> Own.asked(nested.shape(), each))
                        .forEach(each -> ask(each, Optional.empty(), why));
            } else if (record.facts().toConfirm(key) || !record.facts().read(key) && written(record, key)) {
                ask(record, key, why);
            }
        }

        private boolean written(Records.Entry record, Key<?> key) {
            return records.stating(new Records.Slot(
                            record, record.at(key), record.facts().shape(), key))
                    .isPresent();
        }

        private void procedures() {
            // What one of them cannot tell ends with it.
            checked.procedures()
                    .forEach(procedure -> UnreadException.upTo(() -> procedure
                            .handled()
                            .forEach(handled -> handled.unsaid()
                                    .forEach(name -> checked.coach()
                                            .thing(
                                                    handled.target().kind(),
                                                    handled.target().id())
                                            .flatMap(thing -> records.of(thing.facts()))
                                            .ifPresent(record -> record.facts()
                                                    .shape()
                                                    .key(name)
                                                    .ifPresent(key -> ask(
                                                            record,
                                                            key,
                                                            new Why(
                                                                    Why.Reason.PROCEDURE,
                                                                    procedure
                                                                            .head()
                                                                            .title()))))))));
        }

        private void questions() {
            for (Question question : Question.values()) {
                UnreadException.upTo(() ->
                        Reckonings.lacking(question, checked.coach()).forEach(missing -> question(missing, question)));
            }
        }

        private void question(Missing missing, Question question) {
            Why why = new Why(Why.Reason.QUESTION, checked.words().say(question.id() + ".asked"));
            Gaps.keys(missing).forEach(key -> ask(key, missing.of(), why));
            missing.of().stream()
                    .flatMap(name -> unit.things().filter(thing -> thing.name().equals(name)))
                    .flatMap(thing -> records.of(thing.facts()).stream())
                    .forEach(record -> Gaps.names(missing)
                            .forEach(name -> record.facts()
                                    .shape()
                                    .key(name)
                                    .filter(key -> record.facts().ifRead(key).isEmpty())
                                    .ifPresent(key -> ask(record, key, why))));
        }

        private void feature(FeatureWithoutFact.Lack lack) {
            Why why = new Why(Why.Reason.FEATURE, lack.because());
            lack.of()
                    .flatMap(records::of)
                    .ifPresentOrElse(
                            record -> ask(record, lack.fact(), why), () -> ask(lack.fact(), Optional.empty(), why));
        }

        private void required(Records.Entry record, Key<?> key) {
            if (key.required() && record.facts().ifRead(key).isEmpty()) {
                ask(record, key, new Why(Why.Reason.REQUIRED, ""));
            }
        }

        private void own(Records.Entry record, Key<?> key) {
            Why why = new Why(Why.Reason.OWN, "");
            if (record.facts().ifRead(key).isEmpty() && record.facts().read(key) && Own.asked(record.facts(), key)) {
                if (key.type() instanceof Type.Nested<?> nested) {
                    nested.shape().keys().stream()
                            .filter(each -> Own.asked(nested.shape(), each))
                            .forEach(each -> ask(each, Optional.empty(), why));
                } else {
                    ask(record, key, why);
                }
            } else if (Own.KEYS.contains(key)
                    && key.type() instanceof Type.Day
                    && key.past()
                    && record.facts()
                            .ifRead(key)
                            .filter(day -> isOld((LocalDate) day.value()))
                            .isPresent()) {
                // What was found on that day is as old as the day.
                record.facts().shape().keys().stream()
                        .filter(each -> Own.KEYS.contains(each)
                                && record.facts().ifRead(each).isPresent())
                        .forEach(each -> ask(record, each, why));
            }
        }

        private void old(Records.Entry record, Key<?> key) {
            boolean looked = record.thing()
                    .filter(it -> it instanceof Photo || it instanceof Film)
                    .isEmpty();
            boolean decided = DECISIONS.contains(record.facts().shape()) || DECIDED.contains(key.name());
            if (!looked
                    || decided
                    || Own.KEYS.contains(key)
                    || record.facts().ifRead(key).isEmpty()) {
                return;
            }
            Optional<LocalDate> day = record.thing()
                    .flatMap(thing -> thing.facts().ifRead(thing.identity().checkedOn()))
                    .or(() -> unit.facts().ifRead(Unit.CHECKED_ON))
                    .map(it -> it.value());
            if (day.filter(it -> !isOld(it)).isEmpty()) {
                ask(
                        record,
                        key,
                        new Why(Why.Reason.OLD, day.map(checked.words()::day).orElse("")));
            }
        }

        private boolean isOld(LocalDate day) {
            Fleet fleet = checked.coach().fleet();
            int months = fleet.facts()
                    .facts()
                    .ifRead(FleetFacts.CHECK_EVERY)
                    .map(it -> it.value())
                    .orElse(MONTHS);
            return fleet.asOf()
                    .filter(today -> day.plusMonths(months).isBefore(today))
                    .isPresent();
        }

        /** Of each record that has the key, or of the one that would. */
        private void ask(Key<?> key, Optional<String> thing, Why why) {
            List<Records.Entry> having = records.all().stream()
                    .filter(it -> Records.has(it.facts().shape(), key))
                    .toList();
            having.stream()
                    .filter(it -> it.facts().ifRead(key).isEmpty())
                    .filter(it -> thing.isEmpty()
                            || it.thing()
                                    .filter(of -> thing.get().equals(of.name()))
                                    .isPresent())
                    .forEach(it -> ask(it, key, why));
            if (having.isEmpty()) {
                records.missing(key).ifPresent(slot -> ask(slot, why));
            }
        }

        private void ask(Records.Entry record, Key<?> key, Why why) {
            ask(new Records.Slot(record, record.at(key), record.facts().shape(), key), why);
        }

        private void ask(Records.Slot slot, Why why) {
            if (!Field.isOne(slot.key().type()) || NOT_FOUND.contains(slot.key().name())) {
                return;
            }
            String at = slot.at().toString();
            Ask known = asks.get(at);
            asks.put(
                    at,
                    known == null
                            ? new Ask(slot.at(), slot.shape(), slot.key(), records.written(slot), List.of(why))
                            : known.also(why));
            of.putIfAbsent(at, slot.record());
        }

        private List<Stop> stops() {
            Map<Optional<Thing>, List<Ask>> byThing = new LinkedHashMap<>();
            byThing.put(Optional.empty(), new ArrayList<>());
            checked.coach().walked().forEach(thing -> byThing.put(Optional.of(thing), new ArrayList<>()));
            asks.forEach((at, ask) -> byThing.computeIfAbsent(record(at).thing(), it -> new ArrayList<>())
                    .add(ask));
            List<Stop> stops = new ArrayList<>();
            byThing.forEach((thing, all) -> {
                if (!all.isEmpty()) {
                    stops.add(new Stop(
                            thing,
                            thing.map(Described::facts)
                                    .flatMap(records::of)
                                    .map(Records.Entry::at)
                                    .orElse(new Steps(List.of())),
                            all));
                }
            });
            return stops;
        }

        private Records.Entry record(String at) {
            Records.Entry record = of.get(at);
            if (record == null) {
                throw new IllegalStateException(at);
            }
            return record;
        }
    }
}
