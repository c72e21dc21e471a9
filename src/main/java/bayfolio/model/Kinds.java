package bayfolio.model;

import bayfolio.fact.Shape;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of things that a reference may name. */
public final class Kinds {
    public static final List<Shape<? extends Thing>> ALL = List.of(
            Compartment.SHAPE,
            Tray.SHAPE,
            Door.SHAPE,
            Step.SHAPE,
            Switch.SHAPE,
            Gauge.SHAPE,
            Connection.SHAPE,
            Tank.SHAPE,
            Supply.SHAPE,
            Adapter.SHAPE,
            Circuit.SHAPE,
            Load.SHAPE,
            Bank.SHAPE,
            Appliance.SHAPE,
            Slide.SHAPE,
            Awning.SHAPE,
            Item.SHAPE,
            Photo.SHAPE,
            Film.SHAPE);

    private Kinds() {}

    private static final Map<String, Shape<? extends Thing>> BY_NAME =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Shape::name, shape -> shape));

    private static final List<String> NAMES =
            ALL.stream().<String>map(Shape::name).toList();

    public static List<String> names() {
        return NAMES;
    }

    public static Optional<Shape<? extends Thing>> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }
}
