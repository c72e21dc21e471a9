package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.Jacks;
import bayfolio.model.Order;
import bayfolio.model.Setup;
import bayfolio.model.Slide;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags an order of setting up that cannot be: what a coach says of itself against what it says elsewhere, or against what
 * its equipment must have; a turn that the order names twice, or that this coach has nothing for.
 */
public final class OrderAgainstFacts implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return Stream.of(
                        turns(unit),
                        named(unit),
                        Order.of(unit, false).conflicts().stream().map(OrderAgainstFacts::against))
                .flatMap(it -> it);
    }

    private static Finding against(Order.Conflict conflict) {
        Order.Rule said = conflict.said();
        return Finding.error(
                        "order-against-facts",
                        said.at(),
                        "`" + said.first() + "` comes before `" + said.then() + "` here, and after it by "
                                + conflict.against().stream()
                                        .map(rule -> where(rule.at())
                                                + (rule.why().isEmpty() ? "" : " (" + rule.why() + ")"))
                                        .distinct()
                                        .collect(Collectors.joining(", ")))
                .mend("One of the two is wrong: mend it, or `order` of the setup.");
    }

    private static String where(Place at) {
        return at.file().path() + ":" + at.line();
    }

    /** Turns that there are not. */
    private static Stream<Finding> turns(Unit unit) {
        EquipmentKinds kinds = unit.equipment();
        return Stream.of(
                        unit.facts().find(Unit.SETUP).stream().flatMap(it -> all(it.facts(), Setup.ORDER)),
                        unit.facts().find(Unit.JACKS).stream().flatMap(it -> all(it.facts(), Jacks.AFTER)),
                        unit.slides().stream().flatMap(it -> all(it.facts(), Slide.AFTER)))
                .flatMap(it -> it)
                .filter(turn -> kinds.whole() && !kinds.turns().contains(turn.value()))
                .map(turn -> Finding.error(
                                "unknown-turn", turn.at(), "no equipment has the turn `" + turn.value() + "`")
                        .near(NearNames.to(turn.value(), kinds.turns()))
                        .mend("Turns are: " + String.join(", ", kinds.turns()) + "."));
    }

    private static Stream<Located<String>> all(Facts facts, Key<List<Located<String>>> key) {
        return facts.find(key).stream().flatMap(List::stream);
    }

    private static Stream<Finding> named(Unit unit) {
        Set<String> has = unit.equipment().on(unit).stream()
                .flatMap(kind -> kind.turn().stream())
                .collect(Collectors.toSet());
        Set<String> before = new HashSet<>();
        return unit.facts().find(Unit.SETUP).stream()
                .flatMap(setup -> all(setup.facts(), Setup.ORDER))
                .filter(turn -> unit.equipment().turns().contains(turn.value()))
                .flatMap(turn -> {
                    String wrong = !before.add(turn.value())
                            ? "names it twice"
                            : has.contains(turn.value()) ? "" : "names it, and nothing on this coach has that turn";
                    return wrong.isEmpty()
                            ? Stream.empty()
                            : Stream.of(Finding.error(
                                            "order-against-facts",
                                            turn.at(),
                                            "`" + turn.value() + "`: the order " + wrong)
                                    .mend("Take it out."));
                });
    }
}
