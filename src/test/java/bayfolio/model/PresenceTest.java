package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.LeastUnit;
import bayfolio.read.FleetReader;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PresenceTest {
    @TempDir
    private Path folder;

    /** Two alarms are no alarm for both. */
    @Test
    void eachTestOfARoleIsAskedOfTheSameThing() throws Exception {
        assertThat(holds("gas-alarm", "co-alarm")).isFalse();
        assertThat(holds("gas-alarm, co-alarm", "smoke-alarm")).isTrue();
    }

    private boolean holds(String first, String second) throws Exception {
        FleetReader.Reading reading = LeastUnit.read(
                folder,
                "gauges: [{id: a, name: A, shows: gas, roles: [" + first + "]}, {id: b, name: B, shows: gas, roles: ["
                        + second + "]}]");
        Unit unit = reading.fleet().units().get(0);
        String written = "gauge[role = gas-alarm, role = co-alarm]";
        return new PresenceWords(reading.fleet().equipment().words())
                .read(new Located<>(written, Place.whole(new SourceFile("test", written))), told -> {})
                .orElseThrow()
                .of(unit, unit::has);
    }
}
