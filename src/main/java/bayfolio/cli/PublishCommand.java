package bayfolio.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Publishes. */
@Command(name = "publish", description = "x", mixinStandardHelpOptions = true)
final class PublishCommand implements Callable<Integer> {
    @Mixin private FleetOptions fleet = new FleetOptions();

    @Override
    public Integer call() throws Exception {
        return fleet.check(fleet.theme()).findings().hasErrors() ? 1 : 0;
    }
}
