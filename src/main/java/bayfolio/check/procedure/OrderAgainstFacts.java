package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Jacks;
import bayfolio.model.Setup;
import bayfolio.model.Slide;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.source.Located;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags an order of setting up that contradicts the coach: a slide-out that must have power goes out before the plug is
 * in, jacks before what they wait for, a turn that the order names twice, or that this coach has nothing for.
 */
public final class OrderAgainstFacts implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return Stream.concat(
                named(coach),
                Stream.concat(
                        unit.slides().stream()
                                .flatMap(slide -> against(
                                        unit,
                                        slide.facts(),
                                        Slide.AFTER,
                                        Setup.Turn.SLIDE_OUTS,
                                        "slide `" + slide.id() + "` goes out")),
                        unit.facts().find(Unit.JACKS).stream()
                                .flatMap(jacks -> against(
                                        unit, jacks.facts(), Jacks.AFTER, Setup.Turn.JACKS, "the jacks go down"))));
    }

    private static Stream<Finding> against(
            Unit unit, Facts facts, Key<List<Located<Setup.Turn>>> after, Setup.Turn own, String goes) {
        List<Setup.Turn> order = Setup.there(unit);
        return facts.find(after).stream()
                .flatMap(List::stream)
                .filter(turn -> order.indexOf(turn.value()) >= order.indexOf(own))
                .map(turn -> Finding.error(
                                "order-against-facts",
                                turn.at(),
                                goes + " after `" + word(turn.value()) + "`, and this coach is set up with `"
                                        + word(own) + "` before that")
                        .mend("Mend this, or `order` of the setup."));
    }

    private static Stream<Finding> named(CheckedCoach coach) {
        Set<Setup.Turn> has = coach.library().of(coach.unit()).stream()
                .flatMap(script -> script.head().facts().find(Head.SETS_UP).stream())
                .collect(Collectors.toSet());
        Set<Setup.Turn> before = new HashSet<>();
        return coach.unit().facts().find(Unit.SETUP).stream()
                .flatMap(setup -> setup.facts().find(Setup.ORDER).stream())
                .flatMap(List::stream)
                .flatMap(turn -> {
                    String wrong = !before.add(turn.value())
                            ? "names it twice"
                            : has.contains(turn.value()) ? "" : "names it, and no procedure of this coach sets it up";
                    return wrong.isEmpty()
                            ? Stream.empty()
                            : Stream.of(Finding.error(
                                            "order-against-facts",
                                            turn.at(),
                                            "`" + word(turn.value()) + "`: the order " + wrong)
                                    .mend("Take it out."));
                });
    }

    private static String word(Setup.Turn turn) {
        return Type.word(turn);
    }
}
