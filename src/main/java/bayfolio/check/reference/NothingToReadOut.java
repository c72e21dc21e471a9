package bayfolio.check.reference;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.procedure.Head;
import bayfolio.procedure.OnThePhone;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import java.util.stream.Stream;

/** Flags what staff were to read out and never will: there is no such step, or no such fact for staff. */
public final class NothingToReadOut implements ScriptRule {
    @Override
    public Stream<Finding> check(Script script) {
        return script.head().facts().ifRead(Head.ON_THE_PHONE).stream()
                .flatMap(all -> all.value().stream())
                .map(Located::value)
                .filter(each -> each.facts().whole())
                .flatMap(each -> Stream.concat(step(script, each), fact(each)));
    }

    private static Stream<Finding> step(Script script, OnThePhone each) {
        String step = each.facts().get(OnThePhone.STEP);
        return script.names().contains(step)
                ? Stream.of()
                : Stream.of(Finding.error(
                                "nothing-to-read-out",
                                each.facts().at(OnThePhone.STEP),
                                "there is no step `" + step + "`")
                        .near(NearNames.to(step, script.names()))
                        .mend("Name the step as it is named at its end."));
    }

    private static Stream<Finding> fact(OnThePhone each) {
        return each.sayable()
                ? Stream.of()
                : Stream.of(
                        Finding.error(
                                        "nothing-to-read-out",
                                        each.facts().at(OnThePhone.SAY),
                                        "`" + each.facts().get(OnThePhone.SAY) + "` is no fact for staff")
                                .mend(
                                        "Name a kind of thing, or a part of the coach, and a key of it that renters never read."));
    }
}
