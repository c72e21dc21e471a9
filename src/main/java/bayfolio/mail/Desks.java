package bayfolio.mail;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.compose.WhatChanged;
import bayfolio.edition.Editions;
import bayfolio.edition.Issued;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.read.Folder;
import java.util.Optional;
import java.util.function.Consumer;

/** The links of coaches, composed when a booking asks for one. */
public record Desks(Check check, Folder folder, boolean strict, Consumer<Finding> findings) {
    /** Nothing where something is wrong with the coach. */
    Optional<Desk> of(String coach) {
        if (!check.findings().stopping(coach, strict).isEmpty()) {
            return Optional.empty();
        }
        return check.fleet().find(coach).map(this::desk);
    }

    private Desk desk(Unit unit) {
        CheckedCoach coach = check.of(unit);
        Issued issued = new Issued(Editions.of(folder, unit, findings), findings);
        return Desk.of(coach.coach(), WhatChanged.in(Composer.compose(coach), coach, issued));
    }
}
