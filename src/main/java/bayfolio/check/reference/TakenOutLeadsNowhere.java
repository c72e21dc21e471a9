package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.FleetRule;
import bayfolio.check.Rule;
import bayfolio.document.PageKind;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Left;
import bayfolio.model.TakenOut;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags what was taken out where its old address would say nothing and lead to nothing. */
public final class TakenOutLeadsNowhere implements Rule, FleetRule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Stream.concat(
                ofTheCoach(coach),
                coach.coach().fleet().takenOut(coach.unit()).stream()
                        .flatMap(out -> notForThisCoach(coach, out).stream()));
    }

    /** What is said once for all leads on wherever it was; that it is there at all is told of the fleet. */
    private static Optional<Finding> notForThisCoach(CheckedCoach coach, TakenOut out) {
        return out.facts()
                .located(TakenOut.INSTEAD)
                .filter(instead -> out.text().isEmpty()
                        && !coach.unit().facts().all(Unit.TAKEN_OUT).contains(out)
                        && coach.library()
                                .shared(TakenOut.kind(instead.value()), TakenOut.id(instead.value()))
                                .isPresent()
                        && procedures(coach, TakenOut.kind(instead.value()))
                                .noneMatch(it -> it.id().equals(TakenOut.id(instead.value()))))
                .map(instead -> Finding.error(
                                "taken-out-leads-nowhere",
                                instead.at(),
                                "`" + instead.value() + "` is not for coach `"
                                        + coach.unit().id() + "`, which had `"
                                        + out.facts().get(TakenOut.WAS) + "`")
                        .mend("Write `text` beside it, or under `taken-out` of this coach what became of it there."));
    }

    private static Stream<Finding> ofTheCoach(CheckedCoach coach) {
        return coach.unit().facts().all(Unit.TAKEN_OUT).stream().flatMap(out -> {
            boolean paged = PageKind.pagesOf(out.kind()).isPresent();
            Located<String> was = out.facts().located(TakenOut.WAS).orElseThrow();
            if (!paged) {
                return Stream.of(Finding.error(
                                "taken-out-leads-nowhere",
                                was.at(),
                                "`" + was.value() + "` had no page: " + Article.a(out.kind())
                                        + " never has one of its own")
                        .mend("Take it out; places on a page that stands lead there by themselves."));
            }
            return Stream.concat(
                    silent(out.text(), out.instead(), "`" + was.value() + "`", was.at()).stream(),
                    out.facts().located(TakenOut.INSTEAD).stream()
                            .flatMap(instead -> instead(coach, out, instead).stream()));
        });
    }

    private static Optional<Finding> silent(Optional<String> text, Optional<String> instead, String what, Place at) {
        return text.isPresent() || instead.isPresent()
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "taken-out-leads-nowhere",
                                at,
                                what + " is taken out, and nothing says what became of it")
                        .mend("Write `text`, which its old page says, or `instead`, which readers are led on to."));
    }

    private static Optional<Finding> instead(CheckedCoach coach, TakenOut out, Located<String> instead) {
        String kind = TakenOut.kind(instead.value());
        String id = TakenOut.id(instead.value());
        Optional<Boolean> forStaff = coach.coach()
                .thing(kind, id)
                .map(Thing::forStaff)
                .or(() -> procedures(coach, kind)
                        .filter(it -> it.id().equals(id))
                        .findFirst()
                        .map(it -> !it.head().who().forRenters()));
        if (forStaff.isEmpty()) {
            List<String> known = new ArrayList<>();
            coach.coach()
                    .things()
                    .filter(thing -> thing.kind().equals(kind))
                    .forEach(thing -> known.add(kind + ":" + thing.id()));
            procedures(coach, kind).forEach(it -> known.add(kind + ":" + it.id()));
            return Optional.of(Finding.error(
                            "taken-out-leads-nowhere",
                            instead.at(),
                            "`" + instead.value() + "` is nothing that this coach has")
                    .near(NearNames.to(instead.value(), known))
                    .mend("Name a thing of this coach, or a procedure for it, by kind and id."));
        }
        return forStaff(forStaff.get(), out, instead);
    }

    private static Optional<Finding> forStaff(boolean led, TakenOut out, Located<String> instead) {
        return led && !out.forStaff()
                ? Optional.of(
                        Finding.error(
                                        "taken-out-leads-nowhere",
                                        instead.at(),
                                        "`" + instead.value() + "` is for staff, and renters would be led to it")
                                .mend(
                                        "Name what renters may see, or write `staff-only: yes` if they never saw the old page either."))
                : Optional.empty();
    }

    private static Stream<Procedure> procedures(CheckedCoach coach, String kind) {
        return coach.procedures().stream()
                .filter(it -> it.form().hasSteps() && it.form().scheme().equals(kind));
    }

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Stream.concat(
                left(fleet),
                fleet.facts().facts().all(FleetFacts.TAKEN_OUT).stream().flatMap(out -> shared(out, library)));
    }

    private static Stream<Finding> shared(TakenOut out, Library library) {
        Located<String> was = out.facts().located(TakenOut.WAS).orElseThrow();
        if (Form.ofSteps(out.kind()).isEmpty()) {
            return Stream.of(Finding.error(
                            "taken-out-leads-nowhere",
                            was.at(),
                            "`" + was.value() + "` is no procedure or guide, and nothing else is shared by coaches")
                    .mend("Write it under `taken-out` of each coach that had it."));
        }
        return Stream.concat(
                silent(out.text(), out.instead(), "`" + was.value() + "`", was.at()).stream(),
                out.facts().located(TakenOut.INSTEAD).stream()
                        .flatMap(instead -> instead(out, instead, library).stream()));
    }

    private static Optional<Finding> instead(TakenOut out, Located<String> instead, Library library) {
        Optional<Script> script = library.shared(TakenOut.kind(instead.value()), TakenOut.id(instead.value()));
        if (script.isPresent()) {
            return forStaff(script.get().forStaff(), out, instead);
        }
        List<String> known = library.scripts().stream()
                .filter(it -> it.form().hasSteps() && it.whose().shared())
                .map(it -> it.form().scheme() + ":" + it.id())
                .toList();
        return Optional.of(Finding.error(
                        "taken-out-leads-nowhere",
                        instead.at(),
                        "`" + instead.value() + "` is no procedure or guide that coaches share")
                .near(NearNames.to(instead.value(), known))
                .mend("Name one of units/shared by kind and id."));
    }

    private static Stream<Finding> left(Fleet fleet) {
        return fleet.facts().facts().all(FleetFacts.LEFT).stream().flatMap(left -> {
            String called = "coach `" + left.id() + "`";
            return Stream.concat(
                    silent(left.text(), left.instead(), called, left.facts().at(Left.ID)).stream(),
                    left.facts().located(Left.INSTEAD).stream()
                            .filter(instead -> !fleet.coaches().contains(instead.value()))
                            .map(instead -> Finding.error(
                                            "taken-out-leads-nowhere",
                                            instead.at(),
                                            "there is no coach `" + instead.value() + "`")
                                    .near(NearNames.to(instead.value(), fleet.coaches()))
                                    .mend("Name a coach of the fleet by its id.")));
        });
    }
}
