package bayfolio.model;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.measure.NotAQuantityException;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of {@code there-when}: features, and things or records with what is asked of them in square brackets. */
record PresenceWords(FeatureWords features) implements ConditionWords<Presence> {
    private static final Pattern FACTS = Pattern.compile("([a-z][a-z0-9-]*)\\[([^\\[\\]]*)]");
    private static final Pattern TEST =
            Pattern.compile("(?:(no) +)?([a-z][a-z0-9-]*)(?:\\s*(!=|<=|>=|=|<|>)\\s*(.+))?");
    private static final String UNIT = "unit";
    private static final String ROLE = "role";
    private static final String COUNT = "count";

    @Override
    public String called() {
        return "a feature or facts in square brackets";
    }

    @Override
    public String mend() {
        return "Write facts like `supply[source = shore, amps = 50 A]`, or features, joined by `and`, `or`, `not`.";
    }

    @Override
    public Optional<Presence> read(Located<String> word, Consumer<Finding> findings) {
        Matcher facts = FACTS.matcher(word.value());
        if (facts.matches()) {
            return new Reading(word.at(), findings).of(facts.group(1), facts.group(2));
        }
        if (word.value().contains("[")) {
            findings.accept(Finding.error("malformed-condition", word.at(), "`" + word.value() + "` is not closed")
                    .mend(mend()));
            return Optional.empty();
        }
        return features.read(word, findings).map(Presence.OfFeature::new);
    }

    /** Of one word. */
    private static final class Reading {
        private final Place at;
        private final Consumer<Finding> findings;
        private boolean broken;

        Reading(Place at, Consumer<Finding> findings) {
            this.at = at;
            this.findings = findings;
        }

        Optional<Presence> of(String subject, String tests) {
            Optional<Shape<? extends Thing>> kind = Kinds.named(subject);
            Optional<Key<?>> record = Unit.SHAPE.key(subject).filter(key -> key.type() instanceof Type.Nested<?>);
            Presence presence = null;
            if (kind.isPresent()) {
                presence = things(kind.get(), tests);
            } else if (record.isPresent()) {
                Shape<?> shape = ((Type.Nested<?>) record.get().type()).shape();
                presence = new Presence.OfRecord(record, each(shape, tests));
            } else if (subject.equals(UNIT)) {
                presence = new Presence.OfRecord(Optional.empty(), each(Unit.SHAPE, tests));
            } else {
                List<String> known = Stream.of(
                                Kinds.names().stream(),
                                Unit.SHAPE.keys().stream()
                                        .filter(key -> key.type() instanceof Type.Nested<?>)
                                        .map(Key::name),
                                Stream.of(UNIT))
                        .flatMap(it -> it)
                        .toList();
                broken(
                        "unknown-kind",
                        "`" + subject + "` is no kind of thing and no record of a coach",
                        NearNames.to(subject, known));
            }
            return broken ? Optional.empty() : Optional.ofNullable(presence);
        }

        private Presence things(Shape<?> kind, String written) {
            List<Set<String>> roles = new ArrayList<>();
            Predicate<Long> count = number -> number > 0;
            List<FactTest> tests = new ArrayList<>();
            for (String each : split(written)) {
                Matcher test = test(each);
                if (test == null) {
                    continue;
                }
                if (test.group(2).equals(ROLE) && "=".equals(test.group(3))) {
                    roles.add(Set.of(test.group(4).strip().split("\\|")));
                } else if (test.group(2).equals(COUNT) && test.group(3) != null) {
                    DoublePredicate wanted = figure(test.group(3), number(test.group(4)));
                    count = wanted::test;
                } else {
                    of(kind, test).ifPresent(tests::add);
                }
            }
            return new Presence.OfThings(kind.name(), roles, tests, count);
        }

        private List<FactTest> each(Shape<?> shape, String written) {
            List<FactTest> tests = new ArrayList<>();
            for (String each : split(written)) {
                Matcher test = test(each);
                if (test != null) {
                    of(shape, test).ifPresent(tests::add);
                }
            }
            return tests;
        }

        private static List<String> split(String written) {
            return Stream.of(written.split(","))
                    .map(String::strip)
                    .filter(it -> !it.isEmpty())
                    .toList();
        }

        private @org.jspecify.annotations.Nullable Matcher test(String written) {
            Matcher test = TEST.matcher(written);
            if (test.matches()) {
                return test;
            }
            broken("malformed-condition", "`" + written + "` asks nothing of a fact", List.of());
            return null;
        }

        private Optional<FactTest> of(Shape<?> shape, Matcher test) {
            String name = test.group(2);
            Optional<Key<?>> key = shape.key(name);
            if (key.isEmpty()) {
                broken(
                        "unknown-key",
                        "a " + shape.name() + " has no key `" + name + "`",
                        NearNames.to(name, shape.keyNames()));
                return Optional.empty();
            }
            if (test.group(3) == null) {
                return Optional.of(new FactTest.Stated(key.get(), test.group(1) == null));
            }
            return compared(key.get(), test.group(3), test.group(4).strip());
        }

        private Optional<FactTest> compared(Key<?> key, String sign, String value) {
            Type<?> type = key.type() instanceof Type.ListOf<?> list ? list.element() : key.type();
            if (type instanceof Type.Measured<?> measured) {
                try {
                    return Optional.of(new FactTest.Figure(
                            key, figure(sign, measured.scale().parse(value).value())));
                } catch (NotAQuantityException refusal) {
                    broken("wrong-measure", String.valueOf(refusal.getMessage()), List.of());
                    return Optional.empty();
                }
            }
            if (type instanceof Type.Whole) {
                return Optional.of(new FactTest.Figure(key, figure(sign, number(value))));
            }
            if (!sign.equals("=") && !sign.equals("!=")) {
                broken("malformed-condition", "`" + key.name() + "` is no figure, and is not more or less", List.of());
                return Optional.empty();
            }
            Set<String> words = Set.of(value.split("\\|"));
            List<String> known = type instanceof Type.Choice<?> choice
                    ? List.copyOf(choice.words().keySet())
                    : type instanceof Type.YesNo ? List.of("yes", "no") : List.of();
            words.stream()
                    .filter(word -> !known.isEmpty() && !known.contains(word))
                    .findFirst()
                    .ifPresent(word -> broken(
                            "wrong-value",
                            "`" + word + "` is not one of: " + String.join(", ", known),
                            NearNames.to(word, known)));
            return Optional.of(new FactTest.OneOf(key, words, sign.equals("=")));
        }

        private double number(String value) {
            try {
                return Double.parseDouble(value.strip());
            } catch (NumberFormatException noNumber) {
                broken("malformed-condition", "`" + value + "` is no number", List.of());
                return 0;
            }
        }

        private static DoublePredicate figure(String sign, double wanted) {
            double close = Math.max(1e-9, Math.abs(wanted) * 1e-6);
            return switch (sign) {
                case "<" -> is -> is < wanted - close;
                case ">" -> is -> is > wanted + close;
                case "<=" -> is -> is <= wanted + close;
                case ">=" -> is -> is >= wanted - close;
                case "!=" -> is -> Math.abs(is - wanted) > close;
                default -> is -> Math.abs(is - wanted) <= close;
            };
        }

        /** The first thing that is wrong with a word is told. */
        private void broken(String code, String message, List<String> near) {
            if (!broken) {
                findings.accept(Finding.error(code, at, message).near(near));
            }
            broken = true;
        }
    }
}
