package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/**
 * A place in the rows and columns of a panel, of switches, breakers, gauges or lamps.
 *
 * @param name that all on it share
 * @param row from the top, from 1
 * @param column from the left, from 1
 */
public record Board(String name, int row, int column) {
    /** The keys of such a place. */
    record Keys(Key<String> panel, Key<Integer> row, Key<Integer> column) {
        static Keys declare(Shape.Draft<?> draft) {
            Range few = Range.of("1", "40").usual("1", "16");
            return new Keys(
                    draft.optional(
                            "panel",
                            Type.TEXT,
                            "The panel that it is on, by a name that all on it share: `Breaker cupboard`."),
                    draft.optional("row", Type.whole(1, 40), "Its row on the panel, from the top.", few),
                    draft.optional("column", Type.whole(1, 40), "Its column on the panel, from the left.", few));
        }

        Optional<Board> of(Facts facts) {
            return facts.find(panel)
                    .flatMap(name -> facts.find(row)
                            .flatMap(down -> facts.find(column).map(across -> new Board(name, down, across))));
        }
    }
}
