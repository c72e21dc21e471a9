package bayfolio.issue;

import bayfolio.bookings.Booking;
import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Audience;
import bayfolio.document.PageKind;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.Part;
import bayfolio.model.Coach;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A booking whose renter holds an older edition of which something that renters read is otherwise, with a text for him.
 *
 * @param edition that he holds
 * @param text three lines at most: that something has changed, which pages, and where the handbook is
 */
public record ToTell(Booking booking, int edition, String text) {
    /** So many pages are named; who wants to know more opens the handbook. */
    private static final int MOST = 6;

    /** What is worth a mail: pages that lead on, and lists of all that there is, are not. */
    private static final Set<PageKind> NOT_TOLD = Set.of(
            PageKind.HOME,
            PageKind.SITUATION,
            PageKind.LETTER,
            PageKind.INDEX,
            PageKind.SYMPTOM,
            PageKind.STAGE,
            PageKind.PROCEDURES,
            PageKind.TROUBLE_LIST,
            PageKind.WALK_ROUND,
            PageKind.SWITCHES,
            PageKind.CONNECTIONS,
            PageKind.WORKED_OUT);

    /**
     * Empty where nothing has changed for renters.
     *
     * @param compared the edition that he holds, and what holds now
     */
    public static Optional<ToTell> of(Booking booking, int edition, Compared compared, Coach coach, Catalogs catalogs) {
        List<String> pages = pages(compared);
        if (pages.isEmpty()) {
            return Optional.empty();
        }
        Catalog words = catalogs.of(booking.languages(coach.languages()));
        String address = coach.fleet().address() + booking.coach() + "/";
        List<String> named = pages.subList(0, Math.min(MOST, pages.size()));
        return Optional.of(new ToTell(
                booking,
                edition,
                words.say("changed.head", "coach", coach.unit().name(), "edition", String.valueOf(edition)) + "\n"
                        + (named.size() == pages.size()
                                ? words.say("changed.pages", "pages", String.join("; ", named))
                                : words.say(
                                        "changed.pages-and-more",
                                        "pages",
                                        String.join("; ", named),
                                        "count",
                                        pages.size() - named.size()))
                        + "\n" + address + "\n"));
    }

    /** Titles of pages that say something else to renters, in reading order, those that are new or changed there. */
    private static List<String> pages(Compared compared) {
        Set<String> changed = new LinkedHashSet<>();
        compared.changes().stream()
                .filter(Changed::technical)
                .filter(it -> !it.forStaff())
                .forEach(it -> changed.addAll(it.pages()));
        return compared.after().parts().values().stream()
                .filter(part -> part.sort() == Part.Sort.PAGE && !part.forStaff() && changed.contains(part.page()))
                .filter(part -> PageKind.of(part.page())
                        .filter(kind -> kind.audience() != Audience.STAFF && !NOT_TOLD.contains(kind))
                        .isPresent())
                .map(Part::text)
                .distinct()
                .toList();
    }
}
