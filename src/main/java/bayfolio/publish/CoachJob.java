package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.compose.WhatChanged;
import bayfolio.document.Addresses;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.OldAddresses;
import bayfolio.document.Revision;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Editions;
import bayfolio.edition.Issued;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.read.Folder;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.print.PrintedBooks;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * All files of one coach, composed, rendered and audited; when it is done nothing of it stays in mind but what is wrong
 * with them.
 *
 * @param outputs of one thread
 * @param staffTexts that stand in no file of renters
 * @param last what was published last, by its path below both roots
 */
record CoachJob(
        Check check,
        ForRenters forRenters,
        Path root,
        List<Output> outputs,
        Phrases staffTexts,
        Function<String, Optional<byte[]>> last) {

    /**
     * @param files by their paths below both roots
     * @param faults one sentence each, by what is wrong
     * @param given what each reader gets addresses of
     * @param lost pages that each reader got before, and that would be gone
     * @param printed how the book of an edition is printed, where that is not yet written down
     */
    record Made(
            Map<String, byte[]> files,
            Map<Fault, List<String>> faults,
            Map<Audience, Addresses> given,
            Map<Audience, SortedSet<String>> lost,
            Optional<AsPrinted> printed) {
        static Made wrong(Fault fault, List<String> sentences) {
            return new Made(Map.of(), Map.of(fault, sentences), Map.of(), Map.of(), Optional.empty());
        }
    }

    /** In the order in which they are told. */
    enum Fault {
        EDITION("An edition is not as it was issued"),
        MARKED("The renters' copy tells what is for staff"),
        WRONG("The rendered site is wrong"),
        DISCLOSED("The renters' copy tells what is for staff"),
        WRONG_FOR_STAFF("The rendered staff copy is wrong");

        private final String sentence;

        Fault(String sentence) {
            this.sentence = sentence;
        }

        String sentence() {
            return sentence;
        }

        /** That something of a reader's copy is wrong. */
        static Fault wrong(Audience reader) {
            return reader == Audience.STAFF ? WRONG_FOR_STAFF : WRONG;
        }
    }

    /**
     * @param outside gets the links that lead out of the files of a coach, of either copy
     * @param before what each reader was ever given
     */
    Made run(Unit unit, Map<Audience, Audit.Outside> outside, Map<Audience, Addresses> before) throws IOException {
        CheckedCoach coach = check.of(unit);
        List<Finding> findings = new ArrayList<>();
        Folder folder = new Folder(root);
        Issued issued = new Issued(Editions.of(folder, unit, findings::add), findings::add);
        Handbook whole = WhatChanged.in(Composer.compose(coach), coach, issued);
        Optional<AsPrinted> inBinder =
                whole.revision().flatMap(it -> AsPrinted.read(folder, unit.id(), it.before(), findings::add));
        if (!findings.isEmpty()) {
            return Made.wrong(
                    Fault.EDITION,
                    findings.stream().map(it -> it.at() + ": " + it.message()).toList());
        }
        Handbook theirs = whole.seenBy(Audience.RENTERS);
        List<String> marked = Marks.of(theirs);
        if (!marked.isEmpty()) {
            return Made.wrong(Fault.MARKED, marked);
        }
        Map<Fault, List<String>> faults = new EnumMap<>(Fault.class);
        Media media = Media.of(unit, root);
        Media seen = media.seenBy(unit, Audience.RENTERS);
        Handbook ofStaff = whole.seenBy(Audience.STAFF);
        OldAddresses old = OldAddresses.of(theirs, of(before, Audience.RENTERS), Optional.of(ofStaff));
        OldAddresses oldOfStaff = OldAddresses.of(ofStaff, of(before, Audience.STAFF), Optional.empty());
        Map<String, byte[]> renters = files(Audience.RENTERS, theirs, seen, old, inBinder);
        Map<String, byte[]> staff =
                files(Audience.STAFF, ofStaff, media.seenBy(unit, Audience.STAFF), oldOfStaff, Optional.empty());
        Map<String, byte[]> sources = sources(theirs, seen);
        Map<String, byte[]> read = new TreeMap<>(renters);
        read.putAll(sources); // what a file is made of is sooner read than the file
        faults.put(Fault.WRONG, Audit.of(read, staffTexts, outside(outside, Audience.RENTERS)));
        faults.put(Fault.DISCLOSED, disclosed(coach, issued, theirs, media, read, old));
        faults.put(Fault.WRONG_FOR_STAFF, Audit.of(staff, Phrases.NONE, outside(outside, Audience.STAFF)));
        Map<String, byte[]> both = new TreeMap<>();
        renters.forEach((path, bytes) -> both.put(OutputFolder.root(Audience.RENTERS) + path, bytes));
        staff.forEach((path, bytes) -> both.put(OutputFolder.root(Audience.STAFF) + path, bytes));
        return new Made(
                both,
                faults,
                Map.of(Audience.RENTERS, given(theirs, old), Audience.STAFF, given(ofStaff, oldOfStaff)),
                Map.of(Audience.RENTERS, old.lost(), Audience.STAFF, oldOfStaff.lost()),
                printed(theirs, renters));
    }

    /** An edition is printed as long as nothing has changed since; other words of a theme print it otherwise. */
    private Optional<AsPrinted> printed(Handbook handbook, Map<String, byte[]> files) {
        return handbook.revision()
                .filter(Revision::asIssued)
                .map(it -> new AsPrinted(handbook.unit(), it.edition(), PrintedBooks.among(files, handbook)))
                .filter(it -> !it.books().isEmpty() && !it.isKept(root));
    }

    /** A page that leads on has an address, too, also where nobody knows that it was ever there. */
    private static Addresses given(Handbook handbook, OldAddresses old) {
        Addresses now = Addresses.of(handbook);
        SortedSet<String> nodes = new TreeSet<>(now.nodes());
        nodes.addAll(old.pages().keySet());
        return new Addresses(nodes, now.labels());
    }

    private static Addresses of(Map<Audience, Addresses> before, Audience reader) {
        return Objects.requireNonNull(before.get(reader));
    }

    private static Audit.Outside outside(Map<Audience, Audit.Outside> outside, Audience reader) {
        return Objects.requireNonNull(outside.get(reader));
    }

    private Map<String, byte[]> files(
            Audience reader, Handbook handbook, Media media, OldAddresses old, Optional<AsPrinted> inBinder) {
        Map<String, byte[]> files = new TreeMap<>();
        Output.Around around =
                new Output.Around(files, path -> last.apply(OutputFolder.root(reader) + path), old, inBinder);
        for (Output output : outputs) {
            if (output.of(reader)) {
                files.putAll(output.files(handbook, media, around));
            }
        }
        return files;
    }

    /** What files of the renters' copy are made of, where that is sooner compared than the files. */
    private Map<String, byte[]> sources(Handbook handbook, Media media) {
        Map<String, byte[]> sources = new TreeMap<>();
        outputs.stream()
                .filter(output -> output.of(Audience.RENTERS))
                .forEach(output -> output.sources(handbook, media).ifPresent(sources::putAll));
        return sources;
    }

    /** @param read what renters get, or what it is made of */
    private List<String> disclosed(
            CheckedCoach coach,
            Issued issued,
            Handbook theirs,
            Media media,
            Map<String, byte[]> read,
            OldAddresses old) {
        Unit unit = coach.unit();
        Check forThem = forRenters.of(unit);
        Unit bare = forThem.units().get(0);
        CheckedCoach bareCoach = forThem.of(bare);
        Handbook without =
                WhatChanged.in(Composer.compose(bareCoach), bareCoach, issued).seenBy(Audience.RENTERS);
        Media seen = media.seenBy(bare, Audience.RENTERS);
        // Files are made of these two alone: where they are the same, so are the files.
        return without.reads(theirs) && seen.equals(media.seenBy(unit, Audience.RENTERS))
                ? List.of()
                : Disclosures.of(new Wording(coach.coach(), coach.words()), read, files(without, seen, read, old));
    }

    /** The renters' copy of a coach of which nothing was written for staff. */
    private Map<String, byte[]> files(Handbook handbook, Media media, Map<String, byte[]> renters, OldAddresses old) {
        Map<String, byte[]> without = new TreeMap<>();
        // The site offers what is printed by its size, which is looked up, not made once more.
        Output.Around around = new Output.Around(renters, path -> Optional.empty(), old, Optional.empty());
        for (Output output : outputs) {
            if (output.of(Audience.RENTERS)) {
                without.putAll(output.sources(handbook, media).orElseGet(() -> output.files(handbook, media, around)));
            }
        }
        return without;
    }
}
