package bayfolio.rename;

import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Equipment;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Role;
import bayfolio.model.Roles;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.read.Scalars;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A role that gets another word, for the whole fleet.
 *
 * @param home the file of the list of roles
 * @param descriptions all there are
 */
record NewRole(Role role, String after, String home, List<Description> descriptions, List<Coach> coaches)
        implements NewName {
    NewRole {
        descriptions = List.copyOf(descriptions);
        coaches = List.copyOf(coaches);
    }

    static NewRole of(Role role, String after, Folder folder, FleetReader.Reading reading, List<Coach> coaches) {
        String home = role.facts().at().file().path();
        List<Description> all = new ArrayList<>();
        all.add(new Description(home, Roles.SHAPE, Optional.empty(), false));
        all.add(new Description(FleetReader.FLEET, FleetFacts.SHAPE, Optional.empty(), false));
        folder.models()
                .forEach(model -> all.add(
                        new Description(NewId.MODELS + model + "/model.yaml", Unit.SHAPE, Optional.empty(), false)));
        coaches.forEach(coach -> all.add(
                new Description(NewId.folder(coach.unit()) + "/unit.yaml", Unit.SHAPE, Optional.of(coach), false)));
        equipment(reading.library())
                .forEach(path -> all.add(new Description(path, Equipment.SHAPE, Optional.empty(), true)));
        return new NewRole(role, after, home, all, coaches);
    }

    private static List<String> equipment(Library library) {
        return library.acts().stream().map(acts -> acts.script().file().path()).toList();
    }

    @Override
    public String before() {
        return role.id();
    }

    @Override
    public String called() {
        return "role `" + before() + "`";
    }

    @Override
    public List<String> folders() {
        return List.of("units");
    }

    @Override
    public boolean concerns(Script script) {
        return true;
    }

    @Override
    public boolean concerns(Unit unit) {
        return true;
    }

    @Override
    public boolean means(Scalars.Scalar scalar, Description in) {
        return scalar.type() instanceof Type.Role && scalar.text().equals(before());
    }

    @Override
    public boolean gives(Scalars.Scalar scalar) {
        return scalar.sort() == Scalars.Sort.FACT
                && scalar.of() == Role.SHAPE
                && scalar.key().equals(Role.ID.name())
                && scalar.text().equals(before());
    }

    /** In a coach's own text a thing that does not hold the role may be called so. */
    @Override
    public boolean means(Mentions.Mention mention) {
        if (!mention.name().equals(before())) {
            return false;
        }
        if (mention.script().whose().shared()) {
            return true;
        }
        List<Coach> its = coaches.stream()
                .filter(coach -> mention.script().whose().has(coach.unit()))
                .toList();
        return its.isEmpty() || its.stream().anyMatch(coach -> byItsRole(mention.kind(), coach));
    }

    private boolean byItsRole(String kind, Coach coach) {
        return coach.thing(kind, before())
                .map(thing -> Meaning.holders(coach, kind, before()).contains(thing))
                // One to another kind is wrong, and this is what it is wrong about, if no thing of any kind is.
                .orElseGet(() -> kind.equals(role.kind())
                        || coach.things().noneMatch(thing -> thing.id().equals(before())));
    }

    @Override
    public Steps moved(Steps way) {
        return way;
    }

    @Override
    public Optional<String> moved(String factText) {
        return Optional.empty();
    }

    @Override
    public String listed(String key) {
        return key;
    }

    /**
     * @throws RenameException where the new name is not free, or the old one must stay
     */
    void free(Fleet fleet) throws RenameException {
        Optional<Role> other = fleet.role(after);
        if (other.isPresent()) {
            throw RenameException.of("`" + after + "` is another role already, at "
                    + other.get().facts().at(Role.ID) + ".");
        }
        for (Role each : fleet.roles()) {
            boolean formerly = each.facts().ifRead(Role.FORMERLY).stream()
                    .flatMap(names -> names.value().stream())
                    .anyMatch(name -> name.value().equals(after));
            if (each != role && formerly) {
                throw RenameException.of("`" + after + "` is what role `" + each.id() + "` was called before, at "
                        + each.facts().at(Role.FORMERLY)
                        + ". Choose another name, or take it out there, if nobody writes it any more.");
            }
        }
        for (String name : List.of(before(), after)) {
            if (ProgramRoles.asksFor(name)) {
                throw RenameException.of("`" + name + "` is a role that the program itself asks for by that name; "
                        + (name.equals(before())
                                ? "under another one its rules and pages would pass it by in silence."
                                : "what is called so is not only renamed but takes that part."));
            }
        }
    }
}
