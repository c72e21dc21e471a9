package bayfolio.rename;

import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.model.Role;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.read.Scalars;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A thing of a coach, or a role, under another name wherever the fleet names it, with the old one under {@code formerly}. All of it is
 * made in memory, read again and checked; nothing is written before {@link #make}.
 */
public final class Rename {
    private static final String UNREAD = "Not all files that hold the name can be read.";

    private final Folder folder;
    private final FleetReader.Reading reading;
    private final Catalogs catalogs;
    private final Drafts drafts;

    /** What gets another name, and which. */
    private final NewName name;

    private Rename(Folder folder, FleetReader.Reading reading, Catalogs catalogs, NewName name) {
        this.folder = folder;
        this.reading = reading;
        this.catalogs = catalogs;
        this.name = name;
        this.drafts = new Drafts(folder);
    }

    /**
     * Another id for a thing.
     *
     * @param coach the name of its folder
     * @param old its id, or kind and id: {@code switch:pump}
     * @param after the new id
     * @param catalogs the words of pages, for the check of them
     */
    public static Rename ofThing(Folder folder, String coach, String old, String after, Catalogs catalogs)
            throws IOException, RenameException {
        FleetReader.Reading reading = FleetReader.read(folder);
        List<Coach> all = coaches(reading);
        Coach one = all.stream()
                .filter(it -> NewId.folder(it.unit()).equals("units/" + coach))
                .findFirst()
                .orElseThrow(() -> RenameException.of(
                        "Coach `" + coach + "` cannot be read.",
                        reading.findings().stream()
                                .filter(finding -> finding.isError()
                                        && (finding.coaches().isEmpty()
                                                || finding.coaches().contains(coach)))
                                .toList()));
        Thing thing = thing(one, old);
        valid(thing.id(), after);
        NewId name = name(folder, one, thing, after, all, unread(reading));
        Rename rename = new Rename(folder, reading, catalogs, name);
        name.free(reading.fleet());
        rename.prepare();
        return rename;
    }

    /** Another word for a role, in the whole fleet. */
    public static Rename ofRole(Folder folder, String old, String after, Catalogs catalogs)
            throws IOException, RenameException {
        FleetReader.Reading reading = FleetReader.read(folder);
        Fleet fleet = reading.fleet();
        if (fleet.roles().isEmpty()) {
            throw RenameException.of(
                    "The list of roles cannot be read.",
                    reading.findings().stream().filter(Finding::isError).toList());
        }
        Role role = fleet.role(old).orElseThrow(() -> {
            List<String> now = Role.formerly(old, fleet.roles());
            return RenameException.ofTheCall("There is no role `" + old + "`."
                    + near(
                            now.isEmpty()
                                    ? NearNames.to(
                                            old,
                                            fleet.roles().stream().map(Role::id).toList())
                                    : now));
        });
        valid(old, after);
        NewRole name = NewRole.of(role, after, folder, reading, coaches(reading));
        name.free(fleet);
        Rename rename = new Rename(folder, reading, catalogs, name);
        rename.prepare();
        return rename;
    }

    private static List<Coach> coaches(FleetReader.Reading reading) {
        return reading.fleet().units().stream()
                .map(unit -> new Coach(reading.fleet(), unit))
                .toList();
    }

    // ---- what was asked for

    private static Thing thing(Coach coach, String old) throws RenameException {
        int colon = old.indexOf(':');
        String kind = colon < 0 ? "" : old.substring(0, colon);
        String id = old.substring(colon + 1);
        if (colon >= 0 && Kinds.named(kind).isEmpty()) {
            throw RenameException.ofTheCall(
                    "There is no kind of thing `" + kind + "`." + near(NearNames.to(kind, Kinds.names())));
        }
        List<Thing> things = coach.things()
                .filter(thing -> colon < 0 || thing.kind().equals(kind))
                .toList();
        List<Thing> called =
                things.stream().filter(thing -> thing.id().equals(id)).toList();
        if (called.isEmpty()) {
            List<String> now = things.stream()
                    .filter(thing -> thing.facts().ifRead(thing.identity().formerly()).stream()
                            .flatMap(names -> names.value().stream())
                            .anyMatch(name -> name.value().equals(id)))
                    .map(Thing::id)
                    .toList();
            throw RenameException.ofTheCall("Coach `" + coach.unit().id() + "` has nothing called `" + old + "`."
                    + near(
                            now.isEmpty()
                                    ? NearNames.to(
                                            id, things.stream().map(Thing::id).toList())
                                    : now));
        }
        if (called.size() > 1) {
            boolean kinds = called.stream().map(Thing::kind).distinct().count() == called.size();
            String all = called.stream()
                    .map(thing -> "`" + thing.kind() + ":" + thing.id() + "` at " + thing.at())
                    .collect(Collectors.joining(", "));
            throw kinds
                    ? RenameException.ofTheCall(
                            "`" + old + "` is the id of several things: " + all + ". Say which, with its kind.")
                    : RenameException.of("`" + old + "` is the id of several things: " + all
                            + ". Give one of them another id by hand.");
        }
        return called.get(0);
    }

    private static String near(List<String> near) {
        return near.isEmpty() ? "" : " Did you mean `" + String.join("` or `", near) + "`?";
    }

    private static void valid(String before, String after) throws RenameException {
        Type.Text id = (Type.Text) Type.ID;
        if (!Pattern.compile(id.pattern()).matcher(after).find()) {
            throw RenameException.ofTheCall("`" + after + "` is no id; an id is " + id.taken() + ".");
        }
        if (before.equals(after)) {
            throw RenameException.ofTheCall("`" + after + "` is its name already.");
        }
    }

    /** Folders of coaches of which nobody knows what they have. */
    private static List<String> unread(FleetReader.Reading reading) {
        List<String> read = reading.fleet().units().stream().map(NewId::folder).toList();
        return reading.folders().stream()
                .map(name -> "units/" + name)
                .filter(path -> !read.contains(path))
                .toList();
    }

    /** Whether a description that cannot be read names a model, as people write it. */
    private static boolean isOf(Folder folder, String coach, String model) {
        Pattern line = Pattern.compile("(?m)^[\"']?model[\"']?[ \\t]*:[ \\t]+[\"']?" + Pattern.quote(model) + "\\b");
        return folder.text(coach + "/unit.yaml", told -> {})
                .filter(file -> line.matcher(file.text()).find())
                .isPresent();
    }

    private static NewId name(
            Folder folder, Coach coach, Thing thing, String after, List<Coach> all, List<String> unread)
            throws RenameException {
        boolean ofTheSite = coach.unit().things().noneMatch(it -> it == thing);
        Optional<String> model = coach.unit().model().filter(it -> !ofTheSite);
        List<Scalars.Scalar> shared = model.stream()
                .flatMap(it -> folder.text(NewId.MODELS + it + "/model.yaml", told -> {}).stream())
                .flatMap(file -> Scalars.of(file, Unit.SHAPE, told -> {}).stream())
                .filter(scalar -> scalar.key().equals("id")
                        && Kinds.named(scalar.of().name()).isPresent())
                .toList();
        boolean ofTheModel = shared.stream()
                .anyMatch(scalar ->
                        scalar.text().equals(thing.id()) && scalar.of().name().equals(thing.kind()));
        Optional<Place> taken = shared.stream()
                .filter(scalar -> scalar.text().equals(after))
                .map(Scalars.Scalar::at)
                .findFirst();
        if (taken.isPresent()) {
            throw RenameException.of(
                    "`" + after + "` is the id of another thing already, which the model has, at " + taken.get() + ".");
        }
        List<Coach> sisters = all.stream()
                .filter(it -> ofTheSite
                        || it == coach
                        || ofTheModel && it.unit().model().equals(model))
                .toList();
        List<String> unreadToo = unread.stream()
                .filter(path -> ofTheSite || ofTheModel && isOf(folder, path, model.orElseThrow()))
                .toList();
        return new NewId(
                thing.kind(), thing.id(), after, sisters, unreadToo, model.filter(it -> ofTheModel), ofTheSite);
    }

    // ---- making it

    private void prepare() throws IOException, RenameException {
        Check check = check(reading);
        List<Script> texts = Texts.of(reading.library());
        Unread unread = new Unread(folder, name, reading.findings(), texts);
        refuseFor(UNREAD, unread.findings());
        refuseAgainst(UNREAD, unread.against());
        new Uses(folder, name, drafts)
                .renamed(
                        texts.stream().filter(name::concerns).toList(),
                        new Mentions(reading.fleet(), reading.library()));
        refuseAgainst("Not every place can be changed.", drafts.refused());
        Map<String, String> first = drafts.changed();
        FleetReader.Reading edited = FleetReader.read(folder.with(first));
        formerly(edited);
        new Digests(name, reading, edited, drafts).carried();
        refuseAgainst("Not every place can be changed.", drafts.refused());
        boolean more = !drafts.changed().equals(first);
        FleetReader.Reading renamed = more ? FleetReader.read(folder.with(drafts.changed())) : edited;
        Check after = check(renamed);
        prove(check, after, renamed);
        refuseFor(UNREAD, new WorkLists(folder, name, drafts).carried(check, after));
        refuseAgainst("Not every place can be changed.", drafts.refused());
        schemas();
    }

    private Check check(FleetReader.Reading of) {
        // No coach depends on another one.
        List<Unit> looked = of.fleet().units().stream().filter(name::concerns).toList();
        return Check.of(of.fleet(), of.library(), catalogs, of.findings(), looked, coach -> {});
    }

    private void prove(Check before, Check after, FleetReader.Reading renamed) throws RenameException {
        Proof proof = new Proof(name, reading, renamed);
        List<Finding> was = before.findings().all();
        List<Finding> is = after.findings().all();
        refuseFor("Under the new name something would be wrong that is not now.", proof.more(was, is));
        refuseFor("Under the new name something would not be told any more.", proof.more(is, was));
        refuseAgainst("Under the new name something would not mean what it means now.", proof.saidOtherwise());
    }

    private static void refuseFor(String sentence, List<Finding> findings) throws RenameException {
        if (!findings.isEmpty()) {
            throw RenameException.of(sentence, findings);
        }
    }

    private static void refuseAgainst(String sentence, List<Against> against) throws RenameException {
        if (!against.isEmpty()) {
            throw RenameException.against(sentence, against);
        }
    }

    /** A coach that describes a thing of its model anew says itself what it was called. */
    private void formerly(FleetReader.Reading edited) throws IOException {
        if (!(name instanceof NewId id)) {
            return;
        }
        for (Coach coach : coaches(edited)) {
            Optional<Thing> thing = coach.thing(id.kind(), id.after())
                    .filter(it -> name.concerns(coach.unit()) && !it.formerly().contains(id.before()));
            if (thing.isPresent()) {
                Place at = thing.get().at();
                List<Scalars.Scalar> gives = folder.with(drafts.changed())
                        .text(at.file().path(), told -> {})
                        .map(file -> Scalars.of(file, Unit.SHAPE, told -> {}).stream()
                                .filter(it -> it.at().start().equals(at.start()))
                                .toList())
                        .orElse(List.of());
                for (Scalars.Scalar scalar : gives) {
                    drafts.edit(
                            at.file().path(), false, Uses.formerly(scalar.way().around(), id.before()), at);
                }
            }
        }
    }

    /** What offers editors the ids of a model, where somebody has it. */
    private void schemas() throws IOException {
        Folder renamed = folder.with(drafts.changed());
        List<String> models = name instanceof NewId id ? id.model().stream().toList() : List.of();
        for (String model : models) {
            Optional<SourceFile> schema = renamed.schemaOf(model).filter(file -> folder.has(file.path()));
            if (schema.isPresent()) {
                drafts.put(schema.get());
            }
        }
    }

    // ---- what came of it

    /** What it is, in words, before and after: {@code switch `pump` is `water-pump`}. */
    public String told() {
        return name.called() + " is now called `" + name.after() + "`";
    }

    /** For which coaches besides the one that was named, in a sentence; empty where it is for no other. */
    public Optional<String> alsoFor() {
        if (!(name instanceof NewId id) || id.model().isEmpty() && !id.ofTheSite()) {
            return Optional.empty();
        }
        String coaches = id.coaches().stream().map(coach -> coach.unit().id()).collect(Collectors.joining(", "));
        return Optional.of(id.model()
                        .map(model -> "It is a thing of the model `" + model + "`")
                        .orElse("It stands at the site, and is described once for the fleet")
                + ", so this is for all of its coaches: " + coaches + ".");
    }

    /** All that would be written. */
    public String difference() {
        return drafts.difference();
    }

    /** How many files would be written. */
    public int files() {
        return drafts.changed().size();
    }

    /**
     * Writes all of it.
     *
     * @throws IOException where a file says something else by now, or cannot be written; all files stay as they are then
     */
    public void make() throws IOException {
        drafts.make();
    }
}
