package bayfolio.read;

import java.util.ArrayList;
import java.util.List;

/** Two states of a text, line by line, in the unified form that everybody reads. Line ends are left out. */
public final class LineDifference {
    private static final int AROUND = 3;

    /** So many equal lines in a row are no accident. */
    private static final int SURE = 3;

    /** @param sign space, minus or plus */
    private record Line(char sign, String text, int before, int after) {}

    private LineDifference() {}

    public static String of(String path, String before, String after) {
        List<Line> lines = lines(before.lines().toList(), after.lines().toList());
        StringBuilder told = new StringBuilder("--- " + path + "\n+++ " + path + "\n");
        int at = 0;
        while (at < lines.size()) {
            int first = at;
            while (first < lines.size() && lines.get(first).sign == ' ') {
                first++;
            }
            if (first == lines.size()) {
                break;
            }
            int end = end(lines, first);
            int from = Math.max(at, first - AROUND);
            hunk(lines.subList(from, Math.min(lines.size(), end + AROUND)), told);
            at = end;
        }
        return told.toString();
    }

    /** Behind the last change that is told together with this one. */
    private static int end(List<Line> lines, int first) {
        int end = first;
        for (int i = first; i < lines.size() && i - end <= 2 * AROUND; i++) {
            if (lines.get(i).sign != ' ') {
                end = i + 1;
            }
        }
        return end;
    }

    private static void hunk(List<Line> lines, StringBuilder told) {
        long olds = lines.stream().filter(it -> it.sign != '+').count();
        long news = lines.stream().filter(it -> it.sign != '-').count();
        told.append("@@ -%d,%d +%d,%d @@%n"
                .formatted(lines.get(0).before, olds, lines.get(0).after, news)
                .replace("\r", ""));
        lines.forEach(line -> told.append(line.sign).append(line.text).append('\n'));
    }

    private static List<Line> lines(List<String> before, List<String> after) {
        List<Line> lines = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
                lines.add(new Line(' ', before.get(i), i + 1, j + 1));
                i++;
                j++;
                continue;
            }
            int[] next = meeting(before, i, after, j);
            while (i < next[0]) {
                lines.add(new Line('-', before.get(i), i + 1, j + 1));
                i++;
            }
            while (j < next[1]) {
                lines.add(new Line('+', after.get(j), i + 1, j + 1));
                j++;
            }
        }
        return lines;
    }

    /** Where the two go on alike, nearest first. */
    private static int[] meeting(List<String> before, int i, List<String> after, int j) {
        int most = before.size() - i + after.size() - j;
        for (int far = 1; far <= most; far++) {
            for (int skipped = Math.max(0, far - (after.size() - j));
                    skipped <= Math.min(far, before.size() - i);
                    skipped++) {
                if (alike(before, i + skipped, after, j + far - skipped)) {
                    return new int[] {i + skipped, j + far - skipped};
                }
            }
        }
        return new int[] {before.size(), after.size()};
    }

    private static boolean alike(List<String> before, int i, List<String> after, int j) {
        int same = 0;
        while (same < SURE && i + same < before.size() && j + same < after.size()) {
            if (!before.get(i + same).equals(after.get(j + same))) {
                return false;
            }
            same++;
        }
        return before.size() - i - same == after.size() - j - same || same == SURE;
    }
}
