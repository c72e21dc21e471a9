package bayfolio.model;

import bayfolio.fact.Shape;
import java.util.List;
import java.util.Optional;

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
            Photo.SHAPE);

    private Kinds() {}

    public static List<String> names() {
        return ALL.stream().<String>map(Shape::name).toList();
    }

    public static Optional<Shape<? extends Thing>> named(String name) {
        return ALL.stream().filter(shape -> shape.name().equals(name)).findFirst();
    }
}
