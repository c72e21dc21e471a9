package bayfolio.cli;

import bayfolio.bookings.Booking;
import bayfolio.bookings.Bookings;
import bayfolio.check.Check;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.Severity;
import bayfolio.finding.TextReport;
import bayfolio.mail.Depot;
import bayfolio.mail.Desks;
import bayfolio.mail.Due;
import bayfolio.mail.MailFolder;
import bayfolio.mail.MailRun;
import bayfolio.read.FleetReader;
import bayfolio.render.mail.Letter;
import bayfolio.render.mail.LetterForm;
import bayfolio.render.theme.Theme;
import bayfolio.source.Hidden;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the messages that are due for bookings. */
@Command(
        name = "mail",
        description = {
            "Writes the messages that are due for bookings as files of mail, each with the links that this booking needs.",
            "Nothing is sent: a mail program opens a file, somebody adds the address and sends it."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all that is due was written",
            "1:some rows of the file, or coaches, are wrong; the others were written",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio mail bookings.csv --as-of 2026-05-01",
            "Example: bayfolio mail bookings.csv --every --dry-run"
        })
final class MailCommand implements Callable<Integer> {
    @Mixin
    private FolderOptions fleet = new FolderOptions();

    @Parameters(
            paramLabel = "FILE",
            description =
                    "Bookings as CSV: columns booking, coach, pickup, return (2026-05-02 15:00), and if known people, supply (30 A), language, trip (first, repeat), edition sent.")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "mail-out",
            description = "The folder to write into, outside of what is published; ${DEFAULT-VALUE} where left out.")
    private Path out = Path.of("mail-out");

    @Option(
            names = "--since",
            paramLabel = "DATE",
            description = "Also what was due since this day, such as a Saturday; that of the day alone where left out.")
    private Optional<LocalDate> since = Optional.empty();

    @Option(names = "--every", description = "All messages of each booking, whatever the day.")
    private boolean every;

    @Option(
            names = "--dry-run",
            description = "Writes nothing, and shows what would be written and why each link is in it.")
    private boolean dry;

    @Option(names = "--strict", description = "Let warnings about a coach stop its messages, as errors do.")
    private boolean strict;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        BookingsFile bookings = new BookingsFile(file, spec.commandLine());
        bookings.refuseMissing();
        MailFolder folder = new MailFolder(out);
        if (folder.isPublic(fleet.root)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "`--out " + Hidden.visible(out.toString())
                            + "`: that is published, or a part of the fleet; bookings belong elsewhere.");
        }
        Theme theme = fleet.theme();
        LetterForm form = new LetterForm(theme);
        PrintWriter screen = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (isWrong(form, err)) {
            return 1;
        }
        FleetReader.Reading reading = fleet.read(List.of());
        Check check =
                Check.of(reading.fleet(), reading.library(), theme.catalogs(), reading.findings(), Check.Known.NOTHING);
        LocalDate today = bookings.day(check.fleet());
        Depot depot = Depot.of(check.fleet())
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "`units/fleet.yaml` names no time zone that there is; write `time-zone: America/New_York`."));
        List<Finding> findings = new ArrayList<>();
        MailRun run = new MailRun(
                depot,
                theme.catalogs(),
                new MailRun.Days(since.orElse(today), today, every),
                new Desks(check, fleet.folder(), strict, findings::add),
                dry
                        ? (booking, due, letter, why) -> show(screen, booking, due, letter, why)
                        : MailRun.into(folder, form),
                findings::add);
        Bookings.read(file, check.fleet().coaches(), Set.of(), run::take, findings::add);
        if (run.failed().isPresent()) {
            throw run.failed().get();
        }
        err.print(TextReport.of(Findings.of(findings), false));
        if (isWrong(form, err)) {
            return 1;
        }
        if (!depot.tellsHours()) {
            err.println(
                    "`units/fleet.yaml` does not say when the depot is open (`open`): no message tells how to get in when nobody is there.");
        }
        String messages = run.written() + (run.written() == 1 ? " message" : " messages");
        screen.println(
                dry
                        ? messages + " would be written."
                        : messages + " written into " + Hidden.visible(out.toString()) + ".");
        return findings.stream().anyMatch(it -> it.severity() == Severity.ERROR) ? 1 : 0;
    }

    private static boolean isWrong(LetterForm form, PrintWriter err) {
        form.complaints().forEach(it -> err.println(Hidden.visible(it.at() + ": " + it.message())));
        return !form.complaints().isEmpty();
    }

    private static void show(PrintWriter screen, Booking booking, Due due, Letter letter, List<String> why) {
        screen.print(Hidden.visible(String.format(
                Locale.ROOT, "%s  %s  %s  %s%n", booking.id(), booking.coach(), Type.word(due.message()), due.day())));
        for (int i = 0; i < letter.links().size(); i++) {
            screen.print(Hidden.visible(String.format(
                    Locale.ROOT, "    %-48s %s%n", letter.links().get(i).title(), why.get(i))));
        }
    }
}
