package bayfolio.cli;

import bayfolio.bookings.Booking;
import bayfolio.bookings.Column;
import bayfolio.check.Check;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Compared;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.Editions;
import bayfolio.edition.Snapshot;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.issue.ChangeJson;
import bayfolio.issue.ChangeReport;
import bayfolio.issue.Consequences;
import bayfolio.issue.Now;
import bayfolio.issue.ToTell;
import bayfolio.issue.ToTellReport;
import bayfolio.issue.WorkList;
import bayfolio.model.Coach;
import bayfolio.model.Unit;
import bayfolio.source.Hidden;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells what has changed in handbooks. */
@Command(
        name = "changes",
        description = {
            "Tells what is otherwise between two editions of a coach, or between one and what its files say now: things, facts,"
                    + " steps, hazards, figures with the facts that they hang on, texts; and the pages that each of it is on.",
            "A change of words that says nothing else is called editorial.",
            "Below each change stands what it touches: labels, paper, pictures, facts to look up, texts to translate, pages that"
                    + " come or go."
        },
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:told",
            "1:an edition, a work list or a booking could not be read, or a coach has an error and was compared by its facts alone",
            "2:the words of the call are wrong"
        },
        footer = {
            "",
            "Example: bayfolio changes whimbrel",
            "Example: bayfolio changes whimbrel --from 3 --to 4 --json",
            "Example: bayfolio changes --all",
            "Example: bayfolio changes whimbrel --work-list",
            "Example: bayfolio changes whimbrel --bookings bookings.csv"
        })
final class ChangesCommand implements Callable<Integer> {
    private static final String NOW = "now";

    @Mixin
    private FleetOptions fleet = new FleetOptions();

    @Option(
            names = "--from",
            paramLabel = "NUMBER",
            description = "The edition to compare with; the last one where left out.")
    private Optional<Integer> from = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "NUMBER",
            defaultValue = NOW,
            description = "The edition that is compared, or `now`, what the files say; now where left out.")
    private String to = NOW;

    @Option(
            names = "--all",
            description = "All coaches that have an edition: what a change in shared texts does to each.")
    private boolean all;

    @Option(names = "--json", description = "For programs.")
    private boolean json;

    @Option(
            names = "--work-list",
            description =
                    "Writes what is to be done into `units/COACH/editions/to-do.md`, to be ticked off: labels, paper,"
                            + " pictures, texts, facts, links. Ticks and lines of your own stay. For as long as something in it is"
                            + " to be done, it goes on from the edition since which it tells.")
    private boolean workList;

    @Option(
            names = "--bookings",
            paramLabel = "FILE",
            description =
                    "Bookings as CSV: tells which of those to come hold an older edition (column `edition sent`), with a"
                            + " text to be sent. Nothing of it is kept.")
    private Optional<Path> bookings = Optional.empty();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        refuseWrongWords();
        Check check = fleet.checkOnly(fleet.theme(), this::isAsked);
        PrintWriter err = spec.commandLine().getErr();
        List<Finding> findings = new ArrayList<>();
        List<Booking> booked = booked(check, findings);
        JsonArray each = new JsonArray();
        boolean whole = true;
        for (Unit unit : check.fleet().units()) {
            if (isAsked(unit)) {
                whole &= told(check, unit, booked, each, findings);
            }
        }
        err.print(TextReport.of(Findings.of(findings), false));
        if (json) {
            spec.commandLine().getOut().print(Hidden.visible(ChangeJson.text(each)));
        }
        return whole && findings.isEmpty() ? 0 : 1;
    }

    private void refuseWrongWords() {
        if (fleet.units.isEmpty() != all) {
            throw new ParameterException(spec.commandLine(), "Name the coaches, or ask for --all of them.");
        }
        if (!to.equals(NOW) && !to.matches("[1-9][0-9]{0,5}")) {
            throw new ParameterException(
                    spec.commandLine(), "`--to " + Hidden.visible(to) + "`: the number of an edition, or `now`.");
        }
        if (workList && !to.equals(NOW)) {
            throw new ParameterException(
                    spec.commandLine(), "`--work-list` is of what the files say now; leave `--to` out.");
        }
        bookings.ifPresent(file -> new BookingsFile(file, spec.commandLine()).refuseMissing());
    }

    private boolean isAsked(Unit unit) {
        return all || fleet.units.contains(unit.id());
    }

    /**
     * Tells what has changed on one coach.
     *
     * @return whether all that was asked could be told
     */
    private boolean told(Check check, Unit unit, List<Booking> booked, JsonArray each, List<Finding> findings)
            throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Editions editions = Editions.of(fleet.folder(), unit, findings::add);
        if (editions.last() == 0) {
            if (!all) {
                err.println(Hidden.visible("No edition of `" + unit.id() + "` was issued yet."));
            }
            return all;
        }
        Optional<WorkList> list = workList ? WorkList.read(fleet.root, unit.id(), findings::add) : Optional.empty();
        int first = from.or(() -> list.map(it -> it.since(editions)))
                .orElse(to.equals(NOW) ? editions.last() : Math.max(1, Integer.parseInt(to) - 1));
        Optional<Edition> before = edition(editions, first, findings);
        Optional<Now> now = to.equals(NOW) ? Optional.of(Now.of(check, unit)) : Optional.empty();
        Optional<Snapshot> after = now.isPresent()
                ? now.map(Now::snapshot)
                : edition(editions, Integer.parseInt(to), findings).map(Edition::snapshot);
        if (before.isEmpty() || after.isEmpty()) {
            return false;
        }
        boolean composed = after.get().document().isPresent();
        if (!composed) {
            err.println(Hidden.visible("`" + unit.id() + "` has "
                    + TextReport.count(check.findings().stopping(unit.id(), false))
                    + ": only its facts were compared."));
        }
        List<Consequences> changes = Consequences.of(
                Comparison.between(before.get().snapshot(), after.get()),
                before.get().date(),
                AsPrinted.read(fleet.folder(), unit.id(), first, findings::add),
                now.map(Now::coach));
        JsonObject told = ChangeJson.of(unit.id(), String.valueOf(first), to, changes);
        each.add(told);
        if (!json) {
            out.print(Hidden.visible(ChangeReport.of(
                    unit.id(),
                    to.equals(NOW) ? "edition " + first + " and now" : "editions " + first + " and " + to,
                    changes)));
        }
        if (list.isPresent()) {
            String text = list.get().with(unit.id(), first, changes);
            boolean written = list.get().write(fleet.root, text);
            err.println(Hidden.visible((written ? "Wrote " : "Nothing new in ") + WorkList.path(unit.id()) + ": "
                    + WorkList.open(text) + " to be done."));
        }
        if (bookings.isPresent() && composed) {
            List<ToTell> older = older(check, unit, booked, editions, after.get(), findings);
            told.add("bookings", ToTellReport.json(older));
            if (!json) {
                out.print(Hidden.visible(ToTellReport.text(older)));
            }
        }
        return composed;
    }

    /** Those of the coaches that are asked for, from the day of the fleet on. */
    private List<Booking> booked(Check check, List<Finding> findings) throws IOException {
        if (bookings.isEmpty()) {
            return List.of();
        }
        BookingsFile file = new BookingsFile(bookings.get(), spec.commandLine());
        LocalDate day = file.day(check.fleet());
        return file.read(check.fleet(), Set.of(Column.EDITION_SENT), findings::add).bookings().stream()
                .filter(booking -> all || fleet.units.contains(booking.coach()))
                .filter(booking -> !booking.pickup().toLocalDate().isBefore(day))
                .toList();
    }

    private List<ToTell> older(
            Check check, Unit unit, List<Booking> booked, Editions editions, Snapshot after, List<Finding> findings) {
        List<ToTell> older = new ArrayList<>();
        Map<Integer, Optional<Compared>> compared = new HashMap<>();
        Coach coach = new Coach(check.fleet(), unit);
        for (Booking booking : booked) {
            if (!booking.coach().equals(unit.id()) || booking.edition().isEmpty()) {
                continue;
            }
            int sent = booking.edition().getAsInt();
            if (!editions.numbers().contains(sent)) {
                findings.add(BookingsFile.noSuchEdition(booking, editions));
            } else if (to.equals(NOW) || sent < Integer.parseInt(to)) {
                compared.computeIfAbsent(
                                sent,
                                number -> editions.read(number, findings::add)
                                        .map(it -> Comparison.between(it.snapshot(), after)))
                        .flatMap(it -> ToTell.of(booking, sent, it, coach, check.catalogs()))
                        .ifPresent(older::add);
            }
        }
        return older;
    }

    private Optional<Edition> edition(Editions editions, int number, List<Finding> findings) {
        if (!editions.numbers().contains(number)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "There is no edition " + number + "; there is "
                            + editions.numbers().stream()
                                    .map(String::valueOf)
                                    .reduce((a, b) -> a + ", " + b)
                                    .orElse("none")
                            + ".");
        }
        return editions.read(number, findings::add);
    }
}
