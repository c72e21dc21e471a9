package bayfolio.bookings;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of bookings, comma- or semicolon-separated, with a line of names above. It is read a row at a time; what is wrong
 * with a row is told, and the others count.
 */
public final class Bookings {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("[\\p{L}\\p{N}\\p{P}\\p{S} ]{1,60}");
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Z]{2})?");

    private final String name;
    private final Collection<String> coaches;
    private final Consumer<Finding> findings;
    private final Map<Column, Integer> columns = new EnumMap<>(Column.class);
    private final Map<String, Long> lines = new HashMap<>();

    private Bookings(String name, Collection<String> coaches, Consumer<Finding> findings) {
        this.name = name;
        this.coaches = coaches;
        this.findings = findings;
    }

    /**
     * @param coaches ids of those of the fleet
     * @param needed columns that must be there, beside number, coach, pickup and return
     * @param each gets the bookings that can be read, in the order of the file
     * @throws IOException where the file cannot be opened
     */
    public static void read(
            Path file,
            Collection<String> coaches,
            Set<Column> needed,
            Consumer<Booking> each,
            Consumer<Finding> findings)
            throws IOException {
        Bookings bookings = new Bookings(file.toString().replace('\\', '/'), coaches, findings);
        try (BufferedReader text = new BufferedReader(
                new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder()))) {
            bookings.read(text, needed, each);
        } catch (CharacterCodingException e) {
            bookings.told(1, "the file is no UTF-8 text", "Save it as CSV in UTF-8.");
        }
    }

    private void read(BufferedReader text, Set<Column> needed, Consumer<Booking> each) throws IOException {
        text.mark(1);
        if (text.read() != '\uFEFF') {
            text.reset();
        }
        text.mark(1 << 16);
        String first = text.readLine();
        if (first == null) {
            told(1, "the file is empty", "Begin it with a line of names: `booking,coach,pickup,return`.");
            return;
        }
        text.reset();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(
                        first.chars().filter(it -> it == ';').count()
                                        > first.chars().filter(it -> it == ',').count()
                                ? ';'
                                : ',')
                .setIgnoreEmptyLines(true)
                .get();
        long line = 1;
        try (CSVParser rows = format.parse(text)) {
            Iterator<CSVRecord> all = rows.iterator();
            boolean readable = all.hasNext() && header(all.next(), needed);
            line = rows.getCurrentLineNumber() + 1;
            while (readable && all.hasNext()) {
                CSVRecord row = all.next();
                long breaks = row.stream().mapToLong(Bookings::breaks).sum();
                // A row ends where the reader is; it began as many lines above as there are in its cells.
                long end = Math.max(line, rows.getCurrentLineNumber());
                row(row, Math.max(line, end - breaks)).ifPresent(each);
                line = end + 1;
            }
        } catch (UncheckedIOException | CSVException e) {
            broken(e, line);
        } catch (IllegalStateException e) {
            broken(e, line);
        }
    }

    private void broken(Exception e, long line) throws CharacterCodingException {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof CharacterCodingException letters) {
                throw letters;
            }
        }
        told(
                line,
                "from this row on the file cannot be taken apart: a quotation mark is open, or something stands behind one",
                "Put what has separators or line breaks in it between two quotation marks, and double those within it.");
    }

    private static long breaks(String cell) {
        return cell.replace("\r\n", "\n")
                .chars()
                .filter(it -> it == '\n' || it == '\r')
                .count();
    }

    private boolean header(CSVRecord row, Set<Column> needed) {
        Map<String, Column> known = new HashMap<>();
        Arrays.stream(Column.values()).forEach(column -> known.put(column.title(), column));
        List<String> titles = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            String title = row.get(i).strip().toLowerCase(Locale.ROOT);
            titles.add(title);
            Column column = known.get(title);
            if (column != null && columns.putIfAbsent(column, i) != null) {
                told(1, "the column `" + title + "` is there twice", "Take one of the two out.");
                return false;
            }
        }
        Set<Column> wanted = EnumSet.of(Column.BOOKING, Column.COACH, Column.PICKUP, Column.RETURN);
        wanted.addAll(needed);
        wanted.removeAll(columns.keySet());
        titles.removeAll(known.keySet());
        for (Column column : wanted) {
            findings.accept(finding(1, "the column `" + column.title() + "` is missing")
                    .near(NearNames.to(column.title(), titles))
                    .mend("Name it in the first line; the order of the columns is free."));
        }
        return wanted.isEmpty();
    }

    private Optional<Booking> row(CSVRecord row, long line) {
        if (row.size() == 1 && row.get(0).isBlank()) {
            return Optional.empty();
        }
        int last = columns.values().stream().mapToInt(it -> it).max().orElse(0);
        boolean[] wrong = {false};
        if (row.size() <= last) {
            told(
                    line,
                    "the row has " + row.size() + " columns, and the first line " + (last + 1) + " or more",
                    "Put what has separators in it between quotation marks, and leave no column out.");
            return Optional.empty();
        }
        String id = cell(row, Column.BOOKING);
        if (id.isEmpty()) {
            told(line, "`booking` is empty", "Give the number of the booking.");
            wrong[0] = true;
        } else if (!NUMBER.matcher(id).matches()) {
            told(
                    line,
                    "`booking` is no number of one: it is long, or has a line break or a hidden character in it",
                    "Write the number alone, in one line.");
            wrong[0] = true;
        } else {
            Long before = lines.putIfAbsent(id, line);
            if (before != null) {
                told(line, "booking `" + id + "` is there already, in line " + before, "Keep the row that holds.");
                wrong[0] = true;
            }
        }
        String coach = cell(row, Column.COACH);
        if (!coaches.contains(coach)) {
            findings.accept(finding(line, "there is no coach `" + coach + "`")
                    .near(NearNames.to(coach, coaches))
                    .mend("Write its id, the name of its folder below `units`."));
            wrong[0] = true;
        }
        Optional<LocalDateTime> pickup = time(row, Column.PICKUP, line);
        Optional<LocalDateTime> back = time(row, Column.RETURN, line);
        if (pickup.isPresent() && back.isPresent() && !pickup.get().isBefore(back.get())) {
            told(
                    line,
                    "the return, " + TIME.format(back.get()) + ", is not after the pickup, "
                            + TIME.format(pickup.get()),
                    "Mend the one that is wrong.");
            wrong[0] = true;
        }
        Optional<OptionalInt> people = whole(row, Column.PEOPLE, line);
        Optional<OptionalInt> edition = whole(row, Column.EDITION_SENT, line);
        String language = cell(row, Column.LANGUAGE);
        if (!language.isEmpty() && !LANGUAGE.matcher(language).matches()) {
            told(line, "`language` is `" + language + "`", "Write it as `de` or `en-GB`, or leave it empty.");
            wrong[0] = true;
        }
        if (wrong[0] || pickup.isEmpty() || back.isEmpty() || people.isEmpty() || edition.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Booking(
                id,
                coach,
                pickup.get(),
                back.get(),
                people.get(),
                cell(row, Column.SUPPLY),
                Optional.of(language).filter(it -> !it.isEmpty()),
                cell(row, Column.TRIP),
                edition.get(),
                at(line)));
    }

    private String cell(CSVRecord row, Column column) {
        Integer at = columns.get(column);
        return at == null ? "" : row.get(at).strip();
    }

    private Optional<LocalDateTime> time(CSVRecord row, Column column, long line) {
        String cell = cell(row, column);
        try {
            return Optional.of(LocalDateTime.parse(cell, TIME));
        } catch (DateTimeParseException e) {
            told(
                    line,
                    cell.isEmpty()
                            ? "`" + column.title() + "` is empty"
                            : "`" + column.title() + "` is `" + cell + "`, which is no day and time",
                    "Write it as `2026-05-02 15:00`.");
            return Optional.empty();
        }
    }

    /** Nothing where it is no number, which is told. */
    private Optional<OptionalInt> whole(CSVRecord row, Column column, long line) {
        String cell = cell(row, column);
        if (cell.isEmpty()) {
            return Optional.of(OptionalInt.empty());
        }
        if (!WHOLE.matcher(cell).matches() || Integer.parseInt(cell) == 0) {
            told(line, "`" + column.title() + "` is `" + cell + "`", "Write a whole number from 1, or leave it empty.");
            return Optional.empty();
        }
        return Optional.of(OptionalInt.of(Integer.parseInt(cell)));
    }

    private void told(long line, String message, String mend) {
        findings.accept(finding(line, message).mend(mend));
    }

    private Finding finding(long line, String message) {
        return unreadable(at(line), message);
    }

    /** Of what only makes a message say less. */
    public static Finding unread(Place at, String message) {
        return Finding.warning("booking-unreadable", at, message);
    }

    /** What is told of bookings, by whoever reads them. */
    public static Finding unreadable(Place at, String message) {
        return Finding.error("booking-unreadable", at, message);
    }

    /** Without what the row says: a report may be sent on, and names stand there. */
    private Place at(long line) {
        return Place.of(new SourceFile(name, ""), (int) Math.min(line, Integer.MAX_VALUE), 1, 0);
    }
}
