package bayfolio.template;

import bayfolio.fact.UnreadException;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.github.mustachejava.Code;
import com.github.mustachejava.Mustache;
import com.github.mustachejava.MustacheException;
import com.github.mustachejava.codes.NotIterableCode;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A compiled Mustache template in which no name may be unknown.
 *
 * <p>Sections choose by what is there and repeat for each of several; what a section asks for may
 * be absent, what is printed may not. A name is looked for in the innermost section first, then
 * outward.
 */
public final class Template {
    /** More than any text needs; without a limit, a hostile file overflows the stack. */
    private static final int DEEPEST = 32;

    private static final Pattern SECTION = Pattern.compile("\\{\\{\\s*([#^/])");

    private final StrictMustache.Part part;
    private final @Nullable Mustache compiled;
    private final Map<Code, Place> places;

    private Template(StrictMustache.Part part, @Nullable Mustache compiled, Map<Code, Place> places) {
        this.part = part;
        this.compiled = compiled;
        this.places = places;
    }

    /** How printed values are made safe for what the template makes. */
    public enum Escape {
        HTML,
        MARKDOWN
    }

    /**
     * A template whose output tells the place of each piece. A malformed one is told and prints
     * nothing.
     *
     * @param firstLine the line of the file that the text begins on
     */
    public static Template compile(
            SourceFile file, String text, int firstLine, Escape escape, Consumer<TemplateProblem> complaints) {
        return compile(new StrictMustache.Part(file, text, firstLine), escape, name -> Optional.empty(), complaints);
    }

    /** A whole file that may call other files by their names without ending. */
    public static Template compile(
            SourceFile file,
            Escape escape,
            Function<String, Optional<SourceFile>> partials,
            Consumer<TemplateProblem> complaints) {
        return compile(
                new StrictMustache.Part(file, file.text(), 1),
                escape,
                name -> partials.apply(name).map(part -> new StrictMustache.Part(part, part.text(), 1)),
                complaints);
    }

    private static Template compile(
            StrictMustache.Part part,
            Escape escape,
            Function<String, Optional<StrictMustache.Part>> partials,
            Consumer<TemplateProblem> complaints) {
        if (deepest(part.text()) > DEEPEST) {
            complaints.accept(new TemplateProblem(
                    TemplateProblem.Kind.MALFORMED,
                    part.first(),
                    "",
                    "sections are nested deeper than " + DEEPEST + " levels",
                    List.of(),
                    "Close each section where its text ends."));
            return new Template(part, null, Map.of());
        }
        StrictMustache factory = new StrictMustache(escape, partials);
        try {
            return new Template(part, factory.compile(part), factory.places());
        } catch (MustacheException malformed) {
            complaints.accept(factory.malformed(part, malformed));
            return new Template(part, null, Map.of());
        }
    }

    /** How many sections are open at once at most. */
    private static int deepest(String text) {
        int depth = 0;
        int deepest = 0;
        Matcher tag = SECTION.matcher(text);
        while (tag.find()) {
            depth = tag.group(1).equals("/") ? Math.max(0, depth - 1) : depth + 1;
            deepest = Math.max(deepest, depth);
        }
        return deepest;
    }

    /** Whether it could not be compiled, and prints nothing. */
    public boolean malformed() {
        return compiled == null;
    }

    /**
     * Fills it in. What is wrong is told, and left out of the output.
     *
     * @throws UnreadException when it asks for what could not be read
     */
    public Output fill(Names names, Consumer<TemplateProblem> complaints) {
        Output output = new Output(part.text().length());
        if (compiled != null) {
            try {
                compiled.execute(output, new ArrayList<>(List.of(new StrictMustache.Run(names, complaints))));
            } catch (Output.TooLong | MustacheException stopped) {
                stopped(stopped, complaints);
            }
        }
        return output;
    }

    /** Prints it within another. */
    void fill(Writer writer, List<Object> scopes) {
        if (compiled != null) {
            compiled.execute(writer, scopes);
        }
    }

    /** The engine wraps what stops it, once for each section around. */
    private void stopped(RuntimeException exception, Consumer<TemplateProblem> complaints) {
        Throwable why = exception;
        while (why instanceof MustacheException && why.getCause() != null) {
            why = why.getCause();
        }
        if (why instanceof UnreadException unread) {
            throw unread;
        }
        if (!(why instanceof Output.TooLong)) {
            throw exception;
        }
        complaints.accept(tooLong());
    }

    private TemplateProblem tooLong() {
        return new TemplateProblem(
                TemplateProblem.Kind.NOTHING_THERE,
                part.first(),
                "",
                "filled in, this text is longer than any page",
                List.of(),
                "Look for a section that repeats within another.");
    }

    /**
     * A name that a template asks for, in a section taken or not.
     *
     * @param within the innermost section around it that makes names of its own
     */
    public record Asked(String name, Place at, Optional<Asked> within, boolean section) {}

    public List<Asked> asked() {
        List<Asked> asked = new ArrayList<>();
        if (compiled != null) {
            collect(compiled.getCodes(), Optional.empty(), asked);
        }
        return asked;
    }

    private void collect(Code @Nullable [] codes, Optional<Asked> within, List<Asked> asked) {
        if (codes == null) {
            return;
        }
        for (Code code : codes) {
            Place at = places.get(code);
            if (at == null) {
                continue;
            }
            boolean section = code.getCodes() != null;
            Asked here = new Asked(code.getName(), at, within, section);
            asked.add(here);
            collect(code.getCodes(), section && !(code instanceof NotIterableCode) ? Optional.of(here) : within, asked);
        }
    }
}
