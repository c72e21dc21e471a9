package bayfolio.reckon;

import bayfolio.measure.Kilograms;
import bayfolio.model.Region;

/** What the regulations take a person for. */
public final class Person {
    /** 49 CFR 567.4(g)(3): 150 lb for each designated seat. */
    private static final Kilograms NORTH_AMERICA = new Kilograms(150 * 0.45359237);

    /** Regulation (EU) 1230/2012 Article 2: 75 kg for the driver, and for each passenger. */
    private static final Kilograms EUROPE = new Kilograms(75);

    private Person() {}

    public static Kilograms weight(Region region) {
        return region == Region.NORTH_AMERICA ? NORTH_AMERICA : EUROPE;
    }

    /** What so many weigh together. */
    public static Kilograms weight(int count, Region region) {
        return new Kilograms(count * weight(region).value());
    }
}
