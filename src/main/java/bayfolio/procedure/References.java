package bayfolio.procedure;

import bayfolio.catalog.Catalog;
import bayfolio.document.PageKind;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.model.Phone;
import bayfolio.model.Role;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Word;
import bayfolio.model.Wording;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import bayfolio.template.Names;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Turns a written reference, {@code switch:house-battery-switch}, into links to what it names on
 * one coach.
 *
 * <p>One that names nothing is told, with the near name and the mend.
 */
public final class References {
    private static final List<String> OTHER_SCHEMES = List.of("procedure", "trouble", "word", "page", "stage", "phone");

    /** Before an id: not the role of that word. */
    static final String EXACTLY = "=";

    private final Coach coach;
    private final Library library;
    private final Catalog screen;
    private final boolean staff;
    private final boolean own;

    /**
     * @param staff whether the text that refers is read by staff only
     * @param own whether it is of this coach alone: ids are names in it; in texts for several coaches only roles are
     */
    public References(Coach coach, Library library, Catalog screen, boolean staff, boolean own) {
        this.coach = coach;
        this.library = library;
        this.screen = screen;
        this.staff = staff;
        this.own = own;
    }

    /** As a script refers, by who reads it and where it is kept. */
    public static References of(Script script, Coach coach, Library library, Catalog screen) {
        return new References(
                coach, library, screen, script.forStaff(), !script.whose().shared());
    }

    /**
     * The links that stand in place of one reference: one, or several joined with commas and “and”, or “or” where one is
     * enough, where a role is held by several; none where it names nothing.
     *
     * @param given the writer's own words, empty where they are to be filled in
     */
    public List<Inline> resolve(String written, Wish wish, List<Inline> given, Place at, Consumer<Finding> findings) {
        String scheme = scheme(written);
        String name = name(written);
        if (Kinds.named(scheme).isPresent()) {
            return things(scheme, name, wish, given, at, findings);
        }
        return switch (scheme) {
            case "procedure" -> script(Form.PROCEDURE, name, given, at, findings);
            case "trouble" -> script(Form.TROUBLE, name, given, at, findings);
            case "word" -> word(name, given, at, findings);
            case "page" -> page(name, given, at, findings);
            case "stage" -> stage(name, given, at, findings);
            case "phone" -> phone(name, given, at, findings);
            default -> {
                findings.accept(unknownScheme(written, scheme, at));
                yield given;
            }
        };
    }

    /** How the switches that a reference names come into a state, in walking order. */
    List<Block.Handled> handled(String written, Wanted state) {
        return things(scheme(written), name(written)).stream()
                .filter(thing -> staff || !thing.forStaff())
                .filter(Switch.class::isInstance)
                .map(thing -> state.of((Switch) thing, wording()))
                .toList();
    }

    Wording wording() {
        return new Wording(coach, screen);
    }

    /** The kind of what a reference names; empty where it has none. */
    static String scheme(String written) {
        return written.substring(0, Math.max(0, written.indexOf(':')));
    }

    private static String name(String written) {
        return written.substring(written.indexOf(':') + 1);
    }

    /** Names by which a script may ask for others. */
    Map<String, Names> scripts() {
        Map<String, Names> names = new HashMap<>();
        for (Form form : List.of(Form.PROCEDURE, Form.TROUBLE)) {
            names.put(form.scheme(), new ScriptNames(form, coach.unit(), library, staff));
        }
        names.put("turn", new TurnNames(coach, library, staff, false));
        names.put("turn-back", new TurnNames(coach, library, staff, true));
        names.put("acts", new ActNames(coach, library, screen, staff));
        return names;
    }

    private List<Thing> things(String kind, String name) {
        if (name.startsWith(EXACTLY)) {
            return coach.thing(kind, name.substring(EXACTLY.length())).stream().toList();
        }
        return own ? coach.named(kind, name) : coach.inRole(kind, name);
    }

    private List<Inline> things(
            String kind, String name, Wish wish, List<Inline> given, Place at, Consumer<Finding> findings) {
        List<Thing> named = things(kind, name);
        if (named.isEmpty()) {
            findings.accept(nothing(kind, name.startsWith(EXACTLY) ? name.substring(EXACTLY.length()) : name, at));
            return given;
        }
        if (!staff && named.stream().anyMatch(Thing::forStaff)) {
            findings.accept(staffThing(kind, name, at));
            return given;
        }
        if (!given.isEmpty() && named.size() == 1) {
            return List.of(new Inline.Link(new Target.OfThing(kind, named.get(0).id()), given, at));
        }
        Wording wording = wording();
        List<String> separators = screen.separators(named.size(), wish.any());
        Inline.Things things = new Inline.Things(
                named.stream()
                        .map(thing -> new Inline.Things.One(
                                separators.get(named.indexOf(thing)),
                                new Inline.Link(
                                        new Target.OfThing(kind, thing.id()),
                                        List.of(new Inline.Text(thing.name())),
                                        at),
                                wording.place(thing)))
                        .toList(),
                wish.any(),
                wish.state().map(Wanted::word).orElse(""));
        // Words given for several cannot tell them apart, so each says its own name then, and no place.
        return given.isEmpty() ? List.of(things) : things.names();
    }

    private Finding nothing(String kind, String name, Place at) {
        Optional<Role> role = coach.fleet().role(name);
        if (role.filter(it -> it.kind().equals(kind)).isPresent()) {
            return Finding.error("role-not-held", at, "no " + kind + " of this coach has the role `" + name + "`")
                    .mend("Give "
                            + Article.a(kind)
                            + " the role, or guard the text with {{#"
                            + kind
                            + "."
                            + name
                            + "}}.");
        }
        if (!own && role.isEmpty()) {
            return unknownRole(kind, name, at, coach.fleet());
        }
        Optional<String> otherKind = coach.things()
                .filter(thing -> own && thing.id().equals(name))
                .map(Thing::kind)
                .findFirst()
                .or(() -> role.map(Role::kind));
        if (otherKind.isPresent()) {
            return Finding.error(
                            "wrong-kind",
                            at,
                            "`" + name + "` is " + Article.a(otherKind.get()) + ", not " + Article.a(kind))
                    .near(List.of(otherKind.get() + ":" + name));
        }
        return unknownThing(kind, name, at, coach.fleet(), Stream.of(coach.unit()));
    }

    private List<Inline> script(Form form, String id, List<Inline> given, Place at, Consumer<Finding> findings) {
        Optional<Script> script = library.named(coach.unit(), id).filter(it -> it.form() == form);
        if (script.isPresent() && (staff || script.get().head().who().forRenters())) {
            String title = library.translations()
                    .in(screen.language(), script.get())
                    .head()
                    .title();
            return link(new Target.OfProcedure(id), given, title, at);
        }
        findings.accept(script.isPresent() ? staffScript(form, id, at) : unknownScript(form, id, at, library));
        return given;
    }

    private List<Inline> word(String id, List<Inline> given, Place at, Consumer<Finding> findings) {
        Optional<Word> word = coach.fleet().word(id);
        if (word.isEmpty()) {
            findings.accept(unknownWord(id, at, coach.fleet()));
            return given;
        }
        return link(new Target.OfWord(id), given, word.get().word(), at);
    }

    private List<Inline> page(String id, List<Inline> given, Place at, Consumer<Finding> findings) {
        Optional<Finding> unknown = unknownPage(id, at, staff);
        unknown.ifPresent(findings);
        return unknown.isPresent() ? given : link(new Target.OfPage(id), given, screen.say("page." + id), at);
    }

    private List<Inline> stage(String id, List<Inline> given, Place at, Consumer<Finding> findings) {
        boolean used = library.of(coach.unit()).stream()
                .anyMatch(script -> script.head().who().forRenters()
                        && script.head().stage().word().equals(id));
        if (!used) {
            findings.accept(unknownStage(id, at)
                    .orElseGet(() -> Finding.error(
                                    "unknown-reference",
                                    at,
                                    "no procedure for renters of this coach is of stage `" + id + "`")
                            .mend("Take the reference out.")));
            return given;
        }
        return link(new Target.OfStage(id), given, screen.say("stage." + id), at);
    }

    private List<Inline> phone(String id, List<Inline> given, Place at, Consumer<Finding> findings) {
        if (id.equals(Phone.EMERGENCY)) {
            return coach.country()
                    .map(country -> new EmergencyNumbers(coach, screen).all(country, given, at))
                    // A country that is not on the list is told where it is named.
                    .orElse(given);
        }
        Fleet fleet = coach.fleet();
        if (!fleet.phonesRead()) {
            // Whatever its number is, the text names a phone here.
            return link(new Target.OfPhone(id, ""), given, id, at);
        }
        Optional<Phone> phone = fleet.phone(id);
        if (phone.isEmpty()) {
            unknownPhone(id, at, fleet).ifPresent(findings);
            return given;
        }
        String number = phone.get().number();
        return link(new Target.OfPhone(id, number), given, number, at);
    }

    private static List<Inline> link(Target target, List<Inline> given, String name, Place at) {
        return List.of(new Inline.Link(target, given.isEmpty() ? List.of(new Inline.Text(name)) : given, at));
    }

    // The findings below are also told of references that no coach's filling reaches; the words
    // must be the same.

    static Finding staffThing(String kind, String name, Place at) {
        return Finding.error(
                        "staff-thing-for-renter",
                        at,
                        kind + " `" + name + "` is for staff, and this text is for renters")
                .mend("Take the reference out; renters never see that " + kind + ".");
    }

    static Finding staffScript(Form form, String id, Place at) {
        return Finding.error("staff-procedure-for-renter", at, form.called() + " `" + id + "` is for staff")
                .mend("Take the reference out; renters never see that page.");
    }

    static boolean isScheme(String scheme) {
        return Kinds.named(scheme).isPresent() || OTHER_SCHEMES.contains(scheme);
    }

    static Finding unknownScheme(String written, String scheme, Place at) {
        String message = scheme.isEmpty()
                ? "`" + written + "` is no reference; it has no kind"
                : "`" + scheme + "` is no kind of thing that a reference may name";
        return Finding.error("unknown-kind", at, message)
                .near(NearNames.to(
                        scheme,
                        Stream.concat(Kinds.names().stream(), OTHER_SCHEMES.stream())
                                .toList()))
                .mend("Write the kind and the name: `switch:house-battery-switch`.");
    }

    /** Near names come from ids and roles of that kind, and a former id leads to the new one. */
    static Finding unknownThing(String kind, String name, Place at, Fleet fleet, Stream<Unit> units) {
        List<Thing> things = Stream.concat(units.flatMap(Unit::things), fleet.siteThings())
                .filter(thing -> thing.kind().equals(kind))
                .toList();
        List<String> now = things.stream()
                .filter(thing -> thing.formerly().contains(name))
                .map(Thing::id)
                .distinct()
                .toList();
        List<String> known = Stream.concat(
                        things.stream().map(Thing::id),
                        fleet.roles().stream()
                                .filter(role -> role.kind().equals(kind))
                                .map(Role::id))
                .toList();
        return Finding.error("unknown-reference", at, "there is no " + kind + " `" + name + "`")
                .near(now.isEmpty() ? NearNames.to(name, known) : now)
                .mend("Name " + Article.a(kind) + " by its id, or by a role.");
    }

    /** What a text for several coaches calls by an id of one of them, or by no name at all. */
    static Finding unknownRole(String kind, String name, Place at, Fleet fleet) {
        List<Thing> called = Stream.concat(fleet.units().stream().flatMap(Unit::things), fleet.siteThings())
                .filter(thing -> thing.kind().equals(kind) && thing.id().equals(name))
                .toList();
        List<Role> ofKind =
                fleet.roles().stream().filter(role -> role.kind().equals(kind)).toList();
        List<String> roles = ofKind.stream().map(Role::id).toList();
        List<String> now = Role.formerly(name, ofKind);
        List<String> held = called.stream()
                .flatMap(thing -> thing.roles().stream())
                .distinct()
                .toList();
        return Finding.error(
                        "unknown-reference",
                        at,
                        called.isEmpty()
                                ? "there is no role `" + name + "` of " + Article.a(kind)
                                : "`" + name + "` is the id of one coach's " + kind
                                        + ", and this text is for several coaches")
                .near(!now.isEmpty() ? now : held.isEmpty() ? NearNames.to(name, roles) : held)
                .mend("Name " + Article.a(kind) + " by its role.");
    }

    public static Finding unknownScript(Form form, String id, Place at, Library library) {
        Optional<Form> other = library.scripts().stream()
                .filter(script -> script.id().equals(id))
                .map(Script::form)
                .findFirst();
        if (other.isPresent() && other.get() != form) {
            return Finding.error(
                            "wrong-kind", at, "`" + id + "` is a " + other.get().called() + ", not a " + form.called())
                    .near(List.of(other.get().scheme() + ":" + id));
        }
        if (other.isPresent()) {
            return Finding.error(
                            "procedure-does-not-apply",
                            at,
                            form.called() + " `" + id + "` does not apply to this coach")
                    .mend("Guard the reference with the features that it asks for.");
        }
        List<Script> scripts = library.scripts().stream()
                .filter(script -> script.form() == form)
                .toList();
        Finding unknown =
                unknown(form.called(), id, at, scripts.stream().map(Script::id).toList());
        List<String> now = scripts.stream()
                .filter(script -> script.head().facts().all(Head.FORMERLY).contains(id))
                .map(Script::id)
                .toList();
        return now.isEmpty() ? unknown : unknown.near(now);
    }

    static Finding unknownWord(String id, Place at, Fleet fleet) {
        return unknown("word", id, at, fleet.words().stream().map(Word::id).toList());
    }

    static Optional<Finding> unknownPage(String id, Place at, boolean staff) {
        if (PageKind.FOR_EVERYBODY.contains(id) || staff && PageKind.FOR_STAFF.contains(id)) {
            return Optional.empty();
        }
        return Optional.of(
                PageKind.FOR_STAFF.contains(id)
                        ? Finding.error("staff-page-for-renter", at, "page `" + id + "` is for staff")
                                .mend("Take the reference out; renters never see that page.")
                        : unknown("page", id, at, PageKind.FOR_EVERYBODY));
    }

    boolean own() {
        return own;
    }

    boolean staff() {
        return staff;
    }

    Library library() {
        return library;
    }

    public static Optional<Finding> unknownStage(String id, Place at) {
        List<String> stages = Arrays.stream(Stage.values()).map(Stage::word).toList();
        return stages.contains(id) ? Optional.empty() : Optional.of(unknown("stage", id, at, stages));
    }

    static Optional<Finding> unknownPhone(String id, Place at, Fleet fleet) {
        List<String> phones = fleet.phones().stream().map(Phone::id).toList();
        return phones.contains(id) ? Optional.empty() : Optional.of(unknown("phone", id, at, phones));
    }

    private static Finding unknown(String kind, String id, Place at, List<String> known) {
        return Finding.error("unknown-reference", at, "there is no " + kind + " `" + id + "`")
                .near(NearNames.to(id, known))
                .mend(
                        known.isEmpty()
                                ? "This fleet has none."
                                : known.size() > 12
                                        ? "The reference for writers lists them."
                                        : "Known: " + String.join(", ", known) + ".");
    }
}
