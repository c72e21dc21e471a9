package bayfolio.document;

import bayfolio.fact.Type;
import bayfolio.prose.Target;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The kinds of pages that a handbook has: the one table by which pages are composed, addressed, linked and listed.
 */
public enum PageKind {
    HOME("start", "home"),
    SITUATION("start", "now", Many.MANY),
    /** What is otherwise than in the edition before; only where there are editions. */
    WHAT_CHANGED("start", "what-changed"),
    WALK_ROUND("coach", "walk-round", "compartment", "tray"),
    COMPARTMENT("coach", "compartment", Many.MANY),
    TRAY("coach", "tray", Many.MANY),
    SWITCHES("coach", "switches", "switch", "gauge"),
    SWITCH("coach", "switch", Many.MANY),
    GAUGE("coach", "gauge", Many.MANY),
    CONNECTIONS("coach", "connections", "connection"),
    CONNECTION("coach", "connection", Many.MANY),
    FILM("coach", "film", Many.MANY),
    DOORS_AND_SLIDES("coach", "doors-and-slides", "door", "step", "slide", "awning"),
    NUMBERS("coach", "numbers", "supply", "adapter", "circuit", "load", "bank", "tank"),
    COUNTRY("coach", "country", Many.MANY),
    WORKED_OUT("coach", "worked-out"),
    QUESTION("coach", "worked-out", Many.MANY),
    ON_BOARD("coach", "on-board", "appliance", "item", "photo"),
    /** It has the address of what it was. */
    TAKEN_OUT("coach", "taken-out", Many.MANY),
    PROCEDURES("trip", "procedures"),
    STAGE("trip", "stage", Many.MANY),
    PROCEDURE("trip", "do", Many.MANY),
    NIGHT_CARD("cards", "night-card"),
    PHONE_CARD("cards", "phone-card"),
    QUICK_CARD("cards", "quick-card"),
    WORDS("words", "words"),
    INDEX("words", "index"),
    LETTER("words", "letter", Many.MANY),
    TROUBLE_LIST("trouble", "trouble"),
    SYMPTOM("trouble", "sign", Many.MANY),
    GUIDE("trouble", "trouble", Many.MANY),
    CONDITION("staff", "condition"),
    DAMAGE("staff", "damage"),
    INVENTORY("staff", "inventory"),
    READY("staff", "ready"),
    SERVICE("staff", "service"),
    TO_PHOTOGRAPH("staff", "to-photograph"),
    /** What staff send, and when. */
    LINKS("staff", "links");

    /** Between the name of a procedure and what tells one of its later pages from others. */
    public static final String GOES_ON = "--";

    /** Of some kinds there are many pages, one for each thing or text. */
    private enum Many {
        MANY
    }

    private final String part;
    private final String name;
    private final boolean many;
    private final List<String> things;

    PageKind(String part, String name, String... things) {
        this.part = part;
        this.name = name;
        this.many = false;
        this.things = List.of(things);
    }

    PageKind(String part, String name, Many many) {
        this.part = part;
        this.name = name;
        this.many = true;
        this.things = List.of();
    }

    /** The part of the handbook in which it stands. */
    public String part() {
        return part;
    }

    /** As references name it, {@code page:numbers}; of many pages their folder. */
    public String id() {
        return name;
    }

    /** Kinds of things that it lists, in this order. */
    public List<String> things() {
        return things;
    }

    public Audience audience() {
        return Audience.staffIf(part.equals("staff"));
    }

    public Target target() {
        if (many) {
            throw new IllegalStateException("there are many pages of the kind " + Type.word(this));
        }
        return new Target.OfPage(name);
    }

    /** The only page of its kind. A page keeps the address that it had before it got this name. */
    public NodeId node() {
        if (many) {
            throw new IllegalStateException("there are many pages of the kind " + Type.word(this));
        }
        return NodeId.of(this == INDEX ? "a-z" : name);
    }

    /** One page of many. */
    public NodeId node(String id) {
        if (!many) {
            throw new IllegalStateException("there is one page of the kind " + Type.word(this));
        }
        return NodeId.of(name + "/" + id);
    }

    /** The kind of the page of an address: {@code do/fill-fresh-water}. */
    public static Optional<PageKind> of(String page) {
        return Arrays.stream(values())
                .filter(kind -> kind.many
                        ? page.startsWith(kind.name + "/")
                        : page.equals(kind.node().page()))
                .findFirst();
    }

    /**
     * Where readers are led when there is no such page any more: of those that the program makes, to a list or to the first
     * page. Of a thing or a text the writer has to say what became of it.
     */
    Optional<PageKind> instead() {
        return switch (this) {
            case COMPARTMENT, TRAY, SWITCH, GAUGE, CONNECTION, FILM, PROCEDURE, GUIDE, TAKEN_OUT -> Optional.empty();
            case QUESTION -> Optional.of(WORKED_OUT);
            case STAGE -> Optional.of(PROCEDURES);
            case LETTER -> Optional.of(INDEX);
            case SYMPTOM -> Optional.of(TROUBLE_LIST);
            default -> Optional.of(HOME);
        };
    }

    /** What its page of that id is the home of, where that is a thing or a text. */
    Optional<Target> thing(String id) {
        return switch (this) {
            case PROCEDURE, GUIDE -> Optional.of(new Target.OfProcedure(id));
            case COMPARTMENT, TRAY, SWITCH, GAUGE, CONNECTION, FILM -> Optional.of(new Target.OfThing(name, id));
            default -> Optional.empty();
        };
    }

    /** The kind of the pages of things of a kind, or of texts: those of {@code switch}, of {@code procedure}. */
    public static Optional<PageKind> pagesOf(String scheme) {
        return switch (scheme) {
            case "procedure" -> Optional.of(PROCEDURE);
            case "trouble" -> Optional.of(GUIDE);
            default ->
                Stream.of(COMPARTMENT, TRAY, SWITCH, GAUGE, CONNECTION, FILM)
                        .filter(kind -> kind.name.equals(scheme))
                        .findFirst();
        };
    }

    /** Names of those that every reader may be sent to, in the order of menus. */
    public static final List<String> FOR_EVERYBODY = named(Audience.EVERYBODY);

    /** The same without those that are carried on paper: the first page leads there. */
    public static final List<String> IN_MENUS = FOR_EVERYBODY.stream()
            .filter(id -> Arrays.stream(values()).noneMatch(kind -> kind.name.equals(id) && kind.part.equals("cards")))
            .toList();

    /** Names of those for staff alone. */
    public static final List<String> FOR_STAFF = named(Audience.STAFF);

    private static List<String> named(Audience audience) {
        return Arrays.stream(values())
                // Where there is no edition yet, nothing can be told of what has changed.
                .filter(kind -> kind != WHAT_CHANGED && !kind.many && kind.audience() == audience)
                .map(PageKind::id)
                .toList();
    }
}
