package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.source.Place;
import bayfolio.template.Output;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Fills a script in for one coach and reads the steps out of it. */
public final class ProcedureFiller {
    private static final Parser PARSER = Parser.builder()
            .extensions(List.of(TablesExtension.create()))
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .build();

    private static final Pattern SIGNAL = Pattern.compile("^([A-Z]{4,})\\b[\\s:.\\u2014-]*");

    private final Script script;
    private final Output output;
    private final Prose prose;
    private final Consumer<Finding> findings;

    private final List<Block> opening = new ArrayList<>();
    private final List<Procedure.Part> parts = new ArrayList<>();
    private final Map<String, List<Block>> endings = new LinkedHashMap<>();
    private final List<Hazard> waiting = new ArrayList<>();
    private final Set<String> anchors = new HashSet<>();
    private Optional<String> partTitle = Optional.empty();
    private Optional<String> partAnchor = Optional.empty();
    private Optional<Place> partAt = Optional.empty();
    /** What is safe after the last part, until it is known whether steps follow. */
    private List<Block> rest = List.of();

    private List<Step> steps = new ArrayList<>();
    private String ending = "";

    private ProcedureFiller(Script script, Output output, References references, Consumer<Finding> findings) {
        this.script = script;
        this.output = output;
        this.findings = findings;
        this.prose = new Prose(output, references, findings);
    }

    /** What cannot be filled in or read is told; the rest of the procedure is still there. */
    public static Procedure fill(Script script, Coach coach, References references, Consumer<Finding> findings) {
        try {
            return filled(script, coach, references, findings);
        } catch (UnreadException nobodyKnows) {
            return Procedure.unread(script.form(), script.head());
        }
    }

    private static Procedure filled(Script script, Coach coach, References references, Consumer<Finding> findings) {
        Template template = script.template();
        RootNames names =
                new RootNames(references.wording(), references.staff(), references.own(), references.scripts());
        Output output = template.fill(names, complaint -> findings.accept(finding(complaint)));
        if (template.malformed()) {
            // What is missing in it is nobody's mistake but that one.
            return Procedure.unread(script.form(), script.head());
        }
        ProcedureFiller filling = new ProcedureFiller(script, output, references, findings);
        if (!output.isEmpty()) {
            // Coaches of one model fill most scripts with the same words; the tree is for reading only.
            filling.read(script.once(output.text(), (it, text) -> PARSER.parse(text)));
        }
        return filling.done();
    }

    static Finding finding(TemplateProblem complaint) {
        String code = switch (complaint.kind()) {
            case MALFORMED -> "malformed-template";
            case UNKNOWN_NAME -> "unknown-name";
            case NOTHING_THERE -> "nothing-to-fill-in";
            case WITHHELD -> "staff-fact-for-renter";
        };
        return Finding.error(code, complaint.at(), complaint.message())
                .near(complaint.near())
                .mend(complaint.mend());
    }

    private void read(Node document) {
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading) {
                heading(heading);
            } else if (!ending.isEmpty()) {
                endings.computeIfAbsent(ending, it -> new ArrayList<>()).addAll(prose.blocks(node));
            } else if (node instanceof OrderedList list) {
                for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
                    steps.add(step((ListItem) item));
                }
            } else if (node instanceof BlockQuote quote) {
                hazard(quote).ifPresent(waiting::add);
            } else if (steps.isEmpty() && parts.isEmpty()) {
                opening.addAll(prose.blocks(node));
            } else if (node instanceof Paragraph paragraph && rests(paragraph)) {
                rest(paragraph);
            } else {
                tell("text-between-steps", node, "this text stands between steps and belongs to none")
                        .map(finding -> finding.mend("Make it a step, part of a step, or move it to the opening."))
                        .ifPresent(findings);
            }
        }
    }

    private static boolean rests(Paragraph paragraph) {
        return paragraph.getFirstChild() instanceof StrongEmphasis strong
                && strong.getFirstChild() instanceof Text text
                && text.getLiteral().equals(SourceBlock.SAFE_TO_STOP);
    }

    /**
     * The part before it ends, and with it the page, if steps follow. Of several between which all steps fall away on this
     * coach the first is true: what the others say came of those steps.
     */
    private void rest(Paragraph paragraph) {
        closePart();
        partTitle = Optional.empty();
        partAnchor = Optional.empty();
        partAt = Optional.empty();
        if (!parts.isEmpty() && rest.isEmpty()) {
            rest = withoutMark(prose.blocks(paragraph), SourceBlock.SAFE_TO_STOP);
        }
    }

    private void heading(Heading heading) {
        String written = Inline.plain(prose.inlines(heading));
        Matcher anchored = SourceBlock.ANCHOR.matcher(written);
        Optional<String> anchor = anchored.find() ? Optional.of(anchored.group(1)) : Optional.empty();
        String title = anchor.isPresent() ? written.substring(0, anchored.start()) : written;
        if (anchor.filter(it -> !anchors.add(it)).isPresent()) {
            tell("anchor-twice", heading, "the anchor `" + anchor.get() + "` is given twice")
                    .map(finding -> finding.mend("Give each part of a procedure an anchor of its own."))
                    .ifPresent(findings);
        }
        if (heading.getLevel() == 2
                && (script.form().endings().contains(title) || !script.form().hasSteps())) {
            ending = title;
            endings.put(title, new ArrayList<>());
        } else if (ending.isEmpty() && heading.getLevel() == 3) {
            // Where all steps of a part fall away, the page that it begins keeps its name.
            Optional<String> before = steps.isEmpty() ? partAnchor : Optional.empty();
            closePart();
            partTitle = Optional.of(title);
            partAnchor = anchor.or(() -> before);
            partAt = place(heading);
        } else {
            tell("unknown-section", heading, "a " + script.form().called() + " has no section `" + title + "`")
                    .map(finding -> finding.mend(
                            script.form().hasSteps()
                                    ? "Sections are "
                                            + script.form().endings().stream()
                                                    .map(it -> "`## " + it + "`")
                                                    .collect(Collectors.joining(" and "))
                                            + "; `###` groups steps before them."
                                    : "Write each question as a heading `##`."))
                    .ifPresent(findings);
        }
    }

    private Step step(ListItem item) {
        List<Hazard> guards = new ArrayList<>(waiting);
        waiting.clear();
        List<Block> text = new ArrayList<>();
        for (Node node = item.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof BlockQuote quote) {
                Optional<Hazard> hazard = hazard(quote);
                if (!text.isEmpty()) {
                    tell("hazard-after-step", quote, "this hazard stands after the step that it guards")
                            .map(finding -> finding.mend("Move it in front of the step."))
                            .ifPresent(findings);
                }
                hazard.ifPresent(guards::add);
            } else {
                text.addAll(prose.blocks(node));
            }
        }
        Place at = place(item).orElse(Place.whole(script.file()));
        Optional<String> name = named(text);
        return new Step(
                name.orElseGet(() -> script.once("", (it, nothing) -> StepNames.ofLines(it))[at.line() - 1]),
                name.isPresent(),
                guards,
                text,
                at);
    }

    /** The name at the end of its first paragraph, which is no part of the text. */
    private static Optional<String> named(List<Block> text) {
        if (text.isEmpty() || !(text.get(0) instanceof Block.Paragraph paragraph)) {
            return Optional.empty();
        }
        List<Inline> words = new ArrayList<>(paragraph.text());
        int last = words.size() - 1;
        if (last < 0 || !(words.get(last) instanceof Inline.Text end)) {
            return Optional.empty();
        }
        Matcher anchor = SourceBlock.ANCHOR.matcher(end.text());
        if (!anchor.find()) {
            return Optional.empty();
        }
        words.set(last, new Inline.Text(end.text().substring(0, anchor.start())));
        text.set(0, new Block.Paragraph(words));
        return Optional.of(anchor.group(1));
    }

    private Optional<Hazard> hazard(BlockQuote quote) {
        List<Block> blocks = new ArrayList<>();
        for (Node node = quote.getFirstChild(); node != null; node = node.getNext()) {
            blocks.addAll(prose.blocks(node));
        }
        Place at = place(quote).orElse(Place.whole(script.file()));
        // The word stands in one piece at the very start: `**WARN**ING` is none.
        String plain = quote.getFirstChild() instanceof Paragraph
                ? ((Block.Paragraph) blocks.get(0))
                        .text().stream().findFirst().map(Inline::plain).orElse("")
                : "";
        Matcher word = SIGNAL.matcher(plain);
        Optional<Signal> signal = word.find() ? Signal.named(word.group(1)) : Optional.empty();
        if (signal.isEmpty()) {
            findings.accept(Finding.error("unknown-signal-word", at, "a hazard must begin with a signal word")
                    .mend("Begin it with DANGER, WARNING, CAUTION or NOTICE."));
            return Optional.empty();
        }
        return Optional.of(
                new Hazard(signal.get(), withoutMark(blocks, signal.get().name()), at));
    }

    /** Without the words that it begins with, and what stands between those and the rest. */
    private static List<Block> withoutMark(List<Block> blocks, String mark) {
        Block.Paragraph first = (Block.Paragraph) blocks.get(0);
        List<Inline> words = new ArrayList<>(first.text());
        Inline start = words.remove(0);
        String after = start.plain().substring(mark.length());
        words.add(0, new Inline.Text(after));
        while (!words.isEmpty() && words.get(0) instanceof Inline.Text text) {
            String trimmed = text.text().replaceFirst("^[\\s:.\\u2014-]+", "");
            words.remove(0);
            if (!trimmed.isEmpty()) {
                words.add(0, new Inline.Text(trimmed));
                break;
            }
        }
        List<Block> all = new ArrayList<>(blocks);
        all.set(0, new Block.Paragraph(words));
        return all;
    }

    private Procedure done() {
        closePart();
        Place top = script.head().facts().at();
        if (!waiting.isEmpty()) {
            findings.accept(Finding.error(
                            "hazard-after-step", waiting.get(0).at(), "this hazard guards no step: none follows it")
                    .mend("Put it before the step that it guards."));
        }
        String called = script.form().called() + " `" + script.id() + "`";
        if (parts.isEmpty() && script.form().hasSteps()) {
            findings.accept(Finding.error("no-steps", top, called + " has no steps for this coach")
                    .mend("Write an ordered list, one action an item."));
        }
        for (String name : script.form().endings()) {
            if (endings.getOrDefault(name, List.of()).isEmpty()) {
                findings.accept(Finding.error("missing-section", top, called + " has no `" + name + "`")
                        .mend("Add `## " + name + "` at the end."));
            }
        }
        return new Procedure(
                script.form(),
                script.head(),
                opening,
                StepNames.told(parts, findings),
                endings.entrySet().stream()
                        .map(it -> new Procedure.Ending(it.getKey(), it.getValue()))
                        .toList());
    }

    private void closePart() {
        if (!steps.isEmpty()) {
            if (!rest.isEmpty()) {
                closePage();
            }
            parts.add(new Procedure.Part(partTitle, partAnchor, "", steps, List.of()));
        }
        steps = new ArrayList<>();
    }

    /** The part before the one that is being closed was the last of its page. */
    private void closePage() {
        Procedure.Part last = parts.remove(parts.size() - 1);
        parts.add(new Procedure.Part(last.title(), last.anchor(), last.name(), last.steps(), rest));
        rest = List.of();
        if (partAnchor.isEmpty()) {
            Place at = partAt.orElseGet(() -> steps.get(0).at());
            findings.accept(Finding.error("page-without-anchor", at, "a page begins here, and nothing names it")
                    .mend(
                            partAt.isPresent()
                                    ? "Write a lasting name behind the heading, such as `{#power}`."
                                    : "Begin it with a heading and its lasting name, such as `### Power {#power}`."));
        }
    }

    private Optional<Finding> tell(String code, Node node, String message) {
        return place(node).map(at -> Finding.error(code, at, message));
    }

    private Optional<Place> place(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        return spans.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        output.place(spans.get(0).getInputIndex(), spans.get(0).getLength()));
    }
}
