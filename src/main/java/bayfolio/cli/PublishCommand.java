package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.finding.Findings;
import bayfolio.publish.Publisher;
import bayfolio.render.theme.Theme;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Publishes handbooks, when nothing in the fleet is wrong. */
@Command(
        name = "publish",
        description = "Writes the handbooks as a web site, when the check finds no error; else leaves all as it was.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:published",
            "1:errors were found and nothing was changed",
            "2:the words of the call are wrong"
        },
        footer = {"", "Example: bayfolio publish whimbrel --out /srv/handbooks"})
final class PublishCommand implements Callable<Integer> {
    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "The folder to publish into, its `web` being the public root; `site-out` in the fleet folder where left out.")
    private Optional<Path> out = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Theme theme = fleet.theme();
        Check check = fleet.check(theme);
        Findings findings = check.findings();
        PrintWriter err = spec.commandLine().getErr();
        err.print(fleet.report(findings));
        if (findings.stop(fleet.strict)) {
            err.println("Nothing was published.");
            return 1;
        }
        Path folder = out.orElse(fleet.root.resolve("site-out"));
        Set<String> files = Publisher.publish(check, fleet.root, theme, theme.words("en-US"), fleet.units, folder);
        long pages = files.stream().filter(file -> file.endsWith(".html")).count();
        spec.commandLine()
                .getOut()
                .println("Published "
                        + pages
                        + (pages == 1 ? " page" : " pages")
                        + " into "
                        + folder.resolve("web").normalize()
                        + ".");
        return 0;
    }
}
