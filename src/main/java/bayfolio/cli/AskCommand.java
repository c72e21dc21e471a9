package bayfolio.cli;

import bayfolio.ask.AnswerReport;
import bayfolio.ask.Answers;
import bayfolio.ask.Asked;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.read.FleetReader;
import bayfolio.source.Hidden;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which coaches have something, with which value, and which file says so. */
@Command(
        name = "ask",
        description = {
            "Says which coaches have something, with which value, and which line of which file says so. The fleet is read and"
                    + " not checked, but for pages.",
            "A question has names as procedures write them, such as tank.gray.capacity, generator.rating, size.height or"
                    + " switch.house-battery-switch.on-look, which hold where a coach states them; role:, feature:, procedure:,"
                    + " trouble:, stage: and page: before what is asked for; and, or, not and brackets between them."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:answered, also where no coach has it",
            "1:something could not be read, so that the answer may lack it",
            "2:the words of the call or of the question are wrong"
        },
        footer = {
            "",
            "Example: bayfolio ask tank.gray.capacity",
            "Example: bayfolio ask \"feature:generator and not feature:solar\"",
            "Example: bayfolio ask --format csv \"role:black-dump-valve or page:film\" whimbrel dunlin"
        })
final class AskCommand implements Callable<Integer> {
    /** How answers are printed. */
    enum Format {
        TEXT,
        CSV,
        JSON
    }

    @Parameters(index = "0", paramLabel = "QUESTION", description = "What is asked for, as one word of the call.")
    private String question = "";

    @Parameters(
            index = "1..*",
            paramLabel = "UNIT",
            description = "Ids of coaches; all of the fleet where none is named.")
    private List<String> units = List.of();

    @Mixin
    private FolderOptions fleet = new FolderOptions();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "text for people, csv (RFC 4180) or json for programs; ${DEFAULT-VALUE} where left out.")
    private Format format = Format.TEXT;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        FleetReader.Reading reading = fleet.read(units);
        List<Finding> wrong = new ArrayList<>();
        Optional<Asked> asked = Asked.read(question, reading, fleet.theme().catalogs(), wrong::add);
        PrintWriter err = spec.commandLine().getErr();
        if (asked.isEmpty()) {
            err.print(TextReport.of(
                    Findings.of(wrong),
                    spec.commandLine().getColorScheme().ansi().enabled()));
            return 2;
        }
        Answers answers = asked.get().of(units);
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                switch (format) {
                    case TEXT -> AnswerReport.table(answers);
                    case CSV -> AnswerReport.csv(answers);
                    case JSON -> AnswerReport.json(answers);
                });
        out.flush();
        answers.unread().forEach((coach, why) -> err.println(Hidden.visible(coach + ": not all is known: " + why)));
        err.println(answers.coaches().size() + " of " + answers.asked().size()
                + (answers.asked().size() == 1 ? " coach" : " coaches"));
        return answers.unread().isEmpty() ? 0 : 1;
    }
}
