package bayfolio.reckon.fuel;

import bayfolio.fact.Key;
import bayfolio.measure.LitersPerHour;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.FuelPrices;
import bayfolio.model.Generator;
import java.util.Optional;

/**
 * What a fuel costs.
 *
 * @param amount for one of it, in the currency
 */
public record FuelPrice(double amount, String currency, Per per) {
    public enum Per {
        GALLON,
        LITER
    }

    public static Optional<FuelPrice> of(Fleet fleet, Generator.Fuel fuel) {
        return fleet.facts()
                .facts()
                .find(FleetFacts.FUEL_PRICES)
                .flatMap(prices -> prices.facts().find(key(fuel)))
                .map(FuelPrice::read);
    }

    /** Where its price is stated. */
    public static Key<String> key(Generator.Fuel fuel) {
        return switch (fuel) {
            case GASOLINE -> FuelPrices.GASOLINE;
            case DIESEL -> FuelPrices.DIESEL;
            case LP_GAS -> FuelPrices.LP_GAS;
        };
    }

    /**
     * @param written {@code 3.45 USD/gal}, as the description takes it and nothing else
     */
    public static FuelPrice read(String written) {
        int space = written.indexOf(' ');
        int slash = written.indexOf('/');
        return new FuelPrice(
                Double.parseDouble(written.substring(0, space)),
                written.substring(space + 1, slash),
                written.endsWith("/gal") ? Per.GALLON : Per.LITER);
    }

    /** What an hour costs, in the currency. */
    public double hourly(LitersPerHour burned) {
        return amount
                * switch (per) {
                    case GALLON -> burned.gallons();
                    case LITER -> burned.value();
                };
    }
}
