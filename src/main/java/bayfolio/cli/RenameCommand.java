package bayfolio.cli;

import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.read.Folder;
import bayfolio.rename.Rename;
import bayfolio.rename.RenameException;
import bayfolio.render.theme.Theme;
import bayfolio.source.Hidden;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gives a thing of a coach another id, or a role another word, wherever the fleet names it. */
@Command(
        name = "rename",
        description = {
            "Gives a thing of a coach another id, or with --role a role of the whole fleet another word: in descriptions, models,"
                    + " procedures, guides, translations, notices, films and lists of work, with the old name kept under `formerly`, after showing what"
                    + " would change.",
            "What belongs to a model is renamed for all of its coaches. Nothing is changed where any place cannot be, or where anything"
                    + " would mean something else under the new name."
        },
        customSynopsis = {
            "bayfolio rename [--yes] [--fleet=DIR] COACH OLD NEW",
            "bayfolio rename --role [--yes] [--fleet=DIR] OLD NEW"
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:it has its new name",
            "1:the name is not free, something is against it, or nothing was written since nobody said yes",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio rename whimbrel bay-3 service-bay --yes",
            "Example: bayfolio rename --role cab-blind windshield-blind"
        })
final class RenameCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..*",
            paramLabel = "COACH OLD NEW",
            description = {
                "The id of the coach; the id that the thing has, with its kind where several things have it: `switch:pump`;"
                        + " and the new one.",
                "With --role the word for the role, and the new one."
            })
    private List<String> words = List.of();

    @Option(names = "--role", description = "Rename a role, for the whole fleet.")
    private boolean role;

    @Mixin
    private Consent consent = new Consent();

    @Mixin
    private FleetRoot fleet = new FleetRoot();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (words.size() != (role ? 2 : 3)) {
            throw new ParameterException(
                    spec.commandLine(),
                    role
                            ? "With --role name the role as it is and as it is to be."
                            : "Name the coach, the thing as it is called and as it is to be called.");
        }
        Rename rename;
        try {
            rename = prepared(fleet.folder());
        } catch (RenameException refused) {
            if (refused.isOfTheCall()) {
                throw new ParameterException(spec.commandLine(), String.valueOf(refused.getMessage()), refused);
            }
            err.print(TextReport.of(Findings.of(refused.findings()), false));
            refused.against().forEach(each -> err.println(Hidden.visible(each.toString())));
            err.println(Hidden.visible(refused.getMessage() + " Nothing was written."));
            return 1;
        }
        out.print(Hidden.visible(rename.difference()));
        rename.alsoFor().ifPresent(out::println);
        out.flush();
        if (!consent.given()) {
            err.println("Nothing was written.");
            return 1;
        }
        rename.make();
        out.println(
                "Renamed: " + rename.told() + ", in " + rename.files() + (rename.files() == 1 ? " file." : " files."));
        return 0;
    }

    private Rename prepared(Folder folder) throws Exception {
        Theme theme = Theme.load(folder.root(), Theme.BUILT_IN);
        return role
                ? Rename.ofRole(folder, words.get(0), words.get(1), theme.catalogs())
                : Rename.ofThing(folder, fleet.known(words.get(0)), words.get(1), words.get(2), theme.catalogs());
    }
}
