package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.issue.TypedFleet;
import bayfolio.publish.SmallFleet;
import bayfolio.read.Ledger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;

/**
 * The pages of a small coach that was refitted between two editions, which the demo fleet has none of: with bars beside what has changed, something taken out, a notice, places that were there before, and a coach that
 * has left.
 */
record RefittedSite(Path web) {
    private static final String COACH = "knot";
    private static final String LEFT = "heron";
    private static final String UNIT = "units/" + COACH + "/unit.yaml";
    private static final String BED = "units/" + COACH + "/procedures/open-the-bed.md";

    /** @param folder that is empty */
    static RefittedSite in(Path folder) {
        try {
            return made(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RefittedSite made(Path folder) throws IOException {
        TypedFleet fleet = new TypedFleet(SmallFleet.write(folder.resolve("fleet"), List.of(COACH)));
        // By its plain name it is what the glossary tells of, too, and two links would have one name.
        fleet.edit(UNIT, "name: Chocks", "name: Wheel chocks");
        run(fleet, "issue", COACH, "--note", "As bought.", "--date", "2026-05-02");
        fleet.edit(UNIT, "where: beside the tap", "where: below the tap");
        fleet.edit(UNIT, "on-look: red edge up", "on-look: green edge up");
        fleet.edit(UNIT, "capacity: 20 gal", "capacity: 24 gal");
        fleet.edit(UNIT, "awnings:\n  - {id: awning, name: Awning, roles: [awning], kind: manual, side: right}\n", """
                taken-out:
                  - {was: switch:light, name: Light switch, text: The light turns itself on., instead: switch:pump}
                notices:
                  - {id: slow-pump, text: The pump runs slowly., since: 2026-06-01, about: [pump]}
                """);
        fleet.edit(BED, "Take off the strap", "Take off both straps");
        fleet.edit(BED, "The board falls when the strap comes off.", "The board falls when the straps come off.");
        fleet.edit(
                "units/fleet.yaml",
                "site-switches:\n",
                "left:\n  - {id: " + LEFT + ", name: Heron, text: This coach was sold., instead: " + COACH
                        + "}\nsite-switches:\n");
        DemoFleet.write(
                fleet.root().resolve(Ledger.FILE), COACH + "/do/open-the-bed#step-fold\n" + COACH + "/switch/light\n");
        run(fleet, "issue", COACH, "--note", "The pump has a new switch.", "--date", "2026-06-01");
        run(fleet, "publish", "--only", "web");
        return new RefittedSite(fleet.root().resolve("site-out/web").toRealPath());
    }

    private static void run(TypedFleet fleet, String... words) {
        assertThat(fleet.said(words)).endsWith("exit 0\n");
    }

    /** The files of that coach, and of the one that has left, by their paths. */
    Map<String, byte[]> pages() {
        Map<String, byte[]> pages = new TreeMap<>();
        for (String coach : List.of(COACH, LEFT)) {
            DemoFleet.files(web.resolve(coach)).forEach((path, bytes) -> pages.put(coach + "/" + path, bytes));
        }
        return pages;
    }

    /** Whether a page has something on it that those of a coach have not that is as it was bought. */
    static boolean tellsOfIt(Document page) {
        return page.selectFirst(
                        "main .changed, .meanwhile, .taken-out, body.page-what-changed, body.page-fleet main > p")
                != null;
    }
}
