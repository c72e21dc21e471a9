package bayfolio.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All findings of one run, in file order, each told once however many coaches it touches. */
public record Findings(List<Finding> all) {
    public Findings {
        Map<List<Object>, List<Finding>> same = new LinkedHashMap<>();
        for (Finding finding : all) {
            same.computeIfAbsent(List.of(finding.code(), finding.at(), finding.message()), it -> new ArrayList<>(1))
                    .add(finding);
        }
        List<Finding> sorted = new ArrayList<>(same.size());
        same.values().forEach(each -> sorted.add(each.get(0).with(each)));
        sorted.sort(Finding.ORDER);
        all = List.copyOf(sorted);
    }

    public static Findings of(Collection<Finding> findings) {
        return new Findings(List.copyOf(findings));
    }

    public long count(Severity severity) {
        return all.stream().filter(finding -> finding.severity() == severity).count();
    }

    /** Whether they keep any handbook from being published. */
    public boolean stop(boolean strict) {
        return all.stream().anyMatch(finding -> finding.stops(strict));
    }

    /** Those that keep the handbook of a coach from being published. */
    public List<Finding> stopping(String coach, boolean strict) {
        return all.stream()
                .filter(finding -> finding.stops(strict))
                .filter(finding ->
                        finding.coaches().isEmpty() || finding.coaches().contains(coach))
                .toList();
    }

    public boolean hasErrors() {
        return all.stream().anyMatch(Finding::isError);
    }
}
