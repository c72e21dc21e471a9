package bayfolio.rename;

import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * That a fleet says under the new name what it said under the old one: each fact, each reference of a text on each coach, and all
 * that is found to be wrong.
 */
final class Proof {
    /** What a message may quote that is otherwise now: places, and the list of names that a thing had. */
    private static final Pattern QUOTED =
            Pattern.compile(":\\d+:\\d+|formerly: \\[[^]]*](?:, )?|, formerly: \\[[^]]*]");

    private final NewName name;
    private final FleetReader.Reading before;
    private final FleetReader.Reading after;

    /** Something that is said, with the old name replaced, and where. */
    private record Said(String what, Place at) {}

    Proof(NewName name, FleetReader.Reading before, FleetReader.Reading after) {
        this.name = name;
        this.before = before;
        this.after = after;
    }

    /** The first that would be said otherwise of each coach. */
    List<Against> saidOtherwise() {
        List<Against> against = new ArrayList<>();
        Map<String, Unit> now = new HashMap<>();
        after.fleet().units().forEach(unit -> now.put(unit.id(), unit));
        for (Unit unit : before.fleet().units()) {
            if (name.concerns(unit)) {
                List<Said> was = facts(new Coach(before.fleet(), unit), name.before());
                List<Said> is = Optional.ofNullable(now.get(unit.id()))
                        .map(it -> facts(new Coach(after.fleet(), it), name.after()))
                        .orElse(List.of());
                first(was, is).ifPresent(against::add);
            }
        }
        first(facts(before.fleet().facts()), facts(after.fleet().facts())).ifPresent(against::add);
        first(mentions(before), mentions(after)).ifPresent(against::add);
        return against;
    }

    private static Optional<Against> first(List<Said> was, List<Said> is) {
        for (int i = 0; i < was.size(); i++) {
            if (i >= is.size() || !is.get(i).what.equals(was.get(i).what)) {
                return Optional.of(
                        new Against(was.get(i).at, "under the new name this would not mean what it means now"));
            }
        }
        return was.size() == is.size()
                ? Optional.empty()
                : Optional.of(
                        new Against(is.get(was.size()).at, "this would be said under the new name, and is not now"));
    }

    // ---- facts

    /** @param called what it is called there */
    private List<Said> facts(Coach coach, String called) {
        List<Said> said = new ArrayList<>();
        FactVisitor.of(coach.unit(), (record, key, type, value) -> {
            if (!isFormerly(record, key, called)) {
                said.add(new Said(
                        record.facts().shape().name() + " " + key.name() + ": "
                                + said(coach, record, key, type, value, called),
                        value.at()));
            }
        });
        return said;
    }

    private boolean isFormerly(Described record, Key<?> key, String called) {
        return name instanceof NewId id
                && key.name().equals("formerly")
                && record instanceof Thing thing
                && thing.kind().equals(id.kind())
                && thing.facts().ifRead(thing.identity().id()).stream()
                        .anyMatch(it -> it.value().equals(called));
    }

    private String said(Coach coach, Described record, Key<?> key, Type<?> type, Located<?> value, String called) {
        String written = String.valueOf(value.value());
        if (name instanceof NewRole) {
            return type instanceof Type.Role && written.equals(called) ? name.after() : written;
        }
        NewId id = (NewId) name;
        boolean its = type instanceof Type.Reference reference
                ? coach.referred(reference, written)
                        .map(thing -> thing.kind().equals(id.kind()))
                        .orElse(true)
                : record instanceof Thing thing
                        && thing.kind().equals(id.kind())
                        && key.name().equals("id");
        return its && written.equals(called) ? name.after() : written;
    }

    /** What the fleet itself says; the words for roles are those of the list. */
    private List<Said> facts(Described fleet) {
        List<Said> said = new ArrayList<>();
        FactVisitor.of(fleet, (record, key, type, value) -> {
            String written = String.valueOf(value.value());
            boolean its = type instanceof Type.Role == name instanceof NewRole && written.equals(name.before());
            if (!key.name().equals("formerly")) {
                said.add(new Said(
                        record.facts().shape().name() + " " + key.name() + ": " + (its ? name.after() : written),
                        value.at()));
            }
        });
        return said;
    }

    // ---- texts

    private List<Said> mentions(FleetReader.Reading reading) {
        Mentions mentions = new Mentions(reading.fleet(), reading.library());
        List<Coach> coaches = reading.fleet().units().stream()
                .map(unit -> new Coach(reading.fleet(), unit))
                .toList();
        String called = reading == before ? name.before() : name.after();
        List<Said> said = new ArrayList<>();
        for (Script script : Texts.of(reading.library())) {
            if (name.concerns(script)) {
                List<Coach> its = coaches.stream()
                        .filter(coach -> script.whose().has(coach.unit()))
                        .toList();
                mentions.in(script).forEach(mention -> said.add(new Said(meant(mention, its, called), mention.at())));
            }
        }
        return said;
    }

    private String meant(Mentions.Mention mention, List<Coach> coaches, String called) {
        boolean own = !mention.script().whose().shared();
        StringBuilder meant = new StringBuilder(mention.at().file().path() + " " + mention.kind());
        for (Coach coach : coaches) {
            List<Thing> things = Meaning.named(coach, own, mention.kind(), mention.name());
            things.forEach(thing -> meant.append(' ')
                    .append(coach.unit().id())
                    .append('/')
                    .append(
                            name instanceof NewId id
                                            && thing.kind().equals(id.kind())
                                            && name.concerns(coach.unit())
                                            && thing.id().equals(called)
                                    ? name.after()
                                    : thing.id()));
        }
        return meant.toString();
    }

    // ---- what is wrong

    /**
     * What would be found that is not found now.
     *
     * @param was what is found now
     * @param is what would be found
     */
    List<Finding> more(List<Finding> was, List<Finding> is) {
        Map<String, Integer> known = new HashMap<>();
        was.forEach(finding -> known.merge(key(finding), 1, Integer::sum));
        List<Finding> more = new ArrayList<>();
        for (Finding finding : is) {
            if (known.merge(key(finding), -1, Integer::sum) < 0) {
                more.add(finding);
            }
        }
        return more;
    }

    /** A finding whatever the name, and on whatever line it is told. */
    private String key(Finding finding) {
        String message = QUOTED.matcher(finding.message()).replaceAll("");
        return finding.code() + " " + finding.severity() + " "
                + finding.at().file().path() + " "
                + NewId.alone(name.before()).matcher(message).replaceAll(name.after()) + " " + finding.units();
    }
}
