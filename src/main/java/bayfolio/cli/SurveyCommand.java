package bayfolio.cli;

import bayfolio.check.Check;
import bayfolio.model.Unit;
import bayfolio.render.Means;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import bayfolio.source.Hidden;
import bayfolio.survey.Survey;
import bayfolio.survey.SurveyFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Makes what is taken along to a coach whose facts are looked up. */
@Command(
        name = "survey",
        description = {
            "Makes a page for the phone and a sheet for the clip-board with all that must be looked up at a coach: what procedures and"
                    + " questions lack, what is each coach's own, and what nobody has looked at for long.",
            "The page works from the storage of the phone, sends nothing anywhere, and gives out one file for `bayfolio take`."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:made, or nothing is to be looked up",
            "1:the description of a coach cannot be read",
            "2:the words of the call are wrong"
        },
        footer = {"", "Example: bayfolio survey whimbrel"})
final class SurveyCommand implements Callable<Integer> {
    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "The folder to write into, one in it for each coach; `site-out/survey` in the fleet folder where left out.")
    private Optional<Path> out = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (fleet.units.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Name a coach: bayfolio survey whimbrel.");
        }
        Path folder = out.orElse(fleet.root.resolve("site-out").resolve("survey"));
        if (isPublished(folder)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "`--out " + Hidden.visible(folder.toString()) + "` is published; choose another folder.");
        }
        Theme theme = fleet.theme();
        Check check = fleet.check(theme);
        Means means =
                new Means(theme, check.catalogs(), check.fleet(), new Printing(fleet.given(), Optional.empty(), 1));
        PrintWriter terminal = spec.commandLine().getOut();
        int exit = 0;
        for (String coach : fleet.units) {
            Optional<Unit> unit =
                    check.units().stream().filter(it -> it.id().equals(coach)).findFirst();
            if (unit.isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println("The description of `" + coach + "` cannot be read; `bayfolio check` tells why.");
                exit = 1;
                continue;
            }
            Survey survey = Survey.of(check, unit.get());
            if (survey.count() == 0) {
                terminal.println("Nothing is to be looked up at " + coach + ".");
                continue;
            }
            Path into = folder.resolve(coach);
            Files.createDirectories(into);
            for (Map.Entry<String, byte[]> file : SurveyFiles.of(survey, means).entrySet()) {
                Files.write(into.resolve(file.getKey()), file.getValue());
            }
            terminal.println("To look up at " + coach + ": " + survey.count() + ". See "
                    + Hidden.visible(into.normalize().toString()) + ".");
        }
        return exit;
    }

    /** Whether it lies in a folder that is copied to a host. */
    private boolean isPublished(Path folder) throws IOException {
        Path there = folder.toAbsolutePath().normalize();
        Path base = there;
        while (base != null && !Files.exists(base)) {
            base = base.getParent();
        }
        Path real = base == null ? there : base.toRealPath().resolve(base.relativize(there));
        Path site = fleet.root.resolve("site-out").toAbsolutePath().normalize();
        return Stream.of("web", "staff", ".editions").anyMatch(name -> {
            Path root = site.resolve(name);
            try {
                return there.startsWith(root) || Files.exists(root) && real.startsWith(root.toRealPath());
            } catch (IOException e) {
                return true;
            }
        });
    }
}
