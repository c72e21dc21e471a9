package bayfolio.reckon.weight;

import bayfolio.measure.Kilograms;
import bayfolio.model.Region;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;

/** What the regulations take a person for. */
public final class Person {
    static final Table TABLE = Table.read("weight");

    private static final Published<Kilograms> NORTH_AMERICA = TABLE.quantity("person.north-america", Kilograms.SCALE);
    private static final Published<Kilograms> EUROPE = TABLE.quantity("person.europe", Kilograms.SCALE);

    private Person() {}

    public static Published<Kilograms> usual(Region region) {
        return region == Region.NORTH_AMERICA ? NORTH_AMERICA : EUROPE;
    }

    public static Kilograms weight(Region region) {
        return usual(region).value();
    }

    /** What so many weigh together. */
    public static Kilograms weight(int count, Region region) {
        return new Kilograms(count * weight(region).value());
    }
}
