package bayfolio.catalog;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import com.ibm.icu.text.PluralRules;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One message of a catalog, read from the ICU syntax: words, plain arguments, {@code plural} and {@code select}. Figures come
 * into it as they are shown, since the side to which they are rounded is no matter of language; so it takes no formats of
 * numbers.
 *
 * @see "ICU MessageFormat, Unicode Technical Standard 35; read by ICU4J's own parser"
 */
public record Message(List<Piece> pieces) {
    static final String OTHER = "other";
    private static final String ARGUMENT = "argument";

    /** A part of a message. */
    public sealed interface Piece {}

    record Words(String text) implements Piece {}

    record Argument(String name) implements Piece {}

    /** The count itself, inside a plural. */
    record Count(String name) implements Piece {}

    /**
     * One of several messages, by an argument.
     *
     * @param cases by number as {@code =1}, by form as {@code one}, or by word
     */
    record Choice(String argument, boolean plural, Map<String, Message> cases) implements Piece {
        Message other() {
            return Objects.requireNonNull(cases.get(OTHER), "the parser wants one");
        }
    }

    public Message {
        pieces = List.copyOf(pieces);
    }

    /**
     * @throws IllegalArgumentException saying what is wrong with the pattern
     */
    public static Message of(String pattern) {
        MessagePattern parsed = new MessagePattern(pattern);
        return new Reader(parsed).message(0);
    }

    /**
     * The message in words.
     *
     * @param rules of the language
     * @throws IllegalArgumentException when a value is missing for one of its arguments
     */
    String say(Map<String, ?> values, PluralRules rules) {
        StringBuilder words = new StringBuilder();
        say(values, rules, words);
        return words.toString();
    }

    private void say(Map<String, ?> values, PluralRules rules, StringBuilder words) {
        for (Piece piece : pieces) {
            if (piece instanceof Words text) {
                words.append(text.text());
            } else if (piece instanceof Argument argument) {
                words.append(value(argument.name(), values));
            } else if (piece instanceof Count count) {
                words.append(value(count.name(), values));
            } else if (piece instanceof Choice choice) {
                chosen(choice, value(choice.argument(), values), rules).say(values, rules, words);
            }
        }
    }

    private static Object value(String name, Map<String, ?> values) {
        Object value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("nothing is given for `" + name + "`");
        }
        return value;
    }

    private static Message chosen(Choice choice, Object value, PluralRules rules) {
        if (choice.plural() && value instanceof Number number) {
            double count = number.doubleValue();
            Message exactly =
                    choice.cases().get("=" + (count == Math.rint(count) ? String.valueOf((long) count) : count));
            return exactly != null ? exactly : choice.cases().getOrDefault(rules.select(count), choice.other());
        }
        return choice.cases().getOrDefault(value.toString(), choice.other());
    }

    /** All names that a value is wanted for. */
    public Set<String> arguments() {
        Set<String> names = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            if (piece instanceof Argument argument) {
                names.add(argument.name());
            } else if (piece instanceof Choice choice) {
                names.add(choice.argument());
                choice.cases().values().forEach(each -> names.addAll(each.arguments()));
            }
        }
        return names;
    }

    /** Forms that a plural in it lacks, of those that a language has for whole numbers and fractions. */
    public Set<String> missing(Set<String> forms) {
        Set<String> missing = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            if (piece instanceof Choice choice) {
                if (choice.plural()) {
                    forms.stream()
                            .filter(form -> !choice.cases().containsKey(form))
                            .forEach(missing::add);
                }
                choice.cases().values().forEach(each -> missing.addAll(each.missing(forms)));
            }
        }
        return missing;
    }

    /** The same with other words; arguments and choices stay. */
    public Message with(UnaryOperator<String> change) {
        List<Piece> changed = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Words words) {
                changed.add(new Words(change.apply(words.text())));
            } else if (piece instanceof Choice choice) {
                Map<String, Message> cases = new LinkedHashMap<>();
                choice.cases().forEach((name, message) -> cases.put(name, message.with(change)));
                changed.add(new Choice(choice.argument(), choice.plural(), cases));
            } else {
                changed.add(piece);
            }
        }
        return new Message(changed);
    }

    /** As a pattern again. */
    public String pattern() {
        StringBuilder pattern = new StringBuilder();
        for (Piece piece : pieces) {
            if (piece instanceof Words words) {
                pattern.append(words.text().replace("'", "''").replaceAll("[{}#|]", "'$0'"));
            } else if (piece instanceof Argument argument) {
                pattern.append('{').append(argument.name()).append('}');
            } else if (piece instanceof Count) {
                pattern.append('#');
            } else if (piece instanceof Choice choice) {
                pattern.append('{').append(choice.argument()).append(choice.plural() ? ", plural," : ", select,");
                choice.cases()
                        .forEach((name, message) -> pattern.append(' ')
                                .append(name)
                                .append(" {")
                                .append(message.pattern())
                                .append('}'));
                pattern.append('}');
            }
        }
        return pattern.toString();
    }

    /**
     * The same for a script, ready to be written as JSON: a list of words and of maps, each {@code {"argument": name}}, with
     * {@code "plural"} or {@code "select"}, from case to message, where it chooses.
     */
    public List<Object> script() {
        List<Object> all = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Words words) {
                all.add(words.text());
            } else if (piece instanceof Argument argument) {
                all.add(Map.of(ARGUMENT, argument.name()));
            } else if (piece instanceof Count count) {
                all.add(Map.of(ARGUMENT, count.name()));
            } else if (piece instanceof Choice choice) {
                Map<String, Object> cases = new LinkedHashMap<>();
                choice.cases().forEach((name, message) -> cases.put(name, message.script()));
                Map<String, Object> made = new LinkedHashMap<>();
                made.put(ARGUMENT, choice.argument());
                made.put(choice.plural() ? "plural" : "select", cases);
                all.add(made);
            }
        }
        return all;
    }

    /** Goes through the parts that ICU finds. */
    private static final class Reader {
        private final MessagePattern parsed;

        Reader(MessagePattern parsed) {
            this.parsed = parsed;
        }

        /** @param start of the message, among the parts */
        Message message(int start) {
            return message(start, "");
        }

        /** @param count the argument that a {@code #} stands for; empty outside of plurals */
        private Message message(int start, String count) {
            List<Piece> pieces = new ArrayList<>();
            int end = parsed.getLimitPartIndex(start);
            int from = parsed.getPart(start).getLimit();
            for (int at = start + 1; at <= end; at++) {
                Part part = parsed.getPart(at);
                words(from, part.getIndex(), pieces);
                from = part.getLimit();
                switch (part.getType()) {
                    case ARG_START -> {
                        pieces.add(argument(at));
                        at = parsed.getLimitPartIndex(at);
                        from = parsed.getPart(at).getLimit();
                    }
                    case REPLACE_NUMBER -> pieces.add(new Count(count));
                    default -> {}
                }
            }
            return new Message(pieces);
        }

        private void words(int from, int to, List<Piece> pieces) {
            words(parsed.getPatternString().substring(from, to), pieces);
        }

        private static void words(String text, List<Piece> pieces) {
            if (text.isEmpty()) {
                return;
            }
            int last = pieces.size() - 1;
            if (last >= 0 && pieces.get(last) instanceof Words before) {
                pieces.set(last, new Words(before.text() + text));
            } else {
                pieces.add(new Words(text));
            }
        }

        private Piece argument(int start) {
            ArgType type = parsed.getPart(start).getArgType();
            String name = parsed.getSubstring(parsed.getPart(start + 1));
            return switch (type) {
                case NONE -> new Argument(name);
                case PLURAL -> new Choice(name, true, cases(start, name));
                case SELECT -> new Choice(name, false, cases(start, ""));
                case SIMPLE, CHOICE, SELECTORDINAL ->
                    throw new IllegalArgumentException(
                            "`" + name + "` is to be formatted, and only `plural` and `select` choose here");
            };
        }

        private Map<String, Message> cases(int start, String count) {
            Map<String, Message> cases = new LinkedHashMap<>();
            String selector = "";
            int end = parsed.getLimitPartIndex(start);
            for (int at = start + 2; at < end; at++) {
                Part part = parsed.getPart(at);
                if (part.getType() == Part.Type.ARG_SELECTOR) {
                    selector = parsed.getSubstring(part);
                } else if (part.getType() == Part.Type.MSG_START) {
                    cases.put(selector, message(at, count));
                    at = parsed.getLimitPartIndex(at);
                }
            }
            return cases;
        }
    }
}
