package bayfolio.procedure;

import bayfolio.fact.Facts;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.model.Condition;
import bayfolio.model.Features;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.source.Digest;
import bayfolio.source.Located;
import bayfolio.source.Once;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** A procedure or trouble guide as written, before it is filled in for a coach. */
public final class Script {
    private static final Pattern WARNS = Pattern.compile("\\W*(DANGER|WARNING)\\b");

    private final Form form;
    private final Head head;
    private final Condition<String> when;
    private final SourceFile file;
    private final String body;
    private final int firstLine;
    private final Template template;
    private final List<SourceBlock> passages;
    private final Whose whose;
    private final Once<Script> once = new Once<>();

    private Script(
            Form form,
            Head head,
            Condition<String> when,
            SourceFile file,
            String body,
            int firstLine,
            Template template,
            Whose whose) {
        this.form = form;
        this.head = head;
        this.when = when;
        this.file = file;
        this.body = body;
        this.firstLine = firstLine;
        this.template = template;
        this.passages = List.copyOf(SourceBlock.of(file, body, firstLine));
        this.whose = whose;
    }

    /** A malformed body is told here, once, and not again for each coach. */
    public static Script of(
            Form form,
            Head head,
            Condition<String> when,
            SourceFile file,
            String body,
            int firstLine,
            Whose whose,
            Consumer<Finding> findings) {
        Template template = Template.compile(
                file,
                body,
                firstLine,
                Template.Escape.MARKDOWN,
                complaint -> findings.accept(ProcedureFiller.finding(complaint)));
        return new Script(form, head, when, file, body, firstLine, template, whose);
    }

    public Form form() {
        return form;
    }

    public Head head() {
        return head;
    }

    public SourceFile file() {
        return file;
    }

    /** The Markdown below the head, with line breaks as {@code \n}. */
    public String body() {
        return body;
    }

    /** The line of the file that the body begins on. */
    public int firstLine() {
        return firstLine;
    }

    /** The body, compiled once for all coaches. */
    public Template template() {
        return template;
    }

    /** Of the body, in their order, those in sections that a coach leaves out too. */
    public List<SourceBlock> passages() {
        return passages;
    }

    /** For which coaches it was written. */
    public Whose whose() {
        return whose;
    }

    /**
     * What is found in a script does not change while the script stays the same, and shared ones mostly do.
     *
     * @param given all that the result depends on besides the script
     */
    public <G, T> T once(G given, BiFunction<? super Script, ? super G, T> find) {
        return once.find(this, given, find);
    }

    public String id() {
        return head.id();
    }

    /** By which a translation knows what it was made of: the digest of title and body. */
    public String digest() {
        return Digest.of(head.title() + "\n" + body.stripTrailing());
    }

    /** The lasting names of its parts and steps, in their order. */
    public List<String> names() {
        return SourceBlock.anchors(body);
    }

    /** Whether it warns of what can hurt somebody. */
    boolean warns() {
        return passages.stream()
                .anyMatch(passage -> WARNS.matcher(passage.own()).lookingAt());
    }

    /** The same in the words of a translation. */
    public Script in(Translation translation, Consumer<Finding> findings) {
        Facts facts = translation.head().facts();
        Located<String> title = facts.located(TranslationHead.TITLE).orElseThrow();
        Facts said = head.facts()
                .with(Head.TITLE, title)
                .with(Head.LANGUAGE, new Located<>(translation.language(), title.at()));
        return of(
                form,
                new Head(facts.located(TranslationHead.LINE)
                        .map(line -> said.with(Head.LINE, line))
                        .orElseGet(() -> said.without(Head.LINE))),
                when,
                translation.file(),
                translation.body(),
                translation.firstLine(),
                whose,
                findings);
    }

    /** The same without what its head says to staff. */
    public Script forRenters() {
        return new Script(form, new Head(head.facts().forRenters()), when, file, body, firstLine, template, whose);
    }

    /** Whether it says that staff alone read it. */
    public boolean forStaff() {
        return head.facts()
                .ifRead(Head.WHO)
                .filter(who -> !who.value().forRenters())
                .isPresent();
    }

    /** Whether it may name what is for staff: of equipment that hangs on the page that its steps stand on. */
    boolean mayNameStaff() {
        return form == Form.EQUIPMENT || forStaff();
    }

    public boolean appliesTo(Unit coach) {
        return appliesTo(coach, coach.features());
    }

    /** Whether it is for a coach that has these features, if that is known. */
    boolean appliesTo(Unit coach, Features features) {
        if (!whose.has(coach)) {
            return false;
        }
        if (!head.facts().whole()) {
            throw new UnreadException("the head of " + file + " could not be read");
        }
        Features those = forStaff() || form == Form.EQUIPMENT ? features : coach.featuresForRenters();
        return when.holds(those::contains);
    }
}
