package bayfolio.publish;

import bayfolio.check.Case;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.prose.ScreenWords;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.Pictures;
import bayfolio.render.web.WebSite;
import bayfolio.template.Complaint;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Composes, renders, audits, and only then swaps in. Whatever fails before leaves the last site as
 * it was.
 */
public final class Publisher {
    private Publisher() {}

    /**
     * @param root the fleet folder, for its photos
     * @param units ids of the coaches to publish anew; those published before stay as they are
     * @return the paths of the site
     * @throws PublishException in one sentence, when something is wrong; nothing was changed then
     */
    public static Set<String> publish(
            Check check, Fleet fleet, Path root, Theme theme, ScreenWords screen, List<String> units, Path out)
            throws IOException, PublishException {
        OutputFolder folder = new OutputFolder(out);
        Map<String, byte[]> before = folder.published();
        List<Case> chosen = check.cases().stream()
                .filter(coach -> units.isEmpty() || units.contains(coach.unit().id()))
                .toList();
        WebSite site = new WebSite(theme, screen);
        Map<String, byte[]> files = new TreeMap<>();
        Set<String> staff = new HashSet<>();
        for (Case coach : chosen) {
            if (site.complaints().isEmpty()) {
                files.putAll(site.pages(Composer.compose(coach, screen)));
                files.putAll(Pictures.of(
                        coach.unit(), root.resolve(coach.unit().folder()).resolve("photos")));
                staff.addAll(StaffTexts.of(coach));
            }
        }
        List<WebSite.Entry> coaches = check.cases().stream()
                .filter(coach -> chosen.contains(coach)
                        || before.containsKey(coach.unit().id() + "/index.html"))
                .map(coach -> new WebSite.Entry(coach.unit().id(), coach.unit().name()))
                .toList();
        for (WebSite.Entry coach : coaches) {
            if (chosen.stream().noneMatch(it -> it.unit().id().equals(coach.unit()))) {
                before.forEach((path, bytes) -> {
                    if (path.startsWith(coach.unit() + "/")) {
                        files.put(path, bytes);
                    }
                });
            }
        }
        files.putAll(site.shared(
                fleet.name(), fleet.facts().facts().all(FleetFacts.LANGUAGES).get(0), coaches));
        refuse(
                "The theme is wrong",
                site.complaints().stream().map(Publisher::sentence).toList());
        refuse("The rendered site is wrong", Audit.of(files, staff));
        folder.swapIn(files);
        return files.keySet();
    }

    private static String sentence(Complaint complaint) {
        return complaint.at() + ": " + complaint.message();
    }

    private static void refuse(String what, List<String> faults) throws PublishException {
        if (!faults.isEmpty()) {
            throw new PublishException(what
                    + ", nothing was published:\n"
                    + faults.stream().limit(50).map(fault -> "  " + fault).collect(Collectors.joining("\n"))
                    + (faults.size() > 50 ? "\n  and " + (faults.size() - 50) + " more" : ""));
        }
    }
}
