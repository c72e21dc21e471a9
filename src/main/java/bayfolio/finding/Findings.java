package bayfolio.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All findings of one run, in file order, each told once however many coaches it touches. */
public record Findings(List<Finding> all) {
    public Findings {
        Map<List<Object>, Finding> merged = new LinkedHashMap<>();
        for (Finding finding : all) {
            merged.merge(List.of(finding.code(), finding.at(), finding.message()), finding, Finding::with);
        }
        List<Finding> sorted = new ArrayList<>(merged.values());
        sorted.sort(Finding.ORDER);
        all = List.copyOf(sorted);
    }

    public static Findings of(Collection<Finding> findings) {
        return new Findings(List.copyOf(findings));
    }

    public long count(Severity severity) {
        return all.stream().filter(finding -> finding.severity() == severity).count();
    }

    /** Whether they keep a handbook from being published. */
    public boolean stop(boolean strict) {
        return all.stream().anyMatch(finding -> finding.isError() || strict && finding.severity() == Severity.WARNING);
    }

    public boolean hasErrors() {
        return all.stream().anyMatch(Finding::isError);
    }
}
