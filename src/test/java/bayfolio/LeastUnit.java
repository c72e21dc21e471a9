package bayfolio;

import bayfolio.read.FleetReader;
import java.io.IOException;
import java.nio.file.Path;

/** The least that a coach can say of itself, and what a test says besides. */
public final class LeastUnit {
    private LeastUnit() {}

    /** Read as the only coach of a fleet folder. */
    public static FleetReader.Reading read(Path folder, String facts) throws IOException {
        DemoFleet.write(folder.resolve("units/test/unit.yaml"), """
                id: test
                name: Test
                body: van
                region: europe
                drive-side: left
                size: {length: 7 m, width: 2 m, height: 3 m}
                """ + facts);
        return FleetReader.read(Folders.at(folder));
    }
}
