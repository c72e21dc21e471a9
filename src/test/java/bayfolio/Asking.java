package bayfolio;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Country;
import bayfolio.model.FleetFacts;
import bayfolio.model.Kinds;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The ways in which a script may ask for a fact that is for staff, for each key that is declared so. */
public final class Asking {
    /** In a way, before the tag that asks. */
    public static final String HERE = "@";

    private Asking() {}

    /**
     * @param prints whether what it asks for would be printed, not only whether it is there
     */
    public record Way(Key<?> key, String text, boolean prints) {}

    /**
     * @param tried keys for which there are ways already; those of this coach are added
     */
    public static List<Way> ways(Coach coach, Set<Key<?>> tried) {
        Unit unit = coach.unit();
        List<Way> ways = new ArrayList<>();
        for (Shape<? extends Thing> kind : Kinds.ALL) {
            Optional<Thing> thing = unit.things()
                    .filter(it -> it.kind().equals(kind.name()) && !it.forStaff())
                    .findFirst();
            for (Key<?> key : forStaff(kind)) {
                if (thing.isPresent() && tried.add(key)) {
                    ways.addAll(ways(key, ofThing(thing.get(), key)));
                }
            }
        }
        record("unit", unit.facts(), tried, ways);
        coach.country().ifPresent(country -> record("country", country.facts(), tried, ways));
        return ways;
    }

    /** Of a record and those within it that are no things. */
    private static void record(String path, Facts facts, Set<Key<?>> tried, List<Way> ways) {
        facts.each((key, value) -> {
            if (key.forStaff()) {
                ways.addAll(tried.add(key) ? ways(key, within(path, key)) : List.of());
            } else if (value.value() instanceof Described record) {
                record(path + "." + key.name(), record.facts(), tried, ways);
            } else if (key.type() instanceof Type.ListOf<?> list
                    && list.element() instanceof Type.Nested<?> nested
                    && !Kinds.ALL.contains(nested.shape())) {
                for (Key<?> each : forStaff(nested.shape())) {
                    ways.addAll(tried.add(each) ? ways(each, among(path + "." + key.name(), each)) : List.of());
                }
            }
        });
    }

    private static List<Way> ways(Key<?> key, List<String> texts) {
        return texts.stream()
                .map(text -> new Way(key, text, !text.contains("It is")))
                .toList();
    }

    private static List<Key<?>> forStaff(Shape<?> shape) {
        return shape.keys().stream().filter(Key::forStaff).toList();
    }

    /** All keys for staff that a description of a coach, a fleet or a country may have. */
    public static Set<Key<?>> declared() {
        Set<Key<?>> declared = new LinkedHashSet<>();
        declared(Unit.SHAPE, declared);
        declared(FleetFacts.SHAPE, declared);
        declared(Country.SHAPE, declared);
        return declared;
    }

    private static void declared(Shape<?> shape, Set<Key<?>> declared) {
        declared.addAll(forStaff(shape));
        for (Key<?> key : shape.keys()) {
            Type<?> type = key.type() instanceof Type.ListOf<?> list ? list.element() : key.type();
            if (type instanceof Type.Nested<?> nested) {
                declared(nested.shape(), declared);
            }
        }
    }

    private static List<String> ofThing(Thing thing, Key<?> key) {
        String kind = thing.kind();
        String id = kind + "." + thing.id();
        String list =
                "unit." + Canaries.listing(thing.facts().shape()).orElseThrow().name();
        List<String> ways = new ArrayList<>(within(id, key));
        ways.add("{{#all." + kind + "}}" + asked(key.name(), key) + " {{/all." + kind + "}}");
        ways.add("{{#" + list + "}}" + asked(key.name(), key) + " {{/" + list + "}}");
        thing.roles().stream()
                .findFirst()
                .ifPresent(role -> ways.add(
                        "{{#" + kind + "." + role + "}}" + asked(key.name(), key) + " {{/" + kind + "." + role + "}}"));
        return ways;
    }

    private static List<String> within(String path, Key<?> key) {
        String name = path + "." + key.name();
        return List.of(
                asked(name, key),
                "{{#" + path + "}}" + asked(key.name(), key) + "{{/" + path + "}}",
                "{{#" + path + "}}@{{#" + key.name() + "}}There: "
                        + asked(key.name(), key).replace(HERE, "") + "{{/" + key.name() + "}}{{/" + path + "}}",
                "@{{#" + name + "}}It is there.{{/" + name + "}}",
                "@{{^" + name + "}}It is not there.{{/" + name + "}}",
                "{{#" + path + "}}@{{^" + key.name() + "}}It is not there.{{/" + key.name() + "}}{{/" + path + "}}",
                "[" + asked(name, key) + "](page:home)",
                "**" + asked(name, key) + "**",
                "{{#unit.size}}" + asked(name, key) + "{{/unit.size}}");
    }

    private static List<String> among(String list, Key<?> key) {
        String name = key.name();
        return List.of(
                "{{#" + list + "}}" + asked(name, key) + " {{/" + list + "}}",
                "{{#" + list + "}}@{{#" + name + "}}There: {{" + name + "}} {{/" + name + "}}{{/" + list + "}}",
                "{{#" + list + "}}@{{#" + name + "}}It is there.{{/" + name + "}}{{/" + list + "}}",
                "{{#" + list + "}}@{{^" + name + "}}It is not there.{{/" + name + "}}{{/" + list + "}}");
    }

    /** A record is asked for one of its facts. */
    private static String asked(String name, Key<?> key) {
        return key.type() instanceof Type.ListOf<?> list && list.element() instanceof Type.Nested<?> nested
                ? "@{{#" + name + "}}{{" + nested.shape().keyNames().get(0) + "}}{{/" + name + "}}"
                : "@{{" + name + "}}";
    }
}
