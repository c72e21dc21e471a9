package bayfolio.read;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.measure.Seconds;
import bayfolio.model.Chapter;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The cues of a WebVTT file, each with its place, so that what is wrong in one is told there.
 *
 * @see <a href="https://www.w3.org/TR/webvtt1/#syntax">WebVTT, syntax</a>
 */
final class Cues {
    private static final String HEADER = "WEBVTT";
    private static final String ARROW = "-->";
    private static final Pattern TIME = Pattern.compile("(?:([0-9]{2,}):)?([0-5][0-9]):([0-5][0-9])\\.([0-9]{3})");

    /** The settings behind a time, such as where on the screen it stands, are for the player. */
    private static final Pattern TIMING =
            Pattern.compile("[ \\t]*(\\S+)[ \\t]+-->[ \\t]+(\\S+)(?:[ \\t]+\\S.*|[ \\t]*)");

    /** The tags of a cue, such as who speaks. */
    private static final Pattern TAG = Pattern.compile("<[^>]*>?");

    /**
     * @param id the line above its time
     * @param text without tags, its lines in one
     */
    record Cue(
            Optional<Located<String>> id, Located<Seconds> from, Located<Seconds> to, Optional<Located<String>> text) {}

    private final SourceFile file;
    private final Consumer<Finding> findings;
    private final List<Cue> cues = new ArrayList<>();

    private Cues(SourceFile file, Consumer<Finding> findings) {
        this.file = file;
        this.findings = findings;
    }

    /** All that could be read. */
    static List<Cue> of(SourceFile file, Consumer<Finding> findings) {
        Cues cues = new Cues(file, findings);
        cues.read();
        return List.copyOf(cues.cues);
    }

    /** Cues as chapters: what a cue names, when, and what is told. */
    static <E extends Described> List<Located<E>> chapters(
            SourceFile file, Shape<E> shape, Consumer<Finding> findings) {
        List<Located<E>> chapters = new ArrayList<>();
        for (Cue cue : of(file, findings)) {
            Place at = cue.id().map(Located::at).orElseGet(() -> cue.from().at());
            Facts.Draft facts = Facts.draft(shape, at);
            facts.put(Chapter.FROM, cue.from()).put(Chapter.TO, cue.to());
            cue.text().ifPresent(text -> facts.put(Chapter.TITLE, text));
            cue.id().ifPresent(id -> facts.put(Chapter.THING, id));
            if (cue.id().isEmpty()) {
                findings.accept(Finding.error("cue-names-nothing", at, "this cue names nothing that is seen in it")
                        .mend("Write the id of that on a line of its own above the time, such as `entry-door`."));
            }
            chapters.add(new Located<>(shape.make(facts.done()), at));
        }
        return chapters;
    }

    private void read() {
        String first = file.line(1);
        if (!first.equals(HEADER) && !first.startsWith(HEADER + " ") && !first.startsWith(HEADER + "\t")) {
            tell(1, first, "the file does not begin with `WEBVTT`", "Begin with a line `WEBVTT` and an empty line.");
            return;
        }
        int line = 2;
        if (!file.line(2).isEmpty() && file.lineCount() > 1) {
            tell(2, file.line(2), "below `WEBVTT` no line is empty", "Leave a line empty there.");
        }
        while (line <= file.lineCount()) {
            if (file.line(line).isEmpty()) {
                line++;
                continue;
            }
            int end = line;
            while (end <= file.lineCount() && !file.line(end).isEmpty()) {
                if (file.line(end).isBlank()) {
                    tell(end, file.line(end), "this line holds blanks, so that it parts nothing", "Leave it empty.");
                }
                end++;
            }
            block(line, end);
            line = end;
        }
    }

    /** @param end one past its last line */
    private void block(int start, int end) {
        String first = file.line(start);
        if (first.matches("NOTE([ \t].*)?") || cues.isEmpty() && first.matches("(STYLE|REGION)[ \t]*")) {
            for (int line = start; line < end; line++) {
                if (file.line(line).contains(ARROW)) {
                    tell(line, file.line(line), "browsers show a note that holds `-->`", "Take the whole note out.");
                }
            }
            return;
        }
        int timing = first.contains(ARROW) ? start : start + 1;
        String time = file.line(timing);
        Matcher times = TIMING.matcher(time);
        if (timing >= end || !times.matches()) {
            tell(
                    Math.min(timing, end - 1),
                    file.line(Math.min(timing, end - 1)),
                    "this is no time of a cue",
                    "Write it as `00:01:05.000 --> 00:01:20.000`.");
            return;
        }
        Located<Seconds> from = seconds(timing, times, 1);
        Located<Seconds> to = seconds(timing, times, 2);
        if (from == null || to == null) {
            return;
        }
        if (to.value().value() <= from.value().value()) {
            tell(timing, time, "this cue ends before it begins", "Write its end behind the arrow.");
            return;
        }
        Optional<Located<String>> id =
                timing == start ? Optional.empty() : Optional.of(new Located<>(first.strip(), whole(start, first)));
        cues.add(new Cue(id, from, to, text(timing + 1, end)));
    }

    private @Nullable Located<Seconds> seconds(int line, Matcher times, int group) {
        String written = times.group(group);
        Matcher time = TIME.matcher(written);
        String text = file.line(line);
        Place at = Place.of(
                file,
                line,
                1 + text.codePointCount(0, times.start(group)),
                written.codePointCount(0, written.length()));
        if (!time.matches()) {
            findings.accept(Finding.error("unreadable-cues", at, "`" + written + "` is no time of a cue")
                    .mend("Write hours, minutes, seconds and thousandths, with a dot before these: `00:01:05.000`."));
            return null;
        }
        String hours = time.group(1);
        return new Located<>(
                new Seconds((hours == null ? 0 : 3600 * Double.parseDouble(hours))
                        + 60 * Double.parseDouble(time.group(2))
                        + Double.parseDouble(time.group(3))
                        + Double.parseDouble(time.group(4)) / 1000),
                at);
    }

    private Optional<Located<String>> text(int start, int end) {
        StringBuilder text = new StringBuilder();
        for (int line = start; line < end; line++) {
            if (file.line(line).contains(ARROW)) {
                tell(line, file.line(line), "above this time no line is empty", "Leave a line empty between two cues.");
            }
            text.append(text.isEmpty() ? "" : " ").append(file.line(line).strip());
        }
        String plain = TAG.matcher(text)
                .replaceAll("")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&nbsp;", "\u00a0")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .strip();
        return plain.isEmpty()
                ? Optional.empty()
                : Optional.of(new Located<>(
                        plain,
                        new Place(
                                file,
                                whole(start, file.line(start)).start(),
                                whole(end - 1, file.line(end - 1)).end())));
    }

    private Place whole(int line, String text) {
        return Place.of(file, line, 1, text.codePointCount(0, text.length()));
    }

    private void tell(int line, String text, String message, String mend) {
        findings.accept(
                Finding.error("unreadable-cues", whole(line, text), message).mend(mend));
    }
}
