package bayfolio.finding;

import bayfolio.source.Hidden;
import bayfolio.source.Place;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Findings for people: place, severity, sentence, code; the line as written with carets below what
 * is meant; then the near names and the mend.
 */
public final class TextReport {
    private static final int WIDEST = 160;

    private TextReport() {}

    /** @param color for terminals: severity in color, the sentence bold */
    public static String of(Findings findings, boolean color) {
        return findings.all().stream()
                .map(finding -> colored(heading(finding), finding, color) + excerpt(finding.at()) + help(finding))
                .collect(Collectors.joining("\n"));
    }

    private static String colored(String heading, Finding finding, boolean color) {
        if (!color) {
            return heading;
        }
        String severity = finding.severity().word() + ":";
        String tint = switch (finding.severity()) {
            case ERROR -> "\u001B[31m";
            case WARNING -> "\u001B[33m";
            case NOTE -> "\u001B[36m";
        };
        return heading.replaceFirst(Pattern.quote(severity), Matcher.quoteReplacement(tint + severity + "\u001B[0m"));
    }

    /** Lines for the end of a run: one for each coach that something is wrong with, then {@code 2 errors, 1 warning}. */
    public static String summary(Findings findings) {
        StringBuilder summary = new StringBuilder();
        findings.all().stream()
                .flatMap(finding -> finding.coaches().stream())
                .distinct()
                .sorted()
                .forEach(coach -> summary.append(coach)
                        .append(": ")
                        .append(count(findings.all().stream()
                                .filter(finding -> finding.coaches().contains(coach))
                                .toList()))
                        .append('\n'));
        return findings.all().isEmpty()
                ? ""
                : Hidden.visible(summary.toString()) + "In all: " + count(findings.all()) + "\n";
    }

    /** {@code 2 errors, 1 warning}. */
    public static String count(List<Finding> findings) {
        return Arrays.stream(Severity.values())
                .map(severity -> counted(
                        findings.stream()
                                .filter(it -> it.severity() == severity)
                                .count(),
                        severity))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String counted(long count, Severity severity) {
        return count == 0 ? "" : count + " " + severity.word() + (count == 1 ? "" : "s");
    }

    /**
     * {@code units/dunlin/unit.yaml:12:9: error: … [code]}, with the coaches where it is not said
     * by the file.
     */
    static String heading(Finding finding) {
        String file = finding.at().file().path();
        String coaches = finding.units().stream()
                .filter(unit -> !file.startsWith("units/" + unit + "/"))
                .collect(Collectors.joining(", "));
        return Hidden.visible(finding.at()
                + ": "
                + finding.severity().word()
                + ": "
                + finding.message()
                + (coaches.isEmpty() ? "" : " (" + coaches + ")")
                + " ["
                + finding.code()
                + "]\n");
    }

    private static String excerpt(Place at) {
        String line = at.file().line(at.line());
        // A long line is shown from a little before the place.
        int from = at.column() + 40 > WIDEST ? Math.max(0, at.column() - 41) : 0;
        if (line.isEmpty() || line.codePointCount(0, line.length()) < at.column()) {
            return "";
        }
        int[] points = line.substring(line.offsetByCodePoints(0, from))
                .codePoints()
                .limit(WIDEST)
                .map(point -> Hidden.is(point) ? '\uFFFD' : point)
                .toArray();
        int start = at.column() - 1 - from;
        boolean oneLine = at.endLine() == at.line();
        int end = oneLine ? Math.min(at.endColumn() - 1 - from, points.length) : points.length;
        String number = Integer.toString(at.line());
        return number
                + " | "
                + new String(points, 0, points.length).replace('\t', ' ')
                + "\n"
                + " ".repeat(number.length())
                + " | "
                + " ".repeat(columns(points, 0, start))
                + "^".repeat(Math.max(1, columns(points, start, end)))
                + "\n";
    }

    /** How wide a text is on the screen, in columns of a terminal. */
    public static int columns(String text) {
        int[] points = text.codePoints().toArray();
        return columns(points, 0, points.length);
    }

    /** How wide a stretch of a line is on the screen. */
    private static int columns(int[] points, int from, int to) {
        int columns = 0;
        for (int i = from; i < to; i++) {
            columns += columns(points[i]);
        }
        return columns;
    }

    /**
     * @see <a href="https://www.unicode.org/reports/tr11/">UAX #11: ideographs, Hangul and emoji
     *     take two columns</a>
     */
    private static int columns(int point) {
        int type = Character.getType(point);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = Character.isIdeographic(point)
                || point >= 0x1100 && point <= 0x115F
                || point >= 0x3000 && point <= 0x30FF
                || point >= 0xAC00 && point <= 0xD7A3
                || point >= 0xFF01 && point <= 0xFF60
                || point >= 0x1F300 && point <= 0x1FAFF;
        return wide ? 2 : 1;
    }

    static String help(Finding finding) {
        String near = finding.near().isEmpty()
                ? ""
                : "help: did you mean "
                        + finding.near().stream().map(name -> "`" + name + "`").collect(Collectors.joining(" or "))
                        + "?\n";
        return Hidden.visible(
                near + finding.mend().map(mend -> "help: " + mend + "\n").orElse(""));
    }
}
