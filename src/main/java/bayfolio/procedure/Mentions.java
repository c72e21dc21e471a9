package bayfolio.procedure;

import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.model.Whose;
import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.template.Template;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where texts speak of things by an id or a role: {@code [](switch:pump)}, {@code {{tank.gray.capacity}}}, the beginning and
 * the end of a section; also in sections that no coach takes.
 */
public final class Mentions {
    private final Fleet fleet;
    private final Library library;
    private final Map<Whose, DeclaredNames> known = new ConcurrentHashMap<>();

    /**
     * One of them.
     *
     * @param kind of thing that is meant
     * @param name id or role; of which, the texts of a coach do not say
     * @param at the place of the name alone
     */
    public record Mention(Script script, String kind, String name, Place at) {}

    /** A section that is not closed yet. */
    private record Open(String name, List<Optional<String>> things) {}

    public Mentions(Fleet fleet, Library library) {
        this.fleet = fleet;
        this.library = library;
    }

    /** Those in the text of a script, in any order; none in one that is malformed. */
    public List<Mention> in(Script script) {
        List<Mention> mentions = new ArrayList<>();
        ScriptChecker.references(script).stream()
                .filter(reference -> Kinds.named(reference.kind()).isPresent())
                .map(reference -> link(script, reference))
                .forEach(mentions::add);
        names(script, mentions);
        return mentions;
    }

    private static Mention link(Script script, ScriptChecker.Reference reference) {
        Place at = reference.at();
        int length = reference.name().codePointCount(0, reference.name().length());
        return new Mention(
                script,
                reference.kind(),
                reference.name(),
                Place.of(at.file(), at.line(), at.endColumn() - length, length));
    }

    private void names(Script script, List<Mention> mentions) {
        ScriptChecker checker = new ScriptChecker(fleet, library, known, told -> {});
        Map<Position, Template.Asked> asked = new HashMap<>();
        script.template().asked().forEach(each -> asked.put(each.at().start(), each));
        if (asked.isEmpty()) {
            return;
        }
        Deque<Open> open = new ArrayDeque<>();
        int line = script.firstLine();
        for (String text : script.body().split("\n", -1)) {
            for (int start = text.indexOf("{{"); start >= 0; start = text.indexOf("{{", start + 2)) {
                int end = text.indexOf("}}", start + 2);
                if (end < 0) {
                    break;
                }
                tag(script, checker, asked, open, new Tag(line, text, start, end), mentions);
                start = end;
            }
            line++;
        }
    }

    /**
     * @param start of its braces
     * @param end where its closing braces begin
     */
    private record Tag(int line, String text, int start, int end) {
        char sign() {
            String inside = text.substring(start + 2, end).stripLeading();
            return inside.isEmpty() ? ' ' : inside.charAt(0);
        }

        /** Where its name begins. */
        int name() {
            int at = start + 2;
            while (at < end && "{#^/&$<? \t".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            return at;
        }

        Position at() {
            return new Position(line, 1 + text.codePointCount(0, start));
        }
    }

    private static void tag(
            Script script,
            ScriptChecker checker,
            Map<Position, Template.Asked> asked,
            Deque<Open> open,
            Tag tag,
            List<Mention> mentions) {
        String name = tag.text.substring(tag.name(), tag.end).strip();
        if (tag.sign() == '/') {
            if (!open.isEmpty() && open.peek().name.equals(name)) {
                words(script, tag, open.pop(), mentions);
            }
            return;
        }
        Template.Asked known = asked.get(tag.at());
        if (known == null || !known.name().equals(name)) {
            return;
        }
        Open named = new Open(name, checker.things(known, script));
        words(script, tag, named, mentions);
        if (known.section()) {
            open.push(named);
        }
    }

    private static void words(Script script, Tag tag, Open named, List<Mention> mentions) {
        int at = tag.name();
        String[] words = named.name.split("\\.", -1);
        for (int i = 0; i < words.length; i++) {
            String word = words[i];
            int start = at;
            named.things
                    .get(i)
                    .ifPresent(kind -> mentions.add(new Mention(
                            script,
                            kind,
                            word,
                            Place.of(
                                    script.file(),
                                    tag.line,
                                    1 + tag.text.codePointCount(0, start),
                                    word.codePointCount(0, word.length())))));
            at += word.length() + 1;
        }
    }
}
