package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.render.Media;
import bayfolio.render.Output;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
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
     */
    record Made(Map<String, byte[]> files, Map<Fault, List<String>> faults) {}

    /** In the order in which they are told. */
    enum Fault {
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

    /** @param outside gets the links that lead out of the files of a coach, of either copy */
    Made run(Unit unit, Map<Audience, Audit.Outside> outside) throws IOException {
        CheckedCoach coach = check.of(unit);
        Handbook whole = Composer.compose(coach);
        Handbook theirs = whole.seenBy(Audience.RENTERS);
        List<String> marked = Marks.of(theirs);
        if (!marked.isEmpty()) {
            return new Made(Map.of(), Map.of(Fault.MARKED, marked));
        }
        Map<Fault, List<String>> faults = new EnumMap<>(Fault.class);
        Media media = Media.of(unit, root);
        Media seen = media.seenBy(unit, Audience.RENTERS);
        Map<String, byte[]> renters = files(Audience.RENTERS, theirs, seen);
        Map<String, byte[]> staff =
                files(Audience.STAFF, whole.seenBy(Audience.STAFF), media.seenBy(unit, Audience.STAFF));
        Map<String, byte[]> sources = sources(theirs, seen);
        Map<String, byte[]> read = new TreeMap<>(renters);
        read.putAll(sources); // what a file is made of is sooner read than the file
        faults.put(Fault.WRONG, Audit.of(read, staffTexts, outside(outside, Audience.RENTERS)));
        faults.put(Fault.DISCLOSED, disclosed(coach, theirs, media, read));
        faults.put(Fault.WRONG_FOR_STAFF, Audit.of(staff, Phrases.NONE, outside(outside, Audience.STAFF)));
        Map<String, byte[]> both = new TreeMap<>();
        renters.forEach((path, bytes) -> both.put(OutputFolder.root(Audience.RENTERS) + path, bytes));
        staff.forEach((path, bytes) -> both.put(OutputFolder.root(Audience.STAFF) + path, bytes));
        return new Made(both, faults);
    }

    private static Audit.Outside outside(Map<Audience, Audit.Outside> outside, Audience reader) {
        return Objects.requireNonNull(outside.get(reader));
    }

    private Map<String, byte[]> files(Audience reader, Handbook handbook, Media media) {
        Map<String, byte[]> files = new TreeMap<>();
        Output.Around around = new Output.Around(files, path -> last.apply(OutputFolder.root(reader) + path));
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
    private List<String> disclosed(CheckedCoach coach, Handbook theirs, Media media, Map<String, byte[]> read) {
        Unit unit = coach.unit();
        Check forThem = forRenters.of(unit);
        Unit bare = forThem.units().get(0);
        Handbook without = Composer.compose(forThem.of(bare)).seenBy(Audience.RENTERS);
        Media seen = media.seenBy(bare, Audience.RENTERS);
        // Files are made of these two alone: where they are the same, so are the files.
        return without.reads(theirs) && seen.equals(media.seenBy(unit, Audience.RENTERS))
                ? List.of()
                : Disclosures.of(new Wording(coach.coach(), coach.words()), read, files(without, seen, read));
    }

    /** The renters' copy of a coach of which nothing was written for staff. */
    private Map<String, byte[]> files(Handbook handbook, Media media, Map<String, byte[]> renters) {
        Map<String, byte[]> without = new TreeMap<>();
        // The site offers what is printed by its size, which is looked up, not made once more.
        Output.Around around = new Output.Around(renters, path -> Optional.empty());
        for (Output output : outputs) {
            if (output.of(Audience.RENTERS)) {
                without.putAll(output.sources(handbook, media).orElseGet(() -> output.files(handbook, media, around)));
            }
        }
        return without;
    }
}
