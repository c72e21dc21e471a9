package bayfolio.issue;

import bayfolio.document.Audience;
import bayfolio.document.PageKind;
import bayfolio.edition.Part;
import bayfolio.fact.Type;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is printed of a handbook and lies about on paper. Which parts stand on it is told by the kinds of their pages and
 * contents, since of an edition there is nothing else; a test holds that against what is printed.
 */
public enum Paper {
    BOOK,
    NIGHT_CARD(PageKind.NIGHT_CARD),
    PHONE_CARD(PageKind.PHONE_CARD),
    QUICK_CARD(PageKind.QUICK_CARD),
    CONDITION(PageKind.CONDITION),
    DAMAGE(PageKind.DAMAGE),
    INVENTORY(PageKind.INVENTORY),
    READY(PageKind.READY);

    private static final Set<PageKind> CHAPTERS = EnumSet.of(
            PageKind.PROCEDURE,
            PageKind.TROUBLE_LIST,
            PageKind.GUIDE,
            PageKind.WALK_ROUND,
            PageKind.COMPARTMENT,
            PageKind.TRAY,
            PageKind.SWITCHES,
            PageKind.SWITCH,
            PageKind.GAUGE,
            PageKind.CONNECTIONS,
            PageKind.CONNECTION,
            PageKind.DOORS_AND_SLIDES,
            PageKind.NUMBERS,
            PageKind.COUNTRY,
            PageKind.WORKED_OUT,
            PageKind.QUESTION,
            PageKind.ON_BOARD,
            PageKind.WORDS);

    /** What a phone alone can show, or is stuck on the coach. */
    private static final Set<String> NOT_IN_THE_BOOK =
            Set.of("fold", "form", "film", "sketched", "tiles", "link-list", "label", "prints");

    private final Optional<PageKind> page;

    Paper() {
        this.page = Optional.empty();
    }

    Paper(PageKind page) {
        this.page = Optional.of(page);
    }

    /** As people call it. */
    public String words() {
        String word = Type.word(this);
        return this == BOOK || word.endsWith("-card") ? word.replace('-', ' ') : word + " sheet";
    }

    /**
     * Whether a part is on it.
     *
     * @param all parts of the handbook by their names
     */
    public boolean holds(Part part, Map<String, Part> all) {
        Optional<PageKind> kind = PageKind.of(part.page());
        if (page.isPresent()) {
            return kind.equals(page) && (page.get().audience() == Audience.STAFF || !part.forStaff());
        }
        return !part.forStaff() && kind.isPresent() && isInTheBook(part, kind.get(), all);
    }

    private static boolean isInTheBook(Part part, PageKind kind, Map<String, Part> all) {
        List<Part> around = Stream.iterate(
                        Optional.of(part), Optional::isPresent, it -> it.flatMap(each -> around(each, all)))
                .flatMap(Optional::stream)
                .toList();
        if (kind == PageKind.LETTER) {
            return part.links().size() == 1;
        }
        if (around.stream().anyMatch(it -> NOT_IN_THE_BOOK.contains(it.kind()))) {
            return false;
        }
        if (part.sort() == Part.Sort.SECTION && isLeftOut(part, all)) {
            return false;
        }
        boolean opening = around.stream().noneMatch(it -> it.sort() == Part.Sort.SECTION);
        return switch (kind) {
            case NIGHT_CARD -> true;
            case STAGE -> opening && isListed(part.page(), all);
            case HOME ->
                around.stream().anyMatch(it -> isDrawn(it, all)) && !part.id().endsWith(".tap");
            case PROCEDURE -> !(opening && part.page().contains(PageKind.GOES_ON)) || part.sort() == Part.Sort.PAGE;
            default -> CHAPTERS.contains(kind);
        };
    }

    /** A stage in which there is nothing to do on this coach opens no chapter. */
    private static boolean isListed(String stage, Map<String, Part> all) {
        return Optional.ofNullable(all.get(PageKind.PROCEDURES.node() + "#" + stage.replace('/', '-')))
                .filter(section -> !section.forStaff())
                .isPresent();
    }

    /** A section goes with what is in it, where nothing stays. */
    private static boolean isLeftOut(Part section, Map<String, Part> all) {
        List<Part> inside = all.values().stream()
                .filter(it -> it.around().equals(section.id()))
                .toList();
        return !inside.isEmpty()
                && inside.stream().allMatch(it -> it.forStaff() || NOT_IN_THE_BOOK.contains(it.kind()));
    }

    private static Optional<Part> around(Part part, Map<String, Part> all) {
        return Optional.ofNullable(all.get(part.around()));
    }

    /** A section of the first page that shows a side of the coach opens the walk around it. */
    private static boolean isDrawn(Part section, Map<String, Part> all) {
        return section.sort() == Part.Sort.SECTION
                && all.values().stream()
                        .anyMatch(it -> it.kind().equals("drawn") && it.around().equals(section.id()));
    }
}
