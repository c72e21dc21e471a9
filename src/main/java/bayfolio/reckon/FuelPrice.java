package bayfolio.reckon;

import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Rounding;
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
record FuelPrice(double amount, String currency, Per per) {
    enum Per {
        GALLON,
        LITER
    }

    static Optional<FuelPrice> of(Fleet fleet, Generator.Fuel fuel) {
        return fleet.facts()
                .facts()
                .find(FleetFacts.FUEL_PRICES)
                .flatMap(prices -> prices.facts()
                        .find(
                                switch (fuel) {
                                    case GASOLINE -> FuelPrices.GASOLINE;
                                    case DIESEL -> FuelPrices.DIESEL;
                                    case LP_GAS -> FuelPrices.LP_GAS;
                                }))
                .map(FuelPrice::read);
    }

    /**
     * @param written {@code 3.45 USD/gal}, as the description takes it and nothing else
     */
    static FuelPrice read(String written) {
        int space = written.indexOf(' ');
        int slash = written.indexOf('/');
        return new FuelPrice(
                Double.parseDouble(written.substring(0, space)),
                written.substring(space + 1, slash),
                written.endsWith("/gal") ? Per.GALLON : Per.LITER);
    }

    /** {@code 3.80 USD}; never less than it costs. */
    String hourly(LitersPerHour burned) {
        double units = switch (per) {
            case GALLON -> burned.gallons();
            case LITER -> burned.value();
        };
        return Rounding.UP.print(amount * units, 2) + " " + currency;
    }

    /** {@code 3.45 USD a gallon}. */
    String print() {
        return Rounding.UP.print(amount, 2) + " " + currency + (per == Per.GALLON ? " a gallon" : " a liter");
    }
}
