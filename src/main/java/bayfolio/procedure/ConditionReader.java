package bayfolio.procedure;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Feature;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a condition; {@code not} binds closest, then {@code and}, then {@code or}. */
public final class ConditionReader {
    private static final Pattern TOKEN = Pattern.compile("[()]|[^\\s()]+");

    /** More than any procedure needs; without a limit, a hostile file overflows the stack. */
    private static final int MOST_WORDS = 100;

    private static final List<String> JOINTS = List.of(")", "and", "or");

    private final Place at;
    private final int length;
    private final Consumer<Finding> findings;
    private final List<Token> tokens = new ArrayList<>();
    private int next;
    private boolean broken;

    private record Token(String text, int offset) {}

    private ConditionReader(Located<String> written, Consumer<Finding> findings) {
        String value = written.value();
        this.at = written.at();
        this.length = value.codePointCount(0, value.length());
        this.findings = findings;
        Matcher matcher = TOKEN.matcher(value);
        while (matcher.find()) {
            tokens.add(new Token(matcher.group(), value.codePointCount(0, matcher.start())));
        }
    }

    /** Of a condition that cannot be read nobody knows where it holds; it is told. */
    public static Condition read(Located<String> written, Consumer<Finding> findings) {
        if (written.value().strip().equals("every coach")) {
            return new Condition.Always();
        }
        ConditionReader reader = new ConditionReader(written, findings);
        if (reader.tokens.size() > MOST_WORDS) {
            reader.broken(new Token("", 0), "the condition has more than " + MOST_WORDS + " words and brackets");
            return new Condition.Unread();
        }
        Condition condition = reader.or();
        reader.peek().ifPresent(token -> reader.broken(token, "`" + token.text + "` is one word too many"));
        return reader.broken ? new Condition.Unread() : condition;
    }

    private Condition or() {
        Condition left = and();
        while (takes("or")) {
            left = new Condition.Or(left, and());
        }
        return left;
    }

    private Condition and() {
        Condition left = not();
        while (takes("and")) {
            left = new Condition.And(left, not());
        }
        return left;
    }

    private Condition not() {
        if (takes("not")) {
            return new Condition.Not(not());
        }
        if (takes("(")) {
            Condition inside = or();
            if (!takes(")")) {
                broken(new Token("", 0), "a bracket is not closed");
            }
            return inside;
        }
        return feature();
    }

    private Condition feature() {
        Optional<Token> token = peek();
        if (token.isEmpty()) {
            broken(new Token("", 0), "a feature is missing at the end");
            return new Condition.Unread();
        }
        if (JOINTS.contains(token.get().text)) {
            broken(token.get(), "a feature is missing before `" + token.get().text + "`");
            return new Condition.Unread();
        }
        next++;
        String word = token.get().text;
        Optional<Feature> feature = Feature.named(word);
        if (feature.isEmpty()) {
            broken = true;
            findings.accept(
                    Finding.error("unknown-feature", place(token.get()), "`" + word + "` is no feature of a coach")
                            .near(NearNames.to(word, Feature.words()))
                            .mend("Write `every coach`, or features joined by `and`, `or`, `not`."));
            return new Condition.Unread();
        }
        return new Condition.Has(feature.get());
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
            findings.accept(Finding.error("malformed-condition", place(token), message)
                    .mend("Write `every coach`, or features joined by `and`, `or`, `not`."));
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
