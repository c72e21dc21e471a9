package bayfolio.template;

import bayfolio.finding.NearNames;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.github.mustachejava.Binding;
import com.github.mustachejava.Code;
import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.DefaultMustacheVisitor;
import com.github.mustachejava.Iteration;
import com.github.mustachejava.Mustache;
import com.github.mustachejava.MustacheException;
import com.github.mustachejava.MustacheVisitor;
import com.github.mustachejava.ObjectHandler;
import com.github.mustachejava.TemplateContext;
import com.github.mustachejava.codes.IterableCode;
import com.github.mustachejava.codes.ValueCode;
import com.github.mustachejava.codes.WriteCode;
import com.github.mustachejava.util.HtmlEscaper;
import com.github.mustachejava.util.Wrapper;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The Mustache engine made strict: names come from {@link Names} only, never by reflection, and one
 * that is unknown or has nothing to print is told with its place.
 */
final class StrictMustache extends DefaultMustacheFactory {
    /** A template text within a file. */
    record Part(SourceFile file, String text, int firstLine) {
        /** Where it begins. */
        Place first() {
            return Place.of(file, firstLine, 1, 0);
        }
    }

    /** The outermost scope of one filling. */
    record Run(Names names, Consumer<TemplateProblem> complaints) {}

    /** Begins the names of what is printed as it stands; others are asked once, where they are printed. */
    private static final String PIECES = "acts.";

    private static final String OPEN_TAG = "Improperly closed variable";

    /** In place of {@code .}, which the engine would print without asking us what it is. */
    private static final String ITSELF = ". ";

    private static final Pattern LINE_BREAKS = Pattern.compile("\\s*\\R\\s*");

    private final Template.Escape escape;
    private final Function<String, Optional<Part>> partials;
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<Code, Place> places = new IdentityHashMap<>();

    /** Of the file that is being compiled: one is done before the next begins. */
    private Tokens tokens = new Tokens(new SourceFile("", ""), "", 1);

    /** Where the tag stands whose code is being made. */
    private @Nullable Place here;

    StrictMustache(Template.Escape escape, Function<String, Optional<Part>> partials) {
        this.escape = escape;
        this.partials = partials;
        setObjectHandler(new Strict());
    }

    Mustache compile(Part part) {
        return compile(begun(part, part.file.path()), part.file.path());
    }

    private Reader begun(Part part, String path) {
        parts.put(path, part);
        refuse(part, path);
        tokens = new Tokens(part.file, part.text, part.firstLine);
        return new StringReader(part.text);
    }

    /**
     * What the engine takes or counts wrongly: other delimiters, and tags over two lines, after
     * which all its lines are off.
     */
    private static void refuse(Part part, String file) {
        int line = 1;
        for (String text : part.text.split("\n", -1)) {
            int here = line++;
            if (!text.contains("{{")) {
                continue;
            }
            if (text.contains("{{=")) {
                throw new MustacheException("delimiters cannot be changed", context(file, here));
            }
            if (isOpen(text)) {
                throw new MustacheException(OPEN_TAG, context(file, here));
            }
        }
    }

    /** Whether a tag that begins on the line does not end on it. */
    private static boolean isOpen(String line) {
        int start = line.indexOf("{{");
        while (start >= 0) {
            int end = line.indexOf("}}", start + 2);
            if (end < 0) {
                return true;
            }
            start = line.indexOf("{{", end + 2);
        }
        return false;
    }

    private static TemplateContext context(String file, int line) {
        return new TemplateContext("{{", "}}", file, line, false);
    }

    Map<Code, Place> places() {
        return places;
    }

    TemplateProblem malformed(Part part, MustacheException exception) {
        TemplateContext context = exception.getContext();
        Part where = context == null ? part : parts.getOrDefault(context.file(), part);
        int line = context == null ? 1 : Math.max(1, context.line());
        String message = exception.getMessage() == null ? "the template is malformed" : exception.getMessage();
        String mend = "Each {{#name}} or {{^name}} needs its {{/name}}.";
        Matcher unclosed = Pattern.compile("Failed to close '(.*?)' tag").matcher(message);
        Matcher crossed =
                Pattern.compile("Mismatched start/end tags: (.*?) != (.*?) in").matcher(message);
        if (unclosed.find()) {
            message = "the section `" + unclosed.group(1) + "` is never closed";
        } else if (crossed.find()) {
            message = crossed.group(1).equals("null")
                    ? "`" + crossed.group(2) + "` is closed and was never opened"
                    : "`" + crossed.group(2) + "` is closed where `" + crossed.group(1) + "` is open";
        } else if (message.startsWith(OPEN_TAG)) {
            message = "a tag is not closed";
            mend = "Close it with `}}`.";
        } else {
            message = "the template is malformed: " + message.replaceAll(" in [^ ]*:\\d+.*| @\\[.*", "");
            mend = "Use {{name}}, {{#name}}, {{^name}} and {{/name}}.";
        }
        return new TemplateProblem(TemplateProblem.Kind.MALFORMED, line(where, line), "", message, List.of(), mend);
    }

    @Override
    public MustacheVisitor createMustacheVisitor() {
        // The engine wants one for each file, and for each section within.
        Tokens.Section section = tokens.section();
        return new DefaultMustacheVisitor(this) {
            @Override
            public void write(TemplateContext context, String text) {
                if (text.isBlank()) {
                    super.write(context, text);
                    return;
                }
                Place at = here(section.words(text), context);
                list.add(new WriteCode(context, df, text) {
                    @Override
                    public Writer execute(Writer writer, List<Object> scopes) {
                        from(writer, at, true);
                        return super.execute(writer, scopes);
                    }
                });
            }

            @Override
            public void value(TemplateContext context, String variable, boolean encoded) {
                if (!encoded) {
                    throw new MustacheException("printing without escaping is not allowed", context);
                }
                Place at = here(section.value(), context);
                list.add(new ValueCode(context, df, variable.equals(".") ? ITSELF : variable, encoded) {
                    @Override
                    public Writer execute(Writer writer, List<Object> scopes) {
                        if (variable.startsWith(PIECES) && get(scopes) instanceof Value.Pieces pieces) {
                            pieces.pieces().forEach(piece -> print(piece, writer, scopes));
                            from(writer, at, false);
                            return appendText(writer);
                        }
                        from(writer, at, false);
                        return super.execute(writer, scopes);
                    }
                });
            }

            private void print(Value.Pieces.Piece piece, Writer writer, List<Object> scopes) {
                if (piece instanceof Value.Pieces.Filled filled) {
                    filled.template().fill(writer, scopes);
                } else if (piece instanceof Value.Pieces.Written written) {
                    from(writer, written.at(), false);
                    write(writer, written.text());
                }
            }

            private void write(Writer writer, String text) {
                try {
                    writer.write(text);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            private Place here(Optional<Place> at, TemplateContext context) {
                Place known = at.orElseThrow(() -> new MustacheException("its tags do not go together", context));
                here = known;
                return known;
            }

            @Override
            public void iterable(TemplateContext context, String variable, Mustache mustache) {
                here(section.within(), context);
                super.iterable(context, named(context, variable), mustache);
            }

            @Override
            public void notIterable(TemplateContext context, String variable, Mustache mustache) {
                here(section.within(), context);
                super.notIterable(context, named(context, variable), mustache);
            }

            private String named(TemplateContext context, String variable) {
                if (variable.isEmpty() || variable.equals(".")) {
                    throw new MustacheException("a section needs a name", context);
                }
                return variable;
            }

            @Override
            public void pragma(TemplateContext context, String pragma, String args) {
                throw new MustacheException("pragmas are not allowed", context);
            }

            @Override
            public void partial(TemplateContext context, String variable, String indent) {
                if (partials.apply(variable).isEmpty()) {
                    throw new MustacheException("there is no partial `" + variable + "`", context);
                }
                super.partial(context, variable, indent);
            }

            @Override
            public void dynamicPartial(TemplateContext context, String variable, String indent) {
                throw new MustacheException("partials are called by their names only", context);
            }

            @Override
            public void extend(TemplateContext context, String variable, Mustache mustache) {
                throw new MustacheException("inheritance is not allowed", context);
            }

            @Override
            public void name(TemplateContext context, String variable, Mustache mustache) {
                throw new MustacheException("inheritance is not allowed", context);
            }

            @Override
            public void checkName(TemplateContext context, String variable, Mustache mustache) {
                throw new MustacheException("`?` is not allowed", context);
            }
        };
    }

    /** Below a partial that calls itself the engine writes into something of its own, and no place is asked for. */
    private static void from(Writer writer, Place at, boolean verbatim) {
        if (writer instanceof Output output) {
            output.from(at, verbatim);
        }
    }

    @Override
    public Reader getReader(String path) {
        String name = path.replaceFirst("\\.mustache$", "");
        return begun(
                partials.apply(name).orElseThrow(() -> new MustacheException("there is no partial `" + name + "`")),
                path);
    }

    @Override
    public String resolvePartialPath(String folder, String name, String extension) {
        return name + ".mustache";
    }

    @Override
    public void encode(String raw, Writer writer) {
        if (escape == Template.Escape.HTML) {
            HtmlEscaper.escape(raw, writer);
            return;
        }
        try {
            String line =
                    raw.lines().limit(2).count() > 1 ? LINE_BREAKS.matcher(raw).replaceAll(" ") : raw;
            StringBuilder safe = new StringBuilder(line.length() + 8);
            for (int i = 0; i < line.length(); i++) {
                char c = line.charAt(i);
                if (c < 127 && !Character.isLetterOrDigit(c) && c > ' ') {
                    safe.append('\\');
                }
                safe.append(c);
            }
            writer.write(safe.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Place line(Part part, int templateLine) {
        int line = Math.max(1, part.firstLine + templateLine - 1);
        String text = part.file.line(line);
        return Place.of(part.file, line, 1, text.codePointCount(0, text.length()));
    }

    private final class Strict implements ObjectHandler {
        @Override
        public Binding createBinding(String name, TemplateContext context, Code code) {
            boolean printed = code instanceof ValueCode;
            if (!printed && !(code instanceof IterableCode)) {
                return scopes -> null;
            }
            Place at = Objects.requireNonNull(here, "the code of a tag is made where the tag stands");
            if (name.equals(ITSELF)) {
                return scopes -> itself(scopes, at);
            }
            places.put(code, at);
            String[] words = name.split("\\.", -1);
            return scopes -> {
                Value value = free(named(words, scopes, at), name, scopes, at);
                return printed ? printed(name, value, scopes, at) : chosen(name, value, scopes, at);
            };
        }

        /**
         * The innermost scope that knows the first word of a dotted name decides; the others are
         * not asked further.
         */
        private Value named(String[] words, List<Object> scopes, Place at) {
            for (int i = scopes.size() - 1; i >= 0; i--) {
                Names names = names(scopes.get(i));
                if (names != null) {
                    Value value = names.find(words[0]);
                    if (!(value instanceof Value.Unknown)) {
                        return walk(value, words, scopes, at);
                    }
                }
            }
            Set<String> known = new LinkedHashSet<>();
            for (int i = scopes.size() - 1; i >= 0; i--) {
                Names names = names(scopes.get(i));
                if (names != null) {
                    known.addAll(names.known());
                }
            }
            complain(scopes, unknown(at, words[0], known, ""));
            return new Value.Flag(false);
        }

        /** From the value of the first word on. */
        private Value walk(Value first, String[] words, List<Object> scopes, Place at) {
            Value value = first;
            for (int i = 1; i < words.length; i++) {
                Names names = names(value);
                if (names == null) {
                    return value instanceof Value.Many || value instanceof Value.Text || value instanceof Value.Flag
                            ? told(scopes, at, before(words, i), value)
                            : value;
                }
                value = names.find(words[i]);
                if (value instanceof Value.Unknown) {
                    complain(scopes, unknown(at, words[i], names.known(), before(words, i)));
                    return new Value.Flag(false);
                }
            }
            return value;
        }

        /** What the text may not ask for is told wherever it stands, and is as if it were not there. */
        private Value free(Value value, String name, List<Object> scopes, Place at) {
            if (!(value instanceof Value.Withheld withheld)) {
                return value;
            }
            complain(
                    scopes,
                    new TemplateProblem(
                            TemplateProblem.Kind.WITHHELD, at, name, withheld.why(), List.of(), withheld.mend()));
            return new Value.Flag(false);
        }

        private static String before(String[] words, int count) {
            return String.join(".", List.of(words).subList(0, count));
        }

        private Value told(List<Object> scopes, Place at, String before, Value value) {
            boolean several = value instanceof Value.Many;
            complain(
                    scopes,
                    new TemplateProblem(
                            TemplateProblem.Kind.NOTHING_THERE,
                            at,
                            before,
                            several
                                    ? "`" + before + "` is held by several on this coach"
                                    : "`" + before + "` has no names within it",
                            List.of(),
                            several
                                    ? "Repeat the text with {{#" + before + "}} and {{/" + before + "}}."
                                    : "Ask for it alone."));
            return new Value.Flag(false);
        }

        private Object itself(List<Object> scopes, Place at) {
            if (scopes.get(scopes.size() - 1) instanceof Value.Text text) {
                return text.text();
            }
            complain(
                    scopes,
                    new TemplateProblem(
                            TemplateProblem.Kind.NOTHING_THERE,
                            at,
                            ".",
                            "`.` is not a text to print",
                            List.of(),
                            "Ask for a name, or put it into a section that repeats texts."));
            return "";
        }

        private Object chosen(String name, Value value, List<Object> scopes, Place at) {
            return value;
        }

        private Object printed(String name, Value value, List<Object> scopes, Place at) {
            if (value instanceof Value.Text text) {
                return text.text();
            }
            if (value instanceof Value.Many many && many.each().stream().allMatch(Value.Text.class::isInstance)) {
                return String.join(
                        ", ",
                        many.each().stream()
                                .map(each -> ((Value.Text) each).text())
                                .toList());
            }
            if (value instanceof Value.Pieces) {
                return value;
            }
            if (value instanceof Value.Absent absent) {
                complain(
                        scopes,
                        new TemplateProblem(
                                TemplateProblem.Kind.NOTHING_THERE, at, name, absent.why(), List.of(), absent.mend()));
            } else if (value instanceof Value.Inner || value instanceof Value.Many) {
                complain(
                        scopes,
                        new TemplateProblem(
                                TemplateProblem.Kind.NOTHING_THERE,
                                at,
                                name,
                                "`" + name + "` is not a text to print",
                                List.of(),
                                "Ask for one of its names, such as `" + name + "." + one(value) + "`."));
            }
            // A false flag was told already where it came from; a true one reads as nothing.
            return "";
        }

        /** A name within a value, its `name` if it has one. */
        private String one(Value value) {
            Names names = names(value);
            Collection<String> known = names == null ? List.of("name") : names.known();
            return known.contains("name") ? "name" : known.stream().findFirst().orElse("name");
        }

        private @Nullable Names names(Object scope) {
            if (scope instanceof Run run) {
                return run.names;
            }
            if (scope instanceof Value.Inner inner) {
                return inner.names();
            }
            return scope instanceof Value.Many many && many.each().size() == 1
                    ? names(many.each().get(0))
                    : null;
        }

        @Override
        public Writer iterate(Iteration iteration, Writer writer, Object object, List<Object> scopes) {
            if (object instanceof Value.Many many) {
                Writer out = writer;
                for (Value each : many.each()) {
                    out = iteration.next(out, each, scopes);
                }
                return out;
            }
            if (object instanceof Value.Flag flag) {
                // Nothing new to look names up in: the scopes stay as they are.
                return flag.yes() ? iteration.next(writer, null, scopes) : writer;
            }
            return object instanceof Value.Text || object instanceof Value.Inner
                    ? iteration.next(writer, object, scopes)
                    : writer;
        }

        @Override
        public Writer falsey(Iteration iteration, Writer writer, Object object, List<Object> scopes) {
            boolean something = object instanceof Value.Text
                    || object instanceof Value.Inner
                    || object instanceof Value.Flag flag && flag.yes()
                    || object instanceof Value.Many many && !many.each().isEmpty();
            return something ? writer : iteration.next(writer, null, scopes);
        }

        @Override
        public String stringify(Object object) {
            return object instanceof Value.Text text ? text.text() : object.toString();
        }

        @Override
        public Object coerce(Object object) {
            return object;
        }

        @Override
        public Wrapper find(String name, List<Object> scopes) {
            throw new UnsupportedOperationException("names are looked up by their bindings");
        }

        private void complain(List<Object> scopes, TemplateProblem complaint) {
            ((Run) scopes.get(0)).complaints.accept(complaint);
        }

        private TemplateProblem unknown(Place at, String word, Collection<String> known, String within) {
            return new TemplateProblem(
                    TemplateProblem.Kind.UNKNOWN_NAME,
                    at,
                    word,
                    "there is no name `" + word + "`" + (within.isEmpty() ? "" : " in `" + within + "`"),
                    NearNames.to(word, known),
                    "The reference for writers lists the names.");
        }
    }
}
