package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;

/** All that a coach says, one line a fact in the order of the declarations, without regard to where it is written. */
final class Facets {
    private Facets() {}

    static List<String> of(Unit unit) {
        List<String> lines = new ArrayList<>();
        record("", unit.facts(), lines);
        lines.removeIf(line -> line.startsWith("/model "));
        return lines;
    }

    private static void record(String name, Facts facts, List<String> lines) {
        facts.each((key, value) -> value(name + "/" + key.name(), value, lines));
    }

    private static void value(String name, Located<?> value, List<String> lines) {
        if (value.value() instanceof Described record) {
            record(name, record.facts(), lines);
        } else if (value.value() instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                value(name + "[" + i + "]", (Located<?>) list.get(i), lines);
            }
        } else {
            lines.add(name + " " + value.value() + " " + value.written());
        }
    }
}
