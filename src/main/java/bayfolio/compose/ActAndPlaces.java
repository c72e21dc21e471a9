package bayfolio.compose;

import bayfolio.document.Content.Steps.Answer;
import bayfolio.document.Content.Steps.Labeled;
import bayfolio.document.Content.Steps.Where;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.procedure.Step;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.StepLabel;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Takes a step apart: what is done, and what it is done to. {@code Turn off the pump: [](switch:water-pump-switch "off").}
 * says to turn off the pump, at each of its switches, each with its place and how it is worked.
 */
final class ActAndPlaces {
    private static final Pattern ENDS = Pattern.compile("[.!?:…][)\"”’]?$");

    private static final Pattern HALTS = Pattern.compile("[.:] $|^ $");

    private final Stamp step;
    private final UnaryOperator<String> word;
    private final Map<Target, Where> where = new LinkedHashMap<>();
    private final List<Block> act = new ArrayList<>();
    private final List<Labeled> known = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private final List<Block> more = new ArrayList<>();
    private final Map<Target, Integer> led = new HashMap<>();

    /** Which state an answer asks of a thing. */
    private final Map<Stamp, String> asked = new HashMap<>();

    private boolean any;

    /** @param word of the handbook's language, for a key */
    ActAndPlaces(Stamp step, List<Block> blocks, UnaryOperator<String> word) {
        this.step = step;
        this.word = word;
        for (Block block : blocks) {
            if (block instanceof Block.Paragraph paragraph) {
                List<Inline> rest = ended(act(unlabeled(paragraph.text())));
                if (!rest.isEmpty()) {
                    (more.isEmpty() ? act : more).add(new Block.Paragraph(rest));
                }
            } else if (block instanceof Block.Handling handling) {
                handling.switches().forEach(this::handled);
            } else if (block instanceof Block.Bullets bullets) {
                List<List<Inline>> points = new ArrayList<>();
                bullets.items().forEach(item -> answer(item).ifPresentOrElse(answers::add, () -> points.add(item)));
                if (!points.isEmpty()) {
                    more.add(new Block.Bullets(points));
                }
            } else {
                more.add(block);
            }
        }
    }

    List<Block> act() {
        return act;
    }

    List<Labeled> known() {
        return known;
    }

    List<Answer> answers() {
        return answers;
    }

    /** A point that begins with bold words and a colon says what one sees, and what to do then. */
    private Optional<Answer> answer(List<Inline> words) {
        if (!Step.isAnswer(words)) {
            return Optional.empty();
        }
        List<Inline> then = new ArrayList<>();
        List<Where> ways = new ArrayList<>();
        for (Inline inline : trimmed(words.subList(1, words.size()))) {
            boolean halts = then.isEmpty() || halts(then.get(then.size() - 1));
            if (inline instanceof Inline.Link link && goesOn(link.target()) && halts) {
                ways.add(new Where(way(link.target()), link, "", List.of()));
            } else if (inline instanceof Inline.Things things) {
                for (Inline.Things.One one : things.each()) {
                    Stamp way = way(one.link().target());
                    asked.put(way, things.state());
                    ways.add(new Where(way, one.link(), one.place(), List.of()));
                }
                if (!halts) {
                    then.addAll(things.names());
                }
            } else if (ways.isEmpty()
                    || !then.isEmpty() && !halts
                    || !inline.plain().replace(".", "").isBlank()) {
                then.add(inline);
            }
        }
        return Optional.of(new Answer(((Inline.Strong) words.get(0)).inside(), ended(halted(then)), ways));
    }

    /** Two answers that lead to one place are told apart by their turn. */
    private Stamp way(Target target) {
        int before = led.merge(target, 1, Integer::sum);
        return step.child("answers").child(target.written().replace(':', '-') + (before == 1 ? "" : "-" + before));
    }

    /** Whether what comes next is not amid a sentence. */
    private static boolean halts(Inline inline) {
        return inline instanceof Inline.Text text && HALTS.matcher(text.text()).find();
    }

    /** A sentence that a colon would lead on from ends there. */
    private static List<Inline> halted(List<Inline> words) {
        int last = words.size() - 1;
        if (last >= 0 && words.get(last) instanceof Inline.Text text) {
            words.set(last, new Inline.Text(text.text().stripTrailing().replaceFirst(":$", ".")));
        }
        return words;
    }

    List<Block> more() {
        return more;
    }

    List<Where> where() {
        return List.copyOf(where.values());
    }

    boolean any() {
        return any;
    }

    /** What stands before the first label; what comes under each is known. */
    private List<Inline> unlabeled(List<Inline> words) {
        int first = 0;
        while (first < words.size() && words.get(first).label().isEmpty()) {
            first++;
        }
        for (int at = first; at < words.size(); ) {
            int next = at + 1;
            while (next < words.size() && words.get(next).label().isEmpty()) {
                next++;
            }
            List<Inline> under = trimmed(words.subList(at + 1, next));
            if (!under.isEmpty()) {
                String label = words.get(at).label().orElseThrow();
                StepLabel sort = StepLabel.of(label);
                known.add(new Labeled(
                        sort, sort == StepLabel.FACT ? label : word.apply("step." + Type.word(sort)), under));
            }
            at = next;
        }
        return trimmed(words.subList(0, first));
    }

    /** Without the blanks at both ends. */
    private static List<Inline> trimmed(List<Inline> words) {
        List<Inline> trimmed = new ArrayList<>(words);
        if (!trimmed.isEmpty() && trimmed.get(0) instanceof Inline.Text text) {
            trimmed.set(0, new Inline.Text(text.text().stripLeading()));
        }
        int last = trimmed.size() - 1;
        if (last >= 0 && trimmed.get(last) instanceof Inline.Text text) {
            trimmed.set(last, new Inline.Text(text.text().stripTrailing()));
        }
        trimmed.removeIf(inline -> inline.plain().isEmpty());
        return trimmed;
    }

    private List<Inline> act(List<Inline> words) {
        List<Inline> act = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            Inline inline = words.get(i);
            boolean last = i + 1 == words.size();
            boolean ends = last || ends(words.get(i + 1));
            Optional<String> before = i == 0 || !ends ? Optional.empty() : beforeColon(words.get(i - 1));
            if (inline instanceof Inline.Things things) {
                any |= things.any();
                things.each().forEach(one -> place(one.link(), one.place()));
            } else if (before.isPresent() && inline instanceof Inline.Link link && goesOn(link.target())) {
                place(link, "");
            } else {
                act.add(inline);
                continue;
            }
            if (before.isPresent()) {
                act.set(act.size() - 1, new Inline.Text(before.get() + (last ? "." : "")));
            } else if (inline instanceof Inline.Things things) {
                act.addAll(things.names());
            }
        }
        return act;
    }

    private static boolean ends(Inline next) {
        return next instanceof Inline.Text text
                && (text.text().startsWith(".") || text.text().startsWith("?"));
    }

    /** Whether it is something to be read or done next. */
    private static boolean goesOn(Target target) {
        return target instanceof Target.OfProcedure
                || target instanceof Target.OfPage
                || target instanceof Target.OfStage;
    }

    /** What is done is said before the colon; the full stop that comes next ends it, or one is put there. */
    private static Optional<String> beforeColon(Inline inline) {
        return inline instanceof Inline.Text text && text.text().endsWith(": ")
                ? Optional.of(text.text().substring(0, text.text().length() - 2))
                : Optional.empty();
    }

    /** A sentence that ends with a figure or a name of the coach has its full stop, whoever wrote that. */
    private static List<Inline> ended(List<Inline> words) {
        String plain = Inline.plain(words).strip();
        if (plain.isEmpty() || ENDS.matcher(plain).find()) {
            return words;
        }
        List<Inline> ended = new ArrayList<>(words);
        ended.add(new Inline.Text("."));
        return ended;
    }

    private void place(Inline.Link link, String place) {
        where.putIfAbsent(link.target(), new Where(stamp(link.target()), link, place, List.of()));
    }

    private void handled(Block.Handled handled) {
        Where known = where.get(handled.target());
        if (known == null && answered(handled)) {
            return;
        }
        if (known != null) {
            where.put(handled.target(), new Where(known.stamp(), known.thing(), known.place(), handled.pieces()));
        } else if (!handled.pieces().isEmpty()) {
            // Named in the writer's words.
            Inline.Link link = links().stream()
                    .filter(it -> it.target().equals(handled.target()))
                    .findFirst()
                    .orElseThrow();
            where.put(
                    handled.target(),
                    new Where(
                            stamp(handled.target()),
                            new Inline.Link(handled.target(), List.of(new Inline.Text(handled.name())), link.at()),
                            "",
                            handled.pieces()));
        }
    }

    /** Whether an answer asks for it; the first that does tells how. */
    private boolean answered(Block.Handled handled) {
        for (int i = 0; i < answers.size(); i++) {
            Answer answer = answers.get(i);
            List<Where> ways = new ArrayList<>(answer.where());
            for (int j = 0; j < ways.size(); j++) {
                Where way = ways.get(j);
                if (way.thing().target().equals(handled.target())
                        && handled.state().equals(asked.get(way.stamp()))) {
                    ways.set(j, new Where(way.stamp(), way.thing(), way.place(), handled.pieces()));
                    answers.set(i, new Answer(answer.look(), answer.then(), ways));
                    return true;
                }
            }
        }
        return false;
    }

    private List<Inline.Link> links() {
        List<Inline.Link> links = new ArrayList<>();
        act.forEach(block -> block.links(links::add));
        more.forEach(block -> block.links(links::add));
        answers.forEach(answer -> answer.links(links::add));
        return links;
    }

    private Stamp stamp(Target target) {
        return step.child(target.written().replace(':', '-'));
    }
}
