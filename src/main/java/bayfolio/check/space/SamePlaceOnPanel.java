package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Board;
import bayfolio.model.Kinds;
import bayfolio.model.Thing;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/** Flags two things in one row and one column of a panel, and a row or a column with none before it. */
public final class SamePlaceOnPanel implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<Board, Thing> first = new HashMap<>();
        List<Thing> placed =
                coach.unit().things().filter(thing -> thing.board().isPresent()).toList();
        // What could not be read may be what fills a gap.
        boolean all = Kinds.names().stream().allMatch(coach.unit()::idsRead);
        return placed.stream().flatMap(thing -> {
            Board board = thing.board().orElseThrow();
            Thing other = first.putIfAbsent(board, thing);
            if (other != null) {
                return Stream.of(Finding.error(
                                "same-place-on-panel",
                                thing.at(),
                                where(thing, board) + ", where " + other.kind() + " `" + other.id() + "` is, too")
                        .mend("Count rows from the top and columns from the left again."));
            }
            return all && (gap(placed, board, Board::row) || gap(placed, board, Board::column))
                    ? Stream.of(Finding.warning(
                                    "same-place-on-panel",
                                    thing.at(),
                                    where(thing, board) + ", and nothing is in the row or column before it")
                            .mend("Count rows from the top and columns from the left again."))
                    : Stream.of();
        });
    }

    private static String where(Thing thing, Board board) {
        return thing.kind() + " `" + thing.id() + "` is in row " + board.row() + ", column " + board.column()
                + " of the panel `" + board.name() + "`";
    }

    private static boolean gap(List<Thing> placed, Board board, ToIntFunction<Board> line) {
        int before = line.applyAsInt(board) - 1;
        return before > 0
                && placed.stream()
                        .flatMap(thing -> thing.board().stream())
                        .noneMatch(it -> it.name().equals(board.name()) && line.applyAsInt(it) == before);
    }
}
