package bayfolio.rename;

import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import bayfolio.read.Scalars;
import bayfolio.source.Place;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A thing that gets another id: that of one coach, that of a model and so of all its coaches, or one of the site, which all
 * coaches know.
 *
 * @param coaches that have it, or may
 * @param unread folders of coaches that may have it, too, and cannot be read
 * @param model whose it is; empty where it is a coach's own or the site's
 */
record NewId(
        String kind,
        String before,
        String after,
        List<Coach> coaches,
        List<String> unread,
        Optional<String> model,
        boolean ofTheSite)
        implements NewName {
    /** Of the texts of a fleet's own facts. */
    private static final String SHARED = "units/shared";

    static final String MODELS = "units/models/";

    NewId {
        coaches = List.copyOf(coaches);
        unread = List.copyOf(unread);
    }

    /** The folder of a coach. */
    static String folder(Unit unit) {
        return unit.facts().at().file().folder();
    }

    @Override
    public String called() {
        return kind + " `" + before + "`";
    }

    @Override
    public String home() {
        return ofTheSite
                ? FleetReader.FLEET
                : model.map(name -> MODELS + name + "/model.yaml")
                        .orElseGet(() -> description(coaches.get(0).unit()));
    }

    private static String description(Unit unit) {
        return folder(unit) + "/unit.yaml";
    }

    @Override
    public List<Description> descriptions() {
        List<Description> all = new ArrayList<>();
        Optional<Coach> first = coaches.stream().findFirst();
        if (ofTheSite) {
            all.add(new Description(FleetReader.FLEET, FleetFacts.SHAPE, first, false));
        }
        models().forEach(name -> all.add(new Description(
                MODELS + name + "/model.yaml",
                Unit.SHAPE,
                coaches.stream()
                        .filter(coach -> coach.unit().model().equals(Optional.of(name)))
                        .findFirst(),
                false)));
        coaches.forEach(
                coach -> all.add(new Description(description(coach.unit()), Unit.SHAPE, Optional.of(coach), false)));
        return all;
    }

    /** Models whose files may speak of it. */
    private List<String> models() {
        return ofTheSite
                ? coaches.stream()
                        .flatMap(coach -> coach.unit().model().stream())
                        .distinct()
                        .sorted()
                        .toList()
                : model.stream().toList();
    }

    @Override
    public List<String> folders() {
        return Stream.of(
                        ofTheSite ? Stream.of(SHARED) : Stream.<String>of(),
                        models().stream().map(name -> MODELS + name),
                        coaches.stream().map(coach -> folder(coach.unit())),
                        unread.stream())
                .flatMap(it -> it)
                .toList();
    }

    @Override
    public boolean concerns(Script script) {
        Whose whose = script.whose();
        return !whose.shared()
                && (!(whose instanceof Whose.OfAModel of) || models().contains(of.model()) || model.isEmpty())
                && coaches.stream().anyMatch(coach -> whose.has(coach.unit()));
    }

    @Override
    public boolean concerns(Unit unit) {
        return coaches.stream().anyMatch(coach -> coach.unit().id().equals(unit.id()));
    }

    @Override
    public boolean means(Scalars.Scalar scalar, Description in) {
        if (!scalar.text().equals(before)) {
            return false;
        }
        if (scalar.sort() != Scalars.Sort.FACT) {
            // What is left out, or said otherwise, as a whole goes by its id.
            return scalar.of() == Unit.SHAPE && Unit.SHAPE.key(before).isEmpty();
        }
        return scalar.type() instanceof Type.Reference reference
                && in.coach()
                        .map(coach -> coach.referred(reference, before)
                                .map(thing -> thing.kind().equals(kind))
                                // One to another kind is wrong, and this is what it is wrong about.
                                .orElse(true))
                        .orElse(false);
    }

    @Override
    public boolean gives(Scalars.Scalar scalar) {
        return scalar.sort() == Scalars.Sort.FACT
                && scalar.key().equals("id")
                && scalar.of().name().equals(kind)
                && scalar.text().equals(before);
    }

    /** What a text calls by a role that the thing holds, it calls so whatever its id. */
    @Override
    public boolean means(Mentions.Mention mention) {
        return mention.name().equals(before)
                && coaches.stream()
                        .filter(coach -> mention.script().whose().has(coach.unit()))
                        .anyMatch(coach -> byItsId(mention.kind(), coach));
    }

    private boolean byItsId(String of, Coach coach) {
        List<Thing> holders = Meaning.holders(coach, of, before);
        Optional<Thing> thing = coach.thing(of, before);
        return of.equals(kind)
                ? thing.filter(it -> !holders.contains(it)).isPresent()
                : thing.isEmpty()
                        && coach.fleet().role(before).isEmpty()
                        && coach.thing(kind, before).isPresent();
    }

    @Override
    public Steps moved(Steps way) {
        return new Steps(way.all().stream()
                .map(step -> step.equals(new Steps.Id(before)) ? new Steps.Id(after) : step)
                .toList());
    }

    @Override
    public Optional<String> moved(String factText) {
        String own = kind + "/" + before + "/";
        return factText.startsWith(own)
                ? Optional.of(kind + "/" + after + "/" + factText.substring(own.length()))
                : Optional.empty();
    }

    @Override
    public String listed(String key) {
        return key.replaceAll("(?<=/|^)" + kind + "/" + before + "(?=/|$)", kind + "/" + after);
    }

    /**
     * @throws RenameException where the new name is not free
     */
    void free(Fleet fleet) throws RenameException {
        for (Coach coach : coaches) {
            for (Thing other : coach.things().toList()) {
                if (other.id().equals(after) && !isIt(other)) {
                    throw RenameException.of("`" + after + "` is the id of another thing already: " + other.kind()
                            + " `" + after + "` of " + coach.unit().id() + ", at " + other.at() + ".");
                }
                Optional<Place> formerly = formerly(other).filter(it -> !isIt(other));
                if (formerly.isPresent()) {
                    throw RenameException.of("`" + after + "` is what " + other.kind() + " `" + other.id() + "` of "
                            + coach.unit().id() + " was called before, at " + formerly.get()
                            + "; old addresses of that name lead there. Choose another name, or take it out there, if nobody can have"
                            + " such an address.");
                }
            }
        }
    }

    private boolean isIt(Thing thing) {
        return thing.kind().equals(kind) && thing.id().equals(before);
    }

    private Optional<Place> formerly(Thing thing) {
        return thing.facts().ifRead(thing.identity().formerly()).stream()
                .flatMap(names -> names.value().stream())
                .filter(former -> former.value().equals(after))
                .map(former -> former.at())
                .findFirst();
    }

    /** A word that stands alone. */
    static Pattern alone(String name) {
        return Pattern.compile("(?<![a-z0-9-])" + Pattern.quote(name) + "(?![a-z0-9-])");
    }
}
