package bayfolio.explain;

import java.util.List;

/** What of an answer is drawn. */
public sealed interface Plot permits Plot.Bars, Course {
    /** The results that count first, beside each other. */
    record Bars(List<Bar> bars) implements Plot {
        public Bars {
            bars = List.copyOf(bars);
        }
    }
}
