package bayfolio.mail;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.SentWhen;
import bayfolio.model.Coach;
import bayfolio.model.Supply;
import bayfolio.reckon.water.WaterUse;
import bayfolio.reckon.water.WaterUseProfile;
import bayfolio.render.mail.Letter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What messages have to know of a coach: its links, and what decides about them. The handbook itself is not kept, so that all
 * coaches of a fleet fit.
 *
 * @param home address of the handbook
 * @param links in the order of the desk
 * @param news the page that tells what has changed; nothing where no edition was issued
 * @param amps of the supply that it is built for; nothing where it has none
 * @param days for how many days the tanks last, by how many people
 */
record Desk(
        Coach coach,
        String home,
        List<Content.Sendable> links,
        Optional<Letter.Link> news,
        OptionalDouble amps,
        Map<Integer, Double> days) {
    private static final int MOST_PEOPLE = 12;

    static Desk of(Coach coach, Handbook handbook) {
        List<Content.Sendable> links = handbook.sendable();
        String home = links.stream()
                .map(Content.Sendable::address)
                .filter(it -> it.endsWith("/"))
                .findFirst()
                .orElse("");
        return new Desk(
                coach,
                home,
                links,
                handbook.find(PageKind.WHAT_CHANGED.node())
                        .filter(page -> !home.isEmpty())
                        .map(page -> new Letter.Link(
                                ((Page) page).title(), "", home + PageKind.WHAT_CHANGED.id() + ".html")),
                coach.unit().supplies().stream()
                        .filter(it -> it.facts().get(Supply.SOURCE) == Supply.Source.SHORE)
                        .mapToDouble(it -> it.facts().get(Supply.AMPS).value())
                        .max(),
                days(coach));
    }

    /** Whether it has a page for when something is so of a booking. */
    boolean has(SentWhen when) {
        return links.stream().anyMatch(it -> it.when().equals(Optional.of(when)));
    }

    private static Map<Integer, Double> days(Coach coach) {
        Map<Integer, Double> days = new TreeMap<>();
        WaterUse.of(coach).ifPresent(use -> {
            for (int people = 1; people <= MOST_PEOPLE; people++) {
                use.lasting(WaterUseProfile.USUAL, people).stream()
                        .mapToDouble(WaterUse.Lasting::days)
                        .min()
                        .ifPresent(least -> days.put(days.size() + 1, least));
            }
        });
        return days;
    }
}
