package bayfolio.cli;

import bayfolio.bookings.Booked;
import bayfolio.bookings.Booking;
import bayfolio.check.Check;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.publish.FleetState;
import bayfolio.publish.FoundBefore;
import bayfolio.publish.Publisher;
import bayfolio.render.Printing;
import bayfolio.render.print.Stock;
import bayfolio.render.theme.Theme;
import bayfolio.source.Hidden;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Publishes the handbooks of all coaches with which nothing is wrong. */
@Command(
        name = "publish",
        description =
                "Writes the handbooks of the coaches in which the check finds no error as a web site; those of others stay as they were.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:published",
            "1:errors were found, and those coaches or all were left as they were, or bookings could not be read",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio publish whimbrel --out /srv/handbooks",
            "Example: bayfolio publish --bookings bookings.csv --as-of 2026-04-18"
        })
final class PublishCommand implements Callable<Integer> {
    private static final Pattern SHARD = Pattern.compile("([1-9][0-9]{0,3})/([1-9][0-9]{0,3})");

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "The folder to publish into, its `web` being the public root; `site-out` in the fleet folder where left out.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--only",
            paramLabel = "WAY",
            split = ",",
            description = "What to make, with commas between: book, cards, labels, sheets, web; all where left out.")
    private List<String> only = List.of();

    @Option(
            names = "--bookings",
            paramLabel = "FILE",
            description =
                    "Bookings as CSV: the staff's first page tells which coaches go out and come in on the day (--as-of), and"
                            + " who to come holds an older edition (column `edition sent`), by the numbers of bookings. Nothing"
                            + " of it is kept or stands anywhere else.")
    private Optional<Path> bookings = Optional.empty();

    @Option(
            names = "--label-stock",
            paramLabel = "NAME",
            description =
                    "The sheet of labels to print on: ${COMPLETION-CANDIDATES}; that of the coach's country where left out.",
            completionCandidates = StockNames.class)
    private Optional<String> stock = Optional.empty();

    @Option(
            names = "--label-start",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description =
                    "The first label of the first sheet that is still free, row by row; ${DEFAULT-VALUE} where left out.")
    private int start = 1;

    @Option(
            names = "--shard",
            paramLabel = "K/N",
            description =
                    "Makes every N-th coach, from the K-th: the folders of N machines laid over each other are the whole site.")
    private Optional<String> shard = Optional.empty();

    @Option(
            names = "--fresh",
            description =
                    "Makes all files anew, those of coaches too of which nothing has changed since they were published last.")
    private boolean fresh;

    @Option(
            names = "--changed-files",
            paramLabel = "FILE",
            description =
                    "Writes into FILE, one a line, the paths below DIR of what is new, other than before or gone, for a program that uploads.")
    private Optional<Path> changedFiles = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    /** For the help and for shells. */
    static final class StockNames implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stock.names().iterator();
        }
    }

    /** What of all is in the shard. */
    private List<String> sharded(List<String> coaches) {
        if (shard.isEmpty()) {
            return coaches;
        }
        Matcher numbers = SHARD.matcher(shard.get());
        if (!numbers.matches()
                || Integer.parseInt(numbers.group(1)) > Integer.parseInt(numbers.group(2))
                || !fleet.units.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "`--shard " + Hidden.visible(shard.get())
                            + "`: write the number of the shard and how many there are, such as `2/4`, and name no coach.");
        }
        int first = Integer.parseInt(numbers.group(1)) - 1;
        int step = Integer.parseInt(numbers.group(2));
        return IntStream.range(0, coaches.size())
                .filter(i -> i % step == first)
                .mapToObj(coaches::get)
                .toList();
    }

    private Publisher.Wanted wanted(List<String> sound, Optional<Booked> booked) {
        List<String> coaches = sharded(sound);
        Set<String> made = Set.copyOf(coaches);
        List<String> elsewhere =
                sound.stream().filter(coach -> !made.contains(coach)).toList();
        for (String way : only) {
            if (!Publisher.ways().contains(way)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "`--only " + Hidden.visible(way) + "`: there is " + String.join(", ", Publisher.ways()) + ".");
            }
        }
        stock.filter(it -> !Stock.names().contains(it)).ifPresent(it -> {
            throw new ParameterException(
                    spec.commandLine(),
                    "`--label-stock " + Hidden.visible(it) + "`: there is " + String.join(", ", Stock.names()) + ".");
        });
        if (start < 1) {
            throw new ParameterException(
                    spec.commandLine(), "`--label-start " + start + "`: the first label of a sheet is 1.");
        }
        Set<String> ways = only.isEmpty() ? Publisher.ways() : Set.copyOf(only);
        bookings.ifPresent(file -> {
            if (!ways.contains(Publisher.WEB)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "`--bookings` is for the staff's first page, and `--only` leaves out `" + Publisher.WEB + "`.");
            }
            new BookingsFile(file, spec.commandLine()).refuseMissing();
        });
        return new Publisher.Wanted(
                coaches,
                elsewhere,
                ways,
                new Printing(fleet.given(), stock, start),
                booked,
                fresh,
                true,
                changedFiles.isPresent(),
                coach -> {
                    // To somebody who waits, and to no log.
                    if (System.console() != null) {
                        spec.commandLine().getErr().println("Making " + coach + " ...");
                        spec.commandLine().getErr().flush();
                    }
                });
    }

    @Override
    public Integer call() throws Exception {
        // What is wrong with the call is told before anything is read.
        wanted(List.of(), Optional.empty());
        FleetState state = FleetState.of(fleet.root);
        Theme theme = fleet.theme();
        Path folder = out.orElse(fleet.root.resolve("site-out"));
        Check check = fleet.check(
                theme,
                reading -> fresh ? Check.Known.NOTHING : FoundBefore.in(folder, state, reading, fleet.folder()::named));
        Findings findings = fleet.withEditions(check);
        PrintWriter err = spec.commandLine().getErr();
        err.print(fleet.report(findings));
        List<Finding> misbooked = new ArrayList<>();
        Optional<Booked> booked =
                bookings.isPresent() ? Optional.of(booked(check, bookings.get(), misbooked)) : Optional.empty();
        err.print(fleet.report(Findings.of(misbooked)));
        List<String> asked = fleet.units.isEmpty() ? check.fleet().coaches() : fleet.units;
        List<String> leftOut = asked.stream()
                .filter(coach -> !findings.stopping(coach, fleet.strict).isEmpty())
                .toList();
        List<String> sound =
                asked.stream().filter(coach -> !leftOut.contains(coach)).toList();
        if (sound.isEmpty() && findings.stop(fleet.strict)) {
            err.println("Nothing was published.");
            return 1;
        }
        Publisher.Published published = Publisher.publish(check, state, theme, wanted(sound, booked), folder);
        if (changedFiles.isPresent()) {
            Files.write(changedFiles.get(), published.changed());
        }
        published
                .unkept()
                .forEach(
                        file -> err.println(
                                "`" + Hidden.visible(file)
                                        + "` cannot be written: when the next edition is printed, changed pages alone cannot be made."));
        int pages = published.pages();
        spec.commandLine()
                .getOut()
                .println("Published "
                        + pages
                        + (pages == 1 ? " page" : " pages")
                        + " into "
                        + Hidden.visible(folder.resolve("web").normalize().toString())
                        + ".");
        if (!leftOut.isEmpty()) {
            err.println(Hidden.visible("Left out: "
                    + leftOut.stream()
                            .map(coach -> coach + " (" + TextReport.count(findings.stopping(coach, fleet.strict)) + ")")
                            .collect(Collectors.joining(", "))
                    + ". Pages of theirs that were published before stay as they were."));
            return 1;
        }
        return misbooked.isEmpty() ? 0 : 1;
    }

    /** A booking for which an edition was sent that was never issued goes out all the same. */
    private Booked booked(Check check, Path path, List<Finding> findings) throws IOException {
        BookingsFile file = new BookingsFile(path, spec.commandLine());
        file.day(check.fleet());
        Booked booked = file.read(check.fleet(), Set.of(), findings::add);
        Map<String, Optional<Editions>> editions = new HashMap<>();
        for (Booking booking : booked.bookings()) {
            if (booking.edition().isPresent()) {
                editions.computeIfAbsent(
                                booking.coach(),
                                coach -> check.fleet()
                                        .find(coach)
                                        .map(unit -> Editions.of(fleet.folder(), unit, finding -> {})))
                        .filter(issued ->
                                !issued.numbers().contains(booking.edition().getAsInt()))
                        .ifPresent(issued -> findings.add(BookingsFile.noSuchEdition(booking, issued)));
            }
        }
        return booked;
    }
}
