package bayfolio.catalog;

import bayfolio.measure.Amount;
import bayfolio.measure.Symbol;
import bayfolio.source.Located;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What pages say that is not about one coach: titles, labels, sentences with room for figures, in one language. It comes
 * with a theme. Each is a {@link Message} under a key; each quantity gets the word of the language for its unit.
 */
public final class Catalog {
    private final String language;
    private final Map<String, Located<String>> patterns;
    private final Map<String, Message> messages = new ConcurrentHashMap<>();

    /** Made when a first count is said: to know all plurals takes a moment. */
    private volatile Optional<PluralRules> rules = Optional.empty();

    /**
     * @param language what pages are written in
     * @param patterns by their keys, each where it is written
     */
    public Catalog(String language, Map<String, Located<String>> patterns) {
        this.language = language;
        this.patterns = Map.copyOf(patterns);
    }

    public String language() {
        return language;
    }

    public Map<String, Located<String>> patterns() {
        return patterns;
    }

    /** What needs no values, by its key, for templates. */
    public Map<String, String> plain() {
        Map<String, String> plain = new TreeMap<>();
        patterns.keySet().forEach(key -> {
            Message message = message(key);
            if (message.arguments().isEmpty()) {
                plain.put(key, say(message, Map.of()));
            }
        });
        return plain;
    }

    public Optional<String> find(String key) {
        return patterns.containsKey(key) ? Optional.of(say(key)) : Optional.empty();
    }

    /**
     * A message with its values.
     *
     * @param with name and value by turns; a value is text, a number that is counted, an {@link Amount}, or a list of
     *     any of these, which all are meant
     * @throws IllegalArgumentException when the theme has no such message, or it wants a value that is not given
     */
    public String say(String key, Object... with) {
        if (with.length == 0) {
            return say(message(key), Map.of());
        }
        Map<String, Object> values = new HashMap<>();
        for (int i = 0; i + 1 < with.length; i += 2) {
            values.put(with[i].toString(), value(with[i + 1]));
        }
        try {
            return say(message(key), values);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("the message `" + key + "`: " + e.getMessage(), e);
        }
    }

    private String say(Message message, Map<String, Object> values) {
        return message.say(values, plurals());
    }

    private PluralRules plurals() {
        PluralRules known = rules.orElse(null);
        if (known == null) {
            known = PluralRules.forLocale(ULocale.forLanguageTag(language));
            rules = Optional.of(known);
        }
        return known;
    }

    /**
     * A message for a script that fills it itself.
     *
     * @see Message#script
     */
    public List<Object> script(String key) {
        return message(key).script();
    }

    private Message message(String key) {
        return messages.computeIfAbsent(key, it -> {
            Located<String> pattern = patterns.get(it);
            if (pattern == null) {
                throw new IllegalArgumentException("the theme has no word `" + it + "`");
            }
            return Message.of(pattern.value());
        });
    }

    private Object value(Object given) {
        if (given instanceof Amount amount) {
            return amount(amount);
        }
        return given instanceof List<?> list ? and(list) : given;
    }

    /** {@code 12 ft 11 in (3.94 m)}. */
    public String amount(Amount amount) {
        String here = pieces(amount.pieces());
        return amount.other().isEmpty() ? here : say("unit.both", "here", here, "there", pieces(amount.other()));
    }

    private String pieces(List<Amount.Piece> pieces) {
        return String.join(" ", pieces.stream().map(this::piece).toList());
    }

    private String piece(Amount.Piece piece) {
        return switch (piece.unit()) {
            case AS_WRITTEN -> piece.figure();
            case NONE -> digits(piece.figure());
            default -> say(key(piece.unit()), "figure", digits(piece.figure()), "count", count(piece.figure()));
        };
    }

    /** The number that a figure stands for, to choose a plural by. */
    private static double count(String figure) {
        return Math.abs(Double.parseDouble(figure.replace(",", "").replace("/0", "")));
    }

    /** Of the message for a unit: {@code unit.liter-per-hour}, with {@code figure}, and {@code count} to choose by. */
    public static String key(Symbol unit) {
        return "unit." + unit.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A figure with the signs that the language puts between its digits. */
    public String digits(String figure) {
        StringBuilder digits = new StringBuilder();
        for (int i = 0; i < figure.length(); i++) {
            char sign = figure.charAt(i);
            digits.append(sign == '.' ? say("number.decimal") : sign == ',' ? say("number.thousands") : sign);
        }
        return digits.toString();
    }

    /** A day with its month in words. */
    public String day(LocalDate day) {
        return say(
                "date",
                "day",
                day.getDayOfMonth(),
                "month",
                String.valueOf(day.getMonthValue()),
                "year",
                day.getYear());
    }

    /** All of several: {@code A, B and C}. */
    public String and(List<?> each) {
        return joined(each, "list.and");
    }

    /** One of several: {@code A, B or C}. */
    public String or(List<?> each) {
        return joined(each, "list.or");
    }

    /** What stands before each of so many, all of which are meant or one of which is enough: nothing, a comma, a word. */
    public List<String> separators(int count, boolean any) {
        List<String> separators = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            separators.add(
                    i == 0
                            ? ""
                            : i < count - 1
                                    ? say("list.row", "first", "", "next", "")
                                    : say(any ? "list.or" : "list.and", "first", "", "last", ""));
        }
        return separators;
    }

    /** One after the other: {@code A, B, C}. */
    public String row(List<?> each) {
        List<String> words = words(each);
        return words.isEmpty()
                ? ""
                : words.stream()
                        .reduce((a, b) -> say("list.row", "first", a, "next", b))
                        .orElse("");
    }

    private String joined(List<?> each, String last) {
        List<String> words = words(each);
        return words.size() < 2
                ? String.join("", words)
                : say(last, "first", row(words.subList(0, words.size() - 1)), "last", words.get(words.size() - 1));
    }

    private List<String> words(List<?> each) {
        List<String> words = new ArrayList<>();
        each.forEach(one -> words.add(value(one).toString()));
        return words;
    }
}
