package bayfolio.check;

import bayfolio.check.access.OnCallWithoutPhone;
import bayfolio.check.access.OutOfReach;
import bayfolio.check.access.StaffPlaceForRenter;
import bayfolio.check.procedure.ProcedureWithoutRoles;
import bayfolio.check.reference.DuplicateId;
import bayfolio.check.reference.FolderName;
import bayfolio.check.reference.UnknownReference;
import bayfolio.check.reference.UnknownRole;
import bayfolio.check.space.CompartmentsOverlap;
import bayfolio.check.space.OutsideTheCoach;
import java.util.List;

/** All rules there are. */
public final class Rules {
    public static final List<FleetRule> OF_A_FLEET = List.of(new DuplicateId());

    public static final List<Rule> OF_A_COACH = List.of(
            new FolderName(),
            new UnknownReference(),
            new UnknownRole(),
            new CompartmentsOverlap(),
            new OutsideTheCoach(),
            new StaffPlaceForRenter(),
            new OnCallWithoutPhone(),
            new OutOfReach(),
            new ProcedureWithoutRoles());

    private Rules() {}
}
