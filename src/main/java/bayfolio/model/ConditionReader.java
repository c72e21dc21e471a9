package bayfolio.model;

import bayfolio.finding.Finding;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a condition; {@code not} binds closest, then {@code and}, then {@code or}.
 *
 * @param <L> what a single word of it stands for
 */
public final class ConditionReader<L> {
    private static final Pattern TOKEN = Pattern.compile("[()]|(?:[^\\s()\\[]|\\[[^\\]]*])+|\\[[^\\s()]*");

    /** More than any procedure needs; without a limit, a hostile file overflows the stack. */
    private static final int MOST_WORDS = 100;

    private static final List<String> JOINTS = List.of(")", "and", "or");

    private final Place at;
    private final int length;
    private final ConditionWords<L> words;
    private final Consumer<Finding> findings;
    private final List<Token> tokens = new ArrayList<>();
    private int next;
    private boolean broken;

    private record Token(String text, int offset) {}

    private ConditionReader(Located<String> written, ConditionWords<L> words, Consumer<Finding> findings) {
        String value = written.value();
        this.at = written.at();
        this.length = value.codePointCount(0, value.length());
        this.words = words;
        this.findings = findings;
        Matcher matcher = TOKEN.matcher(value);
        while (matcher.find()) {
            tokens.add(new Token(matcher.group(), value.codePointCount(0, matcher.start())));
        }
    }

    /** Of a condition that cannot be read nobody knows where it holds; it is told. */
    public static <L> Condition<L> read(Located<String> written, ConditionWords<L> words, Consumer<Finding> findings) {
        if (written.value().strip().equals("every coach")) {
            return new Condition.Always<>();
        }
        ConditionReader<L> reader = new ConditionReader<>(written, words, findings);
        if (reader.tokens.size() > MOST_WORDS) {
            reader.broken(new Token("", 0), "the condition has more than " + MOST_WORDS + " words and brackets");
            return new Condition.Unread<>();
        }
        Condition<L> condition = reader.or();
        reader.peek().ifPresent(token -> reader.broken(token, "`" + token.text + "` is one word too many"));
        return reader.broken ? new Condition.Unread<>() : condition;
    }

    private Condition<L> or() {
        Condition<L> left = and();
        while (takes("or")) {
            left = new Condition.Or<>(left, and());
        }
        return left;
    }

    private Condition<L> and() {
        Condition<L> left = not();
        while (takes("and")) {
            left = new Condition.And<>(left, not());
        }
        return left;
    }

    private Condition<L> not() {
        if (takes("not")) {
            return new Condition.Not<>(not());
        }
        if (takes("(")) {
            Condition<L> inside = or();
            if (!takes(")")) {
                broken(new Token("", 0), "a bracket is not closed");
            }
            return inside;
        }
        return word();
    }

    private Condition<L> word() {
        Optional<Token> token = peek();
        if (token.isEmpty()) {
            broken(new Token("", 0), words.called() + " is missing at the end");
            return new Condition.Unread<>();
        }
        if (JOINTS.contains(token.get().text)) {
            broken(token.get(), words.called() + " is missing before `" + token.get().text + "`");
            return new Condition.Unread<>();
        }
        next++;
        Optional<L> what = words.read(new Located<>(token.get().text, place(token.get())), findings);
        if (what.isEmpty()) {
            broken = true;
            return new Condition.Unread<>();
        }
        return new Condition.Has<>(what.get());
    }

    private Optional<Token> peek() {
        return next < tokens.size() ? Optional.of(tokens.get(next)) : Optional.empty();
    }

    private boolean takes(String word) {
        boolean here = peek().filter(token -> token.text.equals(word)).isPresent();
        if (here) {
            next++;
        }
        return here;
    }

    private void broken(Token token, String message) {
        if (!broken) {
            findings.accept(
                    Finding.error("malformed-condition", place(token), message).mend(words.mend()));
        }
        broken = true;
    }

    private Place place(Token token) {
        if (token.text.isEmpty() || at.line() != at.endLine()) {
            return at;
        }
        boolean quoted = at.endColumn() - at.column() == length + 2;
        return Place.of(
                at.file(),
                at.line(),
                at.column() + (quoted ? 1 : 0) + token.offset,
                token.text.codePointCount(0, token.text.length()));
    }
}
