package bayfolio.ask;

import bayfolio.measure.Quantity;
import bayfolio.procedure.Stated;
import bayfolio.source.Place;
import java.util.Optional;

/**
 * That a coach has something that was asked for.
 *
 * @param coach its id
 * @param what the name by which this can be asked for alone: {@code tank.gray-tank.capacity}
 * @param value as readers read it: {@code 40 gal (151 L)}; of a thing its name, of a text its title
 * @param figure the measure, where it is one
 * @param at where it is written
 */
public record Answer(String coach, String what, String value, Optional<Quantity> figure, Place at) {
    static Answer of(String coach, String what, String value, Place at) {
        return new Answer(coach, what, value, Optional.empty(), at);
    }

    static Answer of(String coach, Stated stated) {
        return new Answer(coach, stated.name(), stated.words(), stated.figure(), stated.at());
    }
}
