package bayfolio.publish;

import bayfolio.bookings.Booked;
import bayfolio.check.Check;
import bayfolio.document.Audience;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Editions;
import bayfolio.render.Means;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.data.MachineCopy;
import bayfolio.render.print.Book;
import bayfolio.render.print.Cards;
import bayfolio.render.print.ChangedPages;
import bayfolio.render.print.Labels;
import bayfolio.render.print.Sheets;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.template.TemplateProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Composes, renders and audits a coach at a time in each thread, and only then swaps in. Whatever fails before leaves the
 * last site as it was; no more of the fleet is in mind than what threads have in hand, and what is wrong.
 */
public final class Publisher {
    /** In what ways handbooks are given out, in the order in which they are made: the site offers what is printed. */
    private static final List<Way> OUTPUTS = List.of(
            new Way("book", Book::new),
            new Way("book", ChangedPages::new),
            new Way("cards", Cards::new),
            new Way("labels", Labels::new),
            new Way("sheets", Sheets::new),
            new Way(Publisher.WEB, WebSite::new),
            new Way(Publisher.WEB, MachineCopy::new));

    private record Way(String name, Function<Means, Output> output) {}

    /** Without it no page has an address. */
    public static final String WEB = "web";

    private Publisher() {}

    /** Names of the ways in which handbooks are given out. */
    public static Set<String> ways() {
        return OUTPUTS.stream().map(Way::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * What is wanted.
     *
     * @param units ids of the coaches to publish anew, in whose descriptions and procedures nothing is wrong; others that
     *     were published before stay as they are
     * @param elsewhere ids of coaches that are published by somebody else, to be laid beside these: they are listed with them
     * @param ways some of {@link #ways}; of these coaches nothing else is there afterwards
     * @param booked what is booked, if somebody has said so: it stands on the staff's first page and nowhere else
     * @param fresh whether those are made anew, too, of which nothing is otherwise than when they were published last
     * @param ledger whether addresses are held against the ledger of the fleet, and new ones written into it; otherwise
     *     nothing was ever published
     * @param changes whether it is to be told which files have changed: a large fleet has millions
     * @param begun is told each coach when its files are made, since that may take long
     */
    public record Wanted(
            List<String> units,
            List<String> elsewhere,
            Set<String> ways,
            Printing printing,
            Optional<Booked> booked,
            boolean fresh,
            boolean ledger,
            boolean changes,
            Consumer<String> begun) {
        /** By somebody who does not look on, and gives nothing to anybody. */
        public Wanted(List<String> units, Set<String> ways, Printing printing) {
            this(units, List.of(), ways, printing, Optional.empty(), false, false, false, coach -> {});
        }

        public Wanted {
            units = List.copyOf(units);
            elsewhere = List.copyOf(elsewhere);
            ways = Set.copyOf(ways);
        }
    }

    /**
     * @param fleet as it was before it was read
     * @throws PublishException in one sentence, when something is wrong; nothing was changed then
     */
    public static Published publish(Check check, FleetState fleet, Theme theme, Wanted wanted, Path out)
            throws IOException, PublishException {
        FleetFolder.refuse(fleet.root(), out);
        try (OutputFolder output = OutputFolder.open(out)) {
            output.verify();
            boolean addressed = wanted.ways().contains(WEB);
            GivenOut given = GivenOut.of(fleet.root(), wanted.ledger() && addressed);
            Means means = new Means(theme, check.catalogs(), check.fleet(), wanted.printing());
            List<Output> outputs = outputs(means, wanted);
            refuseComplaints(outputs.stream());
            try (NextEdition next = output.next()) {
                refuseWithout(wanted, next, out);
                Site site = new Site(check, fleet, means, wanted, next, given);
                site.coaches();
                site.shared(outputs);
                refuseComplaints(Stream.concat(outputs.stream(), site.used()));
                for (CoachJob.Fault fault : CoachJob.Fault.values()) {
                    refuse(fault.sentence(), site.faults(fault));
                }
                given.refuseLost(check.fleet());
                fleet.refuseChanges();
                Set<String> changed = wanted.changes() ? next.changed() : Set.of();
                // That it can be written is known before anything is swapped in.
                try (GivenOut.Writing ledger = given.writing()) {
                    if (next.isNew()) {
                        next.complete();
                        output.swapIn(next);
                    } else {
                        next.unneeded();
                    }
                    ledger.swapIn();
                }
                return new Published(site.pages(), changed, wanted.ledger() ? unkept(site, fleet.root()) : List.of());
            }
        }
    }

    /**
     * What was published.
     *
     * @param pages how many the renters' site has
     * @param changed paths of files that are new, other than before, or gone, below the folder that was published into, if
     *     that was asked for
     * @param unkept files of the fleet that could not be written, of which the site knows nothing
     */
    public record Published(int pages, Set<String> changed, List<String> unkept) {}

    /** What comes after the site: without it no pages can be changed alone. */
    private static List<String> unkept(Site site, Path root) {
        List<String> unkept = new ArrayList<>();
        for (AsPrinted book : site.printed()) {
            try {
                book.keep(root);
            } catch (IOException e) {
                unkept.add(Editions.pages(book.unit(), book.edition()));
            }
        }
        return unkept;
    }

    /** The ways that are wanted, in the order in which they are made. */
    static List<Output> outputs(Means means, Wanted wanted) {
        return OUTPUTS.stream()
                .filter(way -> wanted.ways().contains(way.name()))
                .map(way -> way.output().apply(means))
                .toList();
    }

    /** Pages that somebody was sent to are not taken away by leaving out a word of the call. */
    private static void refuseWithout(Wanted wanted, NextEdition next, Path out) throws PublishException {
        if (!wanted.ways().contains(WEB)
                && next.readLast(OutputFolder.root(Audience.RENTERS) + "index.html")
                        .isPresent()) {
            throw new PublishException("`--only` leaves out `" + WEB + "`, and the pages in `" + out
                    + "` would be gone; name it, too, or choose another folder with --out.");
        }
    }

    private static String sentence(TemplateProblem complaint) {
        return complaint.at() + ": " + complaint.message();
    }

    private static void refuseComplaints(Stream<Output> outputs) throws PublishException {
        refuse(
                "The theme is wrong",
                outputs.flatMap(each -> each.complaints().stream())
                        .map(Publisher::sentence)
                        .distinct()
                        .toList());
    }

    private static void refuse(String what, List<String> faults) throws PublishException {
        if (!faults.isEmpty()) {
            throw new PublishException(what
                    + ", nothing was published:\n"
                    + faults.stream().limit(50).map(fault -> "  " + fault).collect(Collectors.joining("\n"))
                    + (faults.size() > 50 ? "\n  and " + (faults.size() - 50) + " more" : ""));
        }
    }
}
