package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Wording;
import bayfolio.reckon.NextDue;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** When work is due, in words: {@code March 9, 2027 or 36,240 mi}. */
final class DueWords {
    private DueWords() {}

    /** Empty where no start is known. */
    static Optional<String> of(NextDue due, Wording wording) {
        List<String> when = Stream.of(
                        due.day().map(day -> wording.of(Type.DAY, day)),
                        due.odometer().map(at -> wording.of(Type.measured(Meters.SCALE), at)),
                        due.hours()
                                .map(at -> wording.words()
                                        .amount(Rounding.NEAREST.print(at.value() / 3600, 0, Symbol.HOUR))))
                .flatMap(Optional::stream)
                .toList();
        return when.isEmpty() ? Optional.empty() : Optional.of(wording.words().or(when));
    }
}
