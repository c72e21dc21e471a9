package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Board;
import bayfolio.model.Thing;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Flags two things in one row and one column of a panel. */
public final class SamePlaceOnPanel implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<Board, Thing> first = new HashMap<>();
        return coach.unit()
                .things()
                .flatMap(thing -> thing.board().stream().flatMap(board -> {
                    Thing other = first.putIfAbsent(board, thing);
                    return other == null
                            ? Stream.of()
                            : Stream.of(Finding.error(
                                            "same-place-on-panel",
                                            thing.at(),
                                            thing.kind() + " `" + thing.id() + "` is in row " + board.row()
                                                    + ", column "
                                                    + board.column() + " of the panel `" + board.name() + "`, where "
                                                    + other.kind() + " `" + other.id() + "` is, too")
                                    .mend("Count rows from the top and columns from the left again."));
                }));
    }
}
