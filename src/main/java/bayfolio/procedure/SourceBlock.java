package bayfolio.procedure;

import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stretch of a script as written, before it is filled in: a step, a hazard, a paragraph.
 *
 * @param text its lines with list number or quote mark, joined by {@code \n}
 * @param own the writer's own words, each where it stands in the text: marks are blanks, and what is filled in is
 *     {@link #FOREIGN}
 * @param at its lines as a whole
 */
public record SourceBlock(Part part, String text, String own, Place at) {
    /** Stands for what is not the writer's own: a value, the name of a thing. */
    public static final char FOREIGN = '\u00B7';

    /** Begins, in bold, the line below a step after which a reader may stop. */
    static final String SAFE_TO_STOP = "Safe to stop:";

    /** Of a heading or a step, behind its words: {@code ### Turn on the power {#power}}. */
    static final Pattern ANCHOR = Pattern.compile("(?m)\\s*\\{#([a-z0-9]+(?:-[a-z0-9]+)*)}$");

    private static final Pattern STEP = Pattern.compile("^\\d+[.)]\\s.*");
    private static final Pattern SECTION = Pattern.compile("\\{\\{[#^/!][^{}\n]*+}}");
    private static final Pattern VALUE = Pattern.compile("\\{\\{\\{?[^{}\n]*+}}}?");
    private static final Pattern LINK_END = Pattern.compile("]\\([^()\\[\\]\\s]*+(?: \"[^\"\\n]*+\")?\\)");
    private static final Pattern MARK = Pattern.compile("(?m)^\\s*(?:\\d+[.)]\\s|>|[-*]\\s)");
    private static final Pattern PLATE = Pattern.compile("`[^`\n]*`");
    private static final Pattern SIGNAL = Pattern.compile("\\*\\*[A-Z]{4,}\\*\\*(?!\\w)");

    /** What a passage is in its procedure. */
    public enum Part {
        OPENING,
        STEP,
        HAZARD,
        HEADING,
        ENDING
    }

    /** All passages of a script, in their order, those in sections that a coach leaves out too. */
    static List<SourceBlock> of(SourceFile file, String body, int firstLineOfBody) {
        List<SourceBlock> passages = new ArrayList<>();
        String[] lines = body.split("\n", -1);
        boolean steps = false;
        boolean ended = false;
        for (int i = 0; i < lines.length; i++) {
            if (separates(lines[i])) {
                continue;
            }
            int first = i;
            boolean heading = lines[i].startsWith("#");
            boolean hazard = lines[i].strip().startsWith(">");
            boolean step = STEP.matcher(lines[i]).matches();
            boolean rest = lines[i].startsWith("**" + SAFE_TO_STOP + "**");
            ended |= lines[i].startsWith("## ");
            steps |= step;
            while (!heading && i + 1 < lines.length && goesOn(lines[i + 1], hazard)) {
                i++;
            }
            Part part = heading
                    ? Part.HEADING
                    : hazard ? Part.HAZARD : ended || rest ? Part.ENDING : steps ? Part.STEP : Part.OPENING;
            String text = String.join("\n", List.of(lines).subList(first, i + 1));
            Position start = new Position(firstLineOfBody + first, 1);
            Position end = new Position(firstLineOfBody + i, 1 + lines[i].codePointCount(0, lines[i].length()));
            passages.add(new SourceBlock(part, text, own(text), new Place(file, start, end)));
        }
        return passages;
    }

    /** All lasting names of parts and steps in a text, in their order. */
    static List<String> anchors(String body) {
        return ANCHOR.matcher(body).results().map(name -> name.group(1)).toList();
    }

    private static boolean separates(String line) {
        return line.isBlank() || tagsOnly(line);
    }

    private static boolean goesOn(String line, boolean hazard) {
        return !separates(line)
                && !line.startsWith("#")
                && !STEP.matcher(line).matches()
                && line.strip().startsWith(">") == hazard;
    }

    private static String own(String text) {
        String own = text;
        if (text.contains("{{")) {
            own = blanked(blanked(own, SECTION, ' '), VALUE, FOREIGN);
        }
        if (text.contains("](")) {
            own = blanked(own, LINK_END, FOREIGN);
        }
        own = blanked(own, MARK, ' ');
        if (own.contains("{#")) {
            own = blanked(own, ANCHOR, ' ');
        }
        if (text.contains("**")) {
            own = blanked(own, SIGNAL, ' ');
        }
        return own.replace('[', ' ').replace('*', FOREIGN).replace('#', ' ');
    }

    /** The same without what stands in code marks: the words of plates. */
    public String ownWithoutPlates() {
        return own.indexOf('`') < 0 ? own : blanked(own, PLATE, FOREIGN);
    }

    private static String blanked(String text, Pattern pattern, char with) {
        Matcher match = pattern.matcher(text);
        if (!match.find()) {
            return text;
        }
        char[] letters = text.toCharArray();
        do {
            for (int i = match.start(); i < match.end(); i++) {
                letters[i] = letters[i] == '\n' ? '\n' : with;
            }
        } while (match.find());
        return new String(letters);
    }

    /** The place of a part of the text. */
    public Place at(int from, int to) {
        return new Place(at.file(), position(from), position(to));
    }

    private Position position(int offset) {
        int line = at.line();
        int start = 0;
        for (int end = text.indexOf('\n'); end >= 0 && end < offset; end = text.indexOf('\n', start)) {
            line++;
            start = end + 1;
        }
        return new Position(line, 1 + text.codePointCount(start, offset));
    }

    /** Tags of sections and nothing else; such a line prints nothing. */
    private static boolean tagsOnly(String line) {
        return line.contains("{{") && SECTION.matcher(line).replaceAll("").isBlank();
    }
}
