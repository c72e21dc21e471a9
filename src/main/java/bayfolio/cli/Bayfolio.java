package bayfolio.cli;

import bayfolio.issue.IssueException;
import bayfolio.publish.PublishException;
import bayfolio.read.Folder;
import bayfolio.render.theme.UnknownThemeException;
import bayfolio.source.Hidden;
import bayfolio.survey.TakeException;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program. */
@Command(
        name = "bayfolio",
        description = "Makes a cross-linked handbook for each coach of a fleet, and says what in it is untrue.",
        subcommands = {
            AddCommand.class,
            CheckCommand.class,
            PublishCommand.class,
            PreviewCommand.class,
            ShowCommand.class,
            ConfirmCommand.class,
            AskCommand.class,
            SurveyCommand.class,
            TakeCommand.class,
            RenameCommand.class,
            TextsCommand.class,
            IssueCommand.class,
            ChangesCommand.class,
            MailCommand.class
        },
        mixinStandardHelpOptions = true,
        version = "bayfolio 0.1.0",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing is wrong",
            "1:errors were found, or something could not be done",
            "2:the words of the call are wrong"
        },
        footer = {"", "Example: bayfolio publish"})
public final class Bayfolio implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    private final Folder read;

    private Bayfolio(Folder read) {
        this.read = read;
    }

    /** What was read before; what a fleet has in common with it need not be read anew. */
    Folder read() {
        return read;
    }

    /** Runs a command and gives its exit code. */
    public static int run(String... words) {
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
        PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
        return run(out, err, words);
    }

    public static int run(PrintWriter out, PrintWriter err, String... words) {
        return run(new Folder(Path.of("")), out, err, words);
    }

    /** @param read of one command after the other, what is the same for the next */
    public static int run(Folder read, PrintWriter out, PrintWriter err, String... words) {
        CommandLine line = new CommandLine(new Bayfolio(read));
        line.setOut(out).setErr(err).setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((exception, command, parsed) -> {
            err.println(Hidden.visible(sentence(exception)));
            return 1;
        });
        CommandLine.IParameterExceptionHandler usual = line.getParameterExceptionHandler();
        line.setParameterExceptionHandler((exception, all) -> {
            CommandLine command = exception.getCommandLine();
            StringWriter said = new StringWriter();
            command.setErr(new PrintWriter(said)).setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
            int wrong = usual.handleParseException(exception, all);
            err.print(Hidden.visible(said.toString()));
            return wrong;
        });
        int exit = 1;
        try {
            exit = line.execute(words);
        } catch (OutOfMemoryError | StackOverflowError full) {
            err.println(sentence(full));
        }
        out.flush();
        err.flush();
        return exit;
    }

    /** One sentence and no stack trace: what failed is on disk, not in the program. */
    private static String sentence(Throwable exception) {
        // What fails beside, in another thread, comes as the cause of something that says nothing.
        if (exception instanceof CompletionException && exception.getCause() != null) {
            return sentence(exception.getCause());
        }
        if (exception instanceof OutOfMemoryError) {
            return "The " + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MB of memory that Java was given are not enough;"
                    + " what was published before is whole. Give it more: java -Xmx4g.";
        }
        if (exception instanceof StackOverflowError) {
            return "Something is nested too deep to be read; what was published before is whole.";
        }
        String message = exception.getMessage() == null ? "" : exception.getMessage();
        if (exception instanceof UncheckedIOException && exception.getCause() instanceof IOException cause) {
            return sentence(cause);
        }
        if (exception instanceof UnknownThemeException
                || exception instanceof PublishException
                || exception instanceof TakeException
                || exception instanceof IssueException) {
            return message;
        }
        if (exception instanceof NoSuchFileException) {
            return "There is no file `" + message + "`.";
        }
        if (exception instanceof AccessDeniedException) {
            return "`" + message + "` may not be read or written.";
        }
        if (exception instanceof FileSystemException failed) {
            return "`" + failed.getFile() + "` cannot be read or written: " + failed.getReason();
        }
        return "Something failed: " + message;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command.");
    }
}
