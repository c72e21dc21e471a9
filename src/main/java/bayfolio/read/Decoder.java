package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.model.Role;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Nodes into records by the declaration of their shape.
 *
 * <p>Everything wrong is told in one go: a value that cannot be read leaves its fact unread, and the rest is read on.
 */
final class Decoder {
    /** In this order in messages. */
    private static final Map<String, Boolean> YES_NO = new LinkedHashMap<>();

    static {
        YES_NO.put("yes", true);
        YES_NO.put("no", false);
    }

    /** ISO 8601 with a year of exactly four digits and no sign. */
    private static final DateTimeFormatter DAY = new DateTimeFormatterBuilder()
            .appendValue(ChronoField.YEAR, 4)
            .appendLiteral('-')
            .appendValue(ChronoField.MONTH_OF_YEAR, 2)
            .appendLiteral('-')
            .appendValue(ChronoField.DAY_OF_MONTH, 2)
            .toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    /** A handful in all; thousands of values ask for them. */
    private static final Map<String, Pattern> PATTERNS = new ConcurrentHashMap<>();

    private final Function<Node, Place> places;
    private final Lists lists;
    private final Optional<Folder> films;
    private final Consumer<Finding> findings;

    /** Of the model that a coach was laid over. */
    private final Optional<TakenOver> shared;

    /** What is not looked at, since it was told to be wrong as a whole. */
    private final Set<Node> told;

    /**
     * @param lists what may be named
     * @param films the fleet folder, beside whose descriptions cues lie; empty where what is read has none
     */
    Decoder(Function<Node, Place> places, Lists lists, Optional<Folder> films, Consumer<Finding> findings) {
        this(places, lists, films, findings, Optional.empty(), Set.of());
    }

    private Decoder(
            Function<Node, Place> places,
            Lists lists,
            Optional<Folder> films,
            Consumer<Finding> findings,
            Optional<TakenOver> shared,
            Set<Node> told) {
        this.places = places;
        this.lists = lists;
        this.films = films;
        this.findings = findings;
        this.shared = shared;
        this.told = told;
    }

    Decoder(SourceFile file, int firstLine, Lists lists, Optional<Folder> films, Consumer<Finding> findings) {
        this(node -> Yaml.place(file, node, firstLine), lists, films, findings);
    }

    /** Of a coach that was laid over its model. */
    Decoder over(Model model, Set<Node> wrong) {
        return new Decoder(places, lists, films, findings, Optional.of(model.takenOver()), wrong);
    }

    /** A record of a shape; empty where the node is no record at all. */
    <T extends Described> Optional<T> record(Node node, Shape<T> shape) {
        if (!plain(node)) {
            return Optional.empty();
        }
        if (!(node instanceof MappingNode mapping)) {
            wrongType(node, Article.a(shape.name()) + " with keys");
            return Optional.empty();
        }
        Facts.Draft facts = Facts.draft(shape, places.apply(node));
        @Nullable Node[] seen = new Node[shape.keys().size()];
        List<Key<?>> meant = new ArrayList<>();
        for (NodeTuple entry : mapping.getValue()) {
            entry(shape, entry, seen, facts).ifPresent(meant::add);
        }
        meant.addAll(toConfirm(mapping, shape, facts));
        meant.forEach(facts::unread);
        for (Key<?> key : shape.keys()) {
            if (key.required() && seen[key.index()] == null && !meant.contains(key)) {
                findings.accept(Finding.error(
                                "missing-key",
                                places.apply(node),
                                "this " + shape.name() + " has no `" + key.name() + "`")
                        .mend("Add `" + key.name() + ":`. " + key.meaning()));
            }
        }
        return Optional.of(shape.make(facts.done()));
    }

    /** What somebody has still to look up counts as unread, and is told once for each record. */
    private List<Key<?>> toConfirm(MappingNode mapping, Shape<?> shape, Facts.Draft facts) {
        List<Key<?>> keys = new ArrayList<>();
        for (NodeTuple entry : mapping.getValue()) {
            if (!Model.name(entry).equals(Aside.TO_CONFIRM.name())) {
                continue;
            }
            if (!(entry.getValueNode() instanceof SequenceNode names)) {
                wrongType(entry.getValueNode(), "a list");
                continue;
            }
            for (Node each : names.getValue()) {
                Optional<String> name = scalar(each, "a key of this record", false);
                Optional<Key<?>> key = name.flatMap(shape::key);
                if (name.isPresent() && key.isEmpty()) {
                    unknownKey(each, name.get(), shape);
                }
                key.ifPresent(keys::add);
            }
            keys.forEach(facts::toConfirm);
            if (!keys.isEmpty()) {
                findings.accept(Finding.error(
                                "to-be-confirmed",
                                places.apply(entry.getKeyNode()),
                                "nobody has looked up "
                                        + keys.stream()
                                                .map(key -> "`" + key.name() + "`")
                                                .collect(Collectors.joining(", "))
                                        + " of the " + shape.name() + " on the coach yet")
                        .mend("Look at the coach, write what is there, and take it out of the list;"
                                + " `bayfolio survey` makes a page and a sheet for it."));
            }
        }
        return keys;
    }

    /** Reads the keys of a part of a record, for what is wrong with them. */
    void part(Node node, Shape<?> shape) {
        if (plain(node) && node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                entry(shape, entry, new Node[shape.keys().size()], Facts.draft(shape, places.apply(node)));
            }
        }
    }

    /**
     * @param seen where each key of the shape stood, by their indexes
     * @return the key that was meant, as it seems, by one that there is not
     */
    private Optional<Key<?>> entry(Shape<?> shape, NodeTuple entry, @Nullable Node[] seen, Facts.Draft facts) {
        Node keyNode = entry.getKeyNode();
        if (!(keyNode instanceof ScalarNode scalar)) {
            wrongType(keyNode, "a key");
            return Optional.empty();
        }
        String name = scalar.getValue();
        if (HiddenCharacters.told(name, places.apply(keyNode), findings)) {
            return Optional.empty();
        }
        Optional<Key<?>> key = shape.key(name);
        if (key.isEmpty() && name.equals(Aside.TO_CONFIRM.name())) {
            return Optional.empty();
        }
        if (key.isEmpty() && Aside.is(name)) {
            findings.accept(Finding.error(
                            "no-model",
                            places.apply(keyNode),
                            "`" + name + "` speaks of a model, and there is none here")
                    .mend("Name the coach's model, `model: …`, or take this out."));
            return Optional.empty();
        }
        if (key.isEmpty()) {
            return unknownKey(keyNode, name, shape);
        }
        int index = key.get().index();
        @Nullable Node first = seen[index];
        if (first != null) {
            findings.accept(Finding.error(
                            "duplicate-key",
                            places.apply(keyNode),
                            "`"
                                    + name
                                    + "` is said twice, first at line "
                                    + places.apply(first).line())
                    .mend("Keep one of them."));
            facts.unread(key.get());
            return Optional.empty();
        }
        seen[index] = keyNode;
        value(key.get(), entry.getValueNode(), facts);
        return Optional.empty();
    }

    /** @return the key that was meant, as it seems */
    private Optional<Key<?>> unknownKey(Node at, String name, Shape<?> shape) {
        List<String> near = shape.renamed(name)
                .map(now -> List.of(now.name()))
                .orElseGet(() -> NearNames.to(name, shape.keyNames()));
        findings.accept(
                Finding.error("unknown-key", places.apply(at), Article.a(shape.name()) + " has no key `" + name + "`")
                        .near(near)
                        .mend("Keys of " + Article.a(shape.name()) + ": " + String.join(", ", shape.keyNames()) + "."));
        return near.stream().findFirst().flatMap(shape::key);
    }

    private <V> void value(Key<V> key, Node node, Facts.Draft facts) {
        Optional<Located<V>> value = located(key.type(), node);
        value.ifPresent(it -> facts.put(key, it));
        if (value.isEmpty() || !all(value.get().value(), node)) {
            facts.unread(key);
        }
    }

    private <V> Optional<Located<V>> located(Type<V> type, Node node) {
        // What is wrong as a whole is so for one coach alone.
        return shared.filter(it -> told.isEmpty() && it.has(node))
                .map(it -> it.value(
                        node, type, found -> new Decoder(places, lists, films, found).made(type, node), findings))
                .orElseGet(() -> made(type, node));
    }

    private <V> Optional<Located<V>> made(Type<V> type, Node node) {
        return decode(type, node)
                .map(it -> new Located<>(it, places.apply(node), it instanceof Quantity ? written(node) : ""));
    }

    /** Whether it holds all elements that are written, if it is a list. */
    private static boolean all(Object value, Node node) {
        return !(value instanceof List<?> list && node instanceof SequenceNode sequence)
                || list.size() == sequence.getValue().size();
    }

    private static String written(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    @SuppressWarnings("unchecked") // each branch makes the value of its own type
    private <V> Optional<V> decode(Type<V> type, Node node) {
        if (!plain(node) || node instanceof ScalarNode scalar && !isReadable(scalar)) {
            return Optional.empty();
        }
        return (Optional<V>) type.accept(new Type.Visitor<Optional<?>>() {
            @Override
            public Optional<String> text(Type.Text text) {
                String wanted = Type.ofWords(text) ? "text" : Article.a(text.what());
                return scalar(node, wanted, text.takesNumbers()).filter(value -> fits(node, value, text));
            }

            @Override
            public <Q extends Quantity> Optional<Q> measured(Type.Measured<Q> measured) {
                return quantity(node, measured);
            }

            @Override
            public <E> Optional<E> choice(Type.Choice<E> choice) {
                return word(node, choice.words());
            }

            @Override
            public <E> Optional<E> listed(Type.Listed<E> listed) {
                return lists.devices().isPresent()
                        ? word(node, lists.devices().get()).map(it -> (E) it)
                        : scalar(node, Article.a(listed.list()), false)
                                .filter(value -> fits(node, value, (Type.Text) Type.ID))
                                .map(listed.bare());
            }

            @Override
            public Optional<Boolean> yesNo(Type.YesNo yesNo) {
                return word(node, YES_NO);
            }

            @Override
            public Optional<Integer> whole(Type.Whole whole) {
                return number(node, whole);
            }

            @Override
            public Optional<LocalDate> day(Type.Day day) {
                return date(node);
            }

            @Override
            public Optional<String> reference(Type.Reference reference) {
                return scalar(node, "the id of " + Article.a(String.join(" or ", reference.kinds())), false)
                        .filter(value -> fits(node, value, (Type.Text) Type.ID));
            }

            @Override
            public Optional<String> role(Type.Role role) {
                return scalar(
                                node,
                                "a role"
                                        + role.kind()
                                                .map(kind -> " of " + Article.a(kind))
                                                .orElse(""),
                                false)
                        .filter(value -> fits(node, value, (Type.Text) Type.ID))
                        .filter(value -> isRole(node, value, role.kind()));
            }

            @Override
            public <E> Optional<List<Located<E>>> list(Type.ListOf<E> list) {
                return list.cues() ? cues(node, list.element()) : elements(node, list.element());
            }

            @Override
            public <E extends Described> Optional<E> record(Type.Nested<E> nested) {
                return told.contains(node) ? Optional.empty() : Decoder.this.record(node, nested.shape());
            }
        });
    }

    private boolean isReadable(ScalarNode scalar) {
        String value = scalar.getValue();
        if (value.length() > Folder.MOST_CHARACTERS) {
            findings.accept(Folder.tooLong(places.apply(scalar), "this text", value.length()));
            return false;
        }
        return !HiddenCharacters.told(value, places.apply(scalar), findings);
    }

    private <E> Optional<List<Located<E>>> cues(Node node, Type<E> chapter) {
        Optional<String> file = decode(Type.FILE_NAME, node);
        if (file.isEmpty() || films.isEmpty()) {
            return Optional.empty();
        }
        @SuppressWarnings("unchecked") // as it is declared: see Type.cues
        Type.Nested<? extends Described> nested = (Type.Nested<? extends Described>) chapter;
        @SuppressWarnings({"unchecked", "rawtypes"})
        Optional<List<Located<E>>> chapters =
                (Optional) Films.beside(films.get(), places.apply(node).file())
                        .chapters(file.get(), places.apply(node), nested.shape(), findings);
        return chapters;
    }

    private <E> Optional<List<Located<E>>> elements(Node node, Type<E> element) {
        if (!(node instanceof SequenceNode sequence)) {
            wrongType(node, "a list");
            return Optional.empty();
        }
        List<Located<E>> elements = new ArrayList<>();
        for (Node each : sequence.getValue()) {
            located(element, each).ifPresent(elements::add);
        }
        return Optional.of(elements);
    }

    /**
     * @param numbers whether a bare number may stand for its digits
     */
    private Optional<String> scalar(Node node, String wanted, boolean numbers) {
        if (node instanceof ScalarNode scalar) {
            Tag tag = scalar.getTag();
            if (isText(tag) || numbers && (tag.equals(Tag.INT) || tag.equals(Tag.FLOAT))) {
                return Optional.of(scalar.getValue());
            }
            if (!tag.equals(Tag.NULL)) {
                findings.accept(
                        Finding.error("wrong-type", places.apply(node), "`" + scalar.getValue() + "` is not " + wanted)
                                .mend("Put it in quotes if it is meant as text."));
                return Optional.empty();
            }
        }
        wrongType(node, wanted);
        return Optional.empty();
    }

    /** Also of {@code ${NAME}}, which the parser would let stand for something else. */
    private static boolean isText(Tag tag) {
        return tag.equals(Tag.STR) || tag.equals(Tag.ENV_TAG);
    }

    private boolean isRole(Node node, String value, Optional<String> kind) {
        if (lists.roles().isEmpty()) {
            return true;
        }
        Map<String, Role> roles = lists.roles().get();
        Optional<Role> role = Optional.ofNullable(roles.get(value));
        if (role.isEmpty()) {
            List<Role> ofKind = roles.values().stream()
                    .filter(it -> kind.map(it.kind()::equals).orElse(true))
                    .toList();
            List<String> now = Role.formerly(value, ofKind);
            findings.accept(Finding.error("unknown-role", places.apply(node), "there is no role `" + value + "`")
                    .near(
                            now.isEmpty()
                                    ? NearNames.to(
                                            value, ofKind.stream().map(Role::id).toList())
                                    : now)
                    .mend("Roles are listed in `units/shared/roles.yaml`."));
            return false;
        }
        String ofKind = role.get().kind();
        if (kind.isPresent() && !kind.get().equals(ofKind)) {
            findings.accept(Finding.error(
                            "wrong-kind",
                            places.apply(node),
                            "the role `" + value + "` is one of " + Article.a(ofKind) + ", not of "
                                    + Article.a(kind.get()))
                    .mend("Give it to " + Article.a(ofKind) + "."));
            return false;
        }
        return true;
    }

    private boolean fits(Node node, String value, Type.Text text) {
        // Most texts are any that is not blank, which is seen at their first letter.
        boolean letter = Type.ofWords(text) && !value.isEmpty() && Character.isLetterOrDigit(value.charAt(0));
        boolean fits = letter
                || PATTERNS.computeIfAbsent(text.pattern(), Decoder::ecma)
                        .matcher(value)
                        .find();
        if (!fits) {
            findings.accept(
                    value.isBlank()
                            ? Finding.error("wrong-value", places.apply(node), "this text is empty")
                                    .mend("Write it, or leave the key out.")
                            : Finding.error("wrong-value", places.apply(node), "`" + value + "` is no " + text.what())
                                    .mend("Write " + text.taken() + "."));
        }
        return fits;
    }

    /**
     * A pattern as ECMA-262 reads it, and every editor with it: {@code $} is the very end, even
     * before a line break, and a blank is a blank in any script.
     */
    private static Pattern ecma(String pattern) {
        return Pattern.compile(pattern.replace("$", "\\z"), Pattern.UNICODE_CHARACTER_CLASS);
    }

    private <Q extends Quantity> Optional<Q> quantity(Node node, Type.Measured<Q> measured) {
        String name = measured.scale().name();
        Optional<String> written = scalar(node, Article.a(name), true);
        if (written.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(measured.scale().parse(written.get()));
        } catch (NotAQuantityException refusal) {
            findings.accept(Finding.error("wrong-measure", places.apply(node), String.valueOf(refusal.getMessage()))
                    .mend("Write it like `" + measured.scale().example() + "`."));
            return Optional.empty();
        }
    }

    private <E> Optional<E> word(Node node, Map<String, E> words) {
        String wanted = "one of: " + String.join(", ", words.keySet());
        if (!(node instanceof ScalarNode scalar) || scalar.getTag().equals(Tag.NULL)) {
            wrongType(node, wanted);
            return Optional.empty();
        }
        // Not only texts: `true` is no word of any list, and quotes would not mend it.
        String written = scalar.getValue();
        if (!words.containsKey(written)) {
            findings.accept(Finding.error("wrong-value", places.apply(node), "`" + written + "` is not " + wanted)
                    .near(NearNames.to(written, words.keySet())));
        }
        return Optional.ofNullable(words.get(written));
    }

    private Optional<Integer> number(Node node, Type.Whole whole) {
        String wanted = "a whole number from " + whole.least() + " to " + whole.most();
        if (node instanceof ScalarNode scalar
                && (scalar.getTag().equals(Tag.INT) || scalar.getTag().equals(Tag.FLOAT))) {
            try {
                int value = new BigDecimal(scalar.getValue()).intValueExact();
                if (value >= whole.least() && value <= whole.most()) {
                    return Optional.of(value);
                }
            } catch (ArithmeticException | NumberFormatException notWhole) {
                // told below, like every other number that does not fit
            }
            findings.accept(
                    Finding.error("wrong-value", places.apply(node), "`" + scalar.getValue() + "` is not " + wanted));
            return Optional.empty();
        }
        wrongType(node, wanted);
        return Optional.empty();
    }

    private Optional<LocalDate> date(Node node) {
        Optional<String> written = scalar(node, "a day such as 2026-04-18", true);
        try {
            return written.map(day -> LocalDate.parse(day, DAY));
        } catch (DateTimeException e) {
            findings.accept(Finding.error("wrong-value", places.apply(node), "`" + written.orElse("") + "` is no day")
                    .mend("Write year, month and day: 2026-04-18."));
            return Optional.empty();
        }
    }

    private void wrongType(Node node, String wanted) {
        String found = node instanceof MappingNode
                ? "a record stands"
                : node instanceof SequenceNode
                        ? "a list stands"
                        : node instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL)
                                ? "nothing stands"
                                : "`" + ((ScalarNode) node).getValue() + "` stands";
        findings.accept(Finding.error("wrong-type", places.apply(node), found + " here where " + wanted + " is meant")
                .mend("Write " + wanted + "."));
    }

    /**
     * Aliases and tags of one's own would hide where a value was written; descriptions do without.
     */
    private boolean plain(Node node) {
        if (node.getAnchor().isPresent()) {
            findings.accept(Finding.error("yaml-alias", places.apply(node), "anchors and aliases are not taken")
                    .mend("Write the value out where it belongs."));
            return false;
        }
        String tag = node.getTag().getValue();
        if (!tag.startsWith(Tag.PREFIX) && !isText(node.getTag())) {
            findings.accept(Finding.error(
                            "yaml-alias",
                            places.apply(node),
                            "the tag `" + tag.toLowerCase(Locale.ROOT) + "` is not taken")
                    .mend("Leave the tag out."));
            return false;
        }
        return true;
    }
}
