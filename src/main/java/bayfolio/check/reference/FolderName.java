package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.stream.Stream;

/**
 * Flags a coach whose id is not the name of its folder: one of them is a mistake, and addresses are
 * made of the id.
 */
public final class FolderName implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().facts().located(Unit.ID).stream()
                .filter(id -> !folder(id).equals(id.value()))
                .map(id -> Finding.error(
                                "folder-name",
                                id.at(),
                                "the coach is called `" + id.value() + "`, its folder `" + folder(id) + "`")
                        .near(java.util.List.of(folder(id)))
                        .mend("Give both the same name."));
    }

    private static String folder(Located<String> id) {
        String[] path = id.at().file().path().split("/");
        return path.length < 2 ? id.value() : path[path.length - 2];
    }
}
