package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** A file of a writer after an edit: what was asked for, and all else as it was. */
final class RewriteTest {
    private static final YAMLMapper READER = new YAMLMapper();

    private static String edited(String text, Edit... edits) throws RewriteException {
        return Rewrite.of(new SourceFile("x.yaml", text), List.of(edits));
    }

    private static Edit put(Steps at, String text) {
        return new Edit.Put(at, Value.text(text));
    }

    private static Edit remove(Steps at) {
        return new Edit.Remove(at);
    }

    private static final Steps LOOK = Steps.of("switches").id("a").key("on-look");

    private static String look(String written) {
        return "# head\nswitches:\n  - id: a   # first\n    on-look:  " + written + "  # seen\n\n  - id: b\n";
    }

    @Test
    void aScalarIsReplacedInPlaceAndQuotedOnlyWhereItMustBe() throws Exception {
        assertThat(edited(look("red"), put(LOOK, "green"))).isEqualTo(look("green"));
        assertThat(edited(look("red"), put(LOOK, "lamp: green"))).isEqualTo(look("\"lamp: green\""));
        assertThat(edited(look("red"), put(LOOK, "green # 2"))).isEqualTo(look("\"green # 2\""));
        assertThat(edited(look("red"), put(LOOK, "1423"))).isEqualTo(look("\"1423\""));
        assertThat(edited(look("red"), put(LOOK, "true"))).isEqualTo(look("\"true\""));
        assertThat(edited(look("red"), put(LOOK, "yes"))).isEqualTo(look("yes"));
        assertThat(edited(look("red"), new Edit.Put(LOOK, Value.written("14")))).isEqualTo(look("14"));
        assertThat(edited(look("red"), put(LOOK, "a \"b\" \\ c: \u202e\n")))
                .isEqualTo(look("\"a \\\"b\\\" \\\\ c: \\u202E\\n\""));
        assertThat(edited(look("red"), put(LOOK, "\ud83d\ude90 rot, grün"))).isEqualTo(look("\ud83d\ude90 rot, grün"));
    }

    @Test
    void quotesThatWereNotNeededAreTheWritersHabit() throws Exception {
        assertThat(edited(look("'red'"), put(LOOK, "it's on"))).isEqualTo(look("'it''s on'"));
        assertThat(edited(look("\"red\""), put(LOOK, "green"))).isEqualTo(look("\"green\""));
        assertThat(edited(look("\"red: 1\""), put(LOOK, "green"))).isEqualTo(look("green"));
        assertThat(edited(look("'red: 1'"), put(LOOK, "red: 2"))).isEqualTo(look("'red: 2'"));
    }

    @Test
    void textsOverSeveralLinesKeepTheirForm() throws Exception {
        String plain = "a: one\n  two  # why\nb: c\n";
        assertThat(edited(plain, put(Steps.of("a"), "x"))).isEqualTo("a: x  # why\nb: c\n");
        String literal = "a: | # said\n    one\n    two\n\n# below\nb: c\n";
        assertThat(edited(literal, put(Steps.of("a"), "x\ny: 1\n")))
                .isEqualTo("a: | # said\n    x\n    y: 1\n\n# below\nb: c\n");
        assertThat(edited(literal, put(Steps.of("a"), "x"))).isEqualTo("a: |- # said\n    x\n\n# below\nb: c\n");
        String folded = "a: >-\n  one two\n  three\nb: c\n";
        assertThat(edited(folded, put(Steps.of("a"), "four five six\nseven")))
                .isEqualTo("a: >-\n  four\n  five\n  six\n\n  seven\nb: c\n");
        assertThat(edited(folded, put(Steps.of("a"), " x"))).isEqualTo("a: \" x\"\nb: c\n");
        assertThat(edited("a: b\n", put(Steps.of("k"), "x\ny"))).isEqualTo("a: b\nk: |-\n  x\n  y\n");
    }

    @Test
    void aKeyGoesBehindTheLastOfItsRecord() throws Exception {
        String file = "size:\n    length: 8 m\n    # not measured\n\n# tanks\ntanks:\n- id: a # one\n- {id: b}\n";
        assertThat(edited(file, put(Steps.of("size", "width"), "2 m")))
                .isEqualTo(file.replace("8 m\n", "8 m\n    width: 2 m\n"));
        assertThat(edited(file, put(Steps.of("tanks").id("a").key("name"), "A, left")))
                .isEqualTo(file.replace("# one\n", "# one\n  name: A, left\n"));
        assertThat(edited(file, put(Steps.of("tanks").id("b").key("name"), "B")))
                .isEqualTo(file.replace("{id: b}", "{id: b, name: B}"));
        assertThat(edited(file, put(Steps.of("size", "box", "deep"), "1 m")))
                .isEqualTo(file.replace("8 m\n", "8 m\n    box:\n      deep: 1 m\n"));
        assertThat(edited(file, put(Steps.of("tanks").id("c").key("name"), "C")))
                .isEqualTo(file + "- {id: c, name: C}\n");
        assertThat(edited(file, put(Steps.of("doors").id("c").key("name"), "C")))
                .isEqualTo(file + "doors:\n- id: c\n  name: C\n");
        assertThat(edited("a: b", put(Steps.of("c"), "d"))).isEqualTo("a: b\nc: d");
        assertThat(edited("a:\nb: {}\n", put(Steps.of("a", "x"), "1 m"), put(Steps.of("b", "y"), "2 m")))
                .isEqualTo("a:\n  x: 1 m\nb: {y: 2 m}\n");
        assertThat(edited("a: b\r\nc: |+\r\n  d\r\n\r\n", put(Steps.of("e"), "f")))
                .isEqualTo("a: b\r\nc: |+\r\n  d\r\n\r\ne: f\r\n");
    }

    @Test
    void aListTakesAndGivesElements() throws Exception {
        String file = "- id: a\n  roles: [x, y] # both\n  inside:\n    - cup\n    - pot # big\n\n- id: b\n";
        Steps a = new Steps(List.of(new Steps.Id("a")));
        Edit third = new Edit.Add(a.key("roles"), Value.text("z"));
        assertThat(edited(file, third, third)).isEqualTo(file.replace("x, y", "x, y, z"));
        assertThat(edited(file, new Edit.Add(a.key("inside"), Value.text("pan"))))
                .isEqualTo(file.replace("# big\n", "# big\n    - pan\n"));
        assertThat(edited(file, new Edit.Add(a.key("to-confirm"), Value.text("width"))))
                .isEqualTo(file.replace("# big\n", "# big\n  to-confirm: [width]\n"));
        assertThat(edited(file, remove(a.key("roles").id("x")))).isEqualTo(file.replace("x, y", "y"));
        assertThat(edited(
                        file,
                        remove(a.key("roles").id("x")),
                        remove(a.key("roles").id("y"))))
                .isEqualTo(file.replace("  roles: [x, y] # both\n", ""));
        assertThat(edited(file, remove(a.key("inside").nth(1)))).isEqualTo(file.replace("    - cup\n", ""));
        assertThat(edited(file, new Edit.Add(new Steps(List.of()), Value.record("id", Value.text("c")))))
                .isEqualTo(file + "\n- id: c\n");
        assertThatThrownBy(() ->
                        edited("t:\n- id: a\n", new Edit.Add(Steps.of("t"), Value.record("id", Value.text("a")))))
                .hasMessage("there is a `a` in `t`");
    }

    @Test
    void whatIsTakenOutLeavesTheCommentsAboveIt() throws Exception {
        String file = "a: b\n\n# things\nthings:\n  # one\n  - id: one\n    name: 1 # c\n\n  # two\n  - id: two\n"
                + "    # inside\n    name: 2\n\n# end\nlast: {x: 1, y: 2}\n";
        assertThat(edited(file, remove(Steps.of("things").id("one").key("name"))))
                .isEqualTo(file.replace("    name: 1 # c\n", ""));
        assertThat(edited(file, remove(Steps.of("things").id("two"))))
                .isEqualTo(file.replace("  - id: two\n    # inside\n    name: 2\n", ""));
        assertThat(edited(file, remove(Steps.of("things").id("one").key("id"))))
                .isEqualTo(file.replace("- id: one\n    name", "- name"));
        assertThat(edited(file, remove(Steps.of("things").id("two").key("id"))))
                .isEqualTo(file.replace("- id: two\n", "-\n"));
        assertThat(edited(file, remove(Steps.of("last", "x")))).isEqualTo(file.replace("x: 1, ", ""));
        assertThat(edited(file, remove(Steps.of("last", "y")))).isEqualTo(file.replace(", y: 2", ""));
        assertThat(edited("a: b\n\nc: d\n\ne: f\n", remove(Steps.of("c")))).isEqualTo("a: b\n\ne: f\n");
        assertThat(edited("a: b\n\nc: d", remove(Steps.of("c")))).isEqualTo("a: b");
        assertThat(edited("x: {\n  a: 1, # one\n  b: 2\n}\n", remove(Steps.of("x", "b"))))
                .isEqualTo("x: {\n  a: 1 # one\n  \n}\n");
    }

    @Test
    void aDigestBesideAnOverrideComesAndGoes() throws Exception {
        String file = "switches:\n  - id: a\n    on-look: red\n  - {id: b}\n";
        Steps said = Steps.of("switches").id("a").key("model-said").key("on-look");
        String with = edited(file, put(said, "0123456789ab"));
        assertThat(with).isEqualTo(file.replace("red\n", "red\n    model-said:\n      on-look: 0123456789ab\n"));
        assertThat(edited(with, put(said, "ba9876543210"))).isEqualTo(with.replace("0123456789ab", "ba9876543210"));
        assertThat(edited(with, remove(said))).isEqualTo(file);
        assertThat(edited(
                        file, put(Steps.of("switches").id("b").key("model-said").key("x"), "12e456789012")))
                .contains("{id: b, model-said: {x: \"12e456789012\"}}");
    }

    @Test
    void whatCannotBeEditedForCertainIsRefused() {
        for (String file : new String[] {"a: &x b\nc: *x\n", "a: 1\na: 2\n", "? [p]\n: q\na: b", "a: [", "- - x\n"}) {
            assertThatThrownBy(() -> edited(file, put(Steps.of("a"), "n"), remove(Steps.of("zz"))))
                    .as(file)
                    .isInstanceOf(RewriteException.class);
        }
        assertThatThrownBy(() -> edited("a: b\n", put(Steps.of("a", "c"), "n"))).isInstanceOf(RewriteException.class);
        assertThatThrownBy(() -> edited("a: b\n", remove(Steps.of("c")))).hasMessage("there is no `c`");
        assertThatThrownBy(() -> edited("a: b\n", remove(Steps.of("a"))))
                .hasMessage("nothing would be left of the file");
    }

    // ---- random edits of the demo fleet, read by another reader

    private static final String[] WORDS = {
        "blue", "up, then right", "a: b", "# no", "it's", "\"so\"", "20 gal", "yes", "true", "1423", "0.5", "~", "null",
        "- dash", "{x}", "[y", "*star", "&and", "!tag", "%", "@", "`", " padded ", "tab\there", "two\nlines",
                "über 3 m",
        "\ud83d\ude90", "2026-04-18", "${HOME}", "end:", "? no", "| no", "> no", "--- ", "...", "'", "\\",
                "x" + "y z".repeat(60)
    };

    /** A node with the way to it. */
    private record Found(Steps at, JsonNode node, JsonNode parent) {}

    private static List<Found> all(JsonNode root) {
        List<Found> found = new ArrayList<>();
        walk(new Steps(List.of()), root, found);
        return found;
    }

    private static void walk(Steps at, JsonNode node, List<Found> found) {
        if (node instanceof ObjectNode record) {
            record.properties().forEach(each -> {
                found.add(new Found(at.key(each.getKey()), each.getValue(), node));
                walk(at.key(each.getKey()), each.getValue(), found);
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                Steps each = list.get(i).has("id") ? at.id(list.get(i).get("id").asString()) : at.nth(i + 1);
                found.add(new Found(each, list.get(i), node));
                walk(each, list.get(i), found);
            }
        }
    }

    /** Node by node, so that the first one that differs is told. */
    private static void assertSame(String what, JsonNode is, JsonNode wanted) {
        List<Found> each = all(is);
        List<Found> other = all(wanted);
        for (int i = 0; i < Math.min(each.size(), other.size()); i++) {
            if (!each.get(i).node.isContainer() || !other.get(i).node.isContainer()) {
                assertThat(each.get(i).node).as("%s: %s", what, other.get(i).at).isEqualTo(other.get(i).node);
            }
            assertThat(each.get(i).at).as(what).isEqualTo(other.get(i).at);
        }
        assertThat(each).as(what).hasSameSizeAs(other);
    }

    private static void set(Found found, JsonNode value) {
        Steps.Step last = found.at.all().get(found.at.all().size() - 1);
        if (found.parent instanceof ObjectNode record) {
            record.set(last.toString(), value);
            return;
        }
        ArrayNode list = (ArrayNode) found.parent;
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) == found.node) {
                list.set(i, value);
            }
        }
    }

    private static List<String> comments(String text) {
        return text.lines().filter(line -> line.strip().startsWith("#")).toList();
    }

    private static String windows(String text) {
        return "\uFEFF" + text.replace("\n", "\r\n");
    }

    /** The lines of the first text, in order, are among those of the second but for those from a number on. */
    private static int linesThatDiffer(String before, String after) {
        List<String> one = before.lines().toList();
        List<String> two = after.lines().toList();
        int head = 0;
        while (head < Math.min(one.size(), two.size()) && one.get(head).equals(two.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < Math.min(one.size(), two.size()) - head
                && one.get(one.size() - 1 - tail).equals(two.get(two.size() - 1 - tail))) {
            tail++;
        }
        return Math.max(one.size(), two.size()) - head - tail;
    }

    private static final String[] KINDS = {"replaced", "key", "element", "removed"};

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void randomEditsChangeWhatWasAskedForAndNothingElse(String coach) throws Exception {
        String text = Files.readString(Path.of("units/" + coach + "/unit.yaml"));
        Random random = new Random(coach.hashCode());
        Map<String, Integer> done = new LinkedHashMap<>();
        for (int i = 0; i < Integer.getInteger("edits", 15); i++) {
            JsonNode wanted = READER.readTree(text);
            // The kinds take turns: whatever a description holds, each is tried. An id is the way to its own record.
            String kind = KINDS[i % KINDS.length];
            List<Found> all = all(wanted).stream()
                    .filter(it ->
                            !it.at.toString().endsWith("/ id") && kinds(it).contains(kind))
                    .toList();
            Found found = all.get(random.nextInt(all.size()));
            String word = WORDS[random.nextInt(WORDS.length)];
            String after = switch (kind) {
                case "key" -> grownRecord(text, found, word);
                case "element" -> grownList(text, found, word, random.nextBoolean());
                case "removed" -> removed(text, found);
                default -> replaced(text, found, word);
            };
            done.merge(kind, 1, Integer::sum);
            assertSame(kind + " of " + found.at, READER.readTree(after), wanted);
        }
        assertThat(done.keySet()).containsExactly(KINDS);
    }

    private static List<String> kinds(Found found) {
        if (found.node.isContainer()) {
            return List.of(found.node.isObject() ? "key" : "element");
        }
        return found.parent instanceof ObjectNode ? List.of("replaced", "removed") : List.of("replaced");
    }

    private static String replaced(String text, Found found, String word) throws Exception {
        Edit edit = put(found.at, word);
        String after = edited(text, edit);
        assertThat(edited(windows(text), edit)).isEqualTo(windows(after));
        assertThat(linesThatDiffer(text, after)).isLessThanOrEqualTo(1);
        assertThat(comments(after)).isEqualTo(comments(text));
        Value old = Rewrite.read(new SourceFile("", text)).at(found.at).orElseThrow();
        String back = edited(after, new Edit.Put(found.at, old));
        assertSame("back to " + found.at, READER.readTree(back), READER.readTree(text));
        if (!text.contains("\"" + found.node.asString() + "\"")) {
            assertThat(back).as("back to %s from %s", found.node, word).isEqualTo(text);
        }
        set(found, StringNode.valueOf(word));
        return after;
    }

    private static String grownRecord(String text, Found found, String word) throws Exception {
        Edit edit = put(found.at.key("zz-new"), word);
        String after = edited(text, edit);
        assertThat(edited(windows(text), edit)).isEqualTo(windows(after));
        assertThat(edited(after, remove(found.at.key("zz-new")))).isEqualTo(text);
        assertThat(comments(after)).isEqualTo(comments(text));
        ((ObjectNode) found.node).set("zz-new", StringNode.valueOf(word));
        return after;
    }

    private static String grownList(String text, Found found, String word, boolean thing) throws Exception {
        boolean things = found.node.get(0).isObject();
        Value element = things ? Value.record("id", Value.text("zz-new")) : Value.text(word);
        Edit edit = new Edit.Add(found.at, element);
        String after = edited(text, edit);
        assertThat(edited(windows(text), edit)).isEqualTo(windows(after));
        assertThat(edited(after, remove(found.at.nth(found.node.size() + 1)))).isEqualTo(text);
        assertThat(comments(after)).isEqualTo(comments(text));
        if (things) {
            ((ArrayNode) found.node).addObject().put("id", "zz-new");
        } else {
            ((ArrayNode) found.node).add(word);
        }
        return after;
    }

    private static String removed(String text, Found found) throws Exception {
        String after = edited(text, remove(found.at));
        assertThat(edited(windows(text), remove(found.at))).isEqualTo(windows(after));
        assertThat(comments(after)).isEqualTo(comments(text));
        if (found.parent.size() > 1) {
            ((ObjectNode) found.parent)
                    .remove(found.at.all().get(found.at.all().size() - 1).toString());
            return after;
        }
        throw new IllegalStateException("a record of one key: " + found.at);
    }

    /** A thing taken out whole is gone with its lines, and nothing else is. */
    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void eachThingCanBeTakenOut(String coach) throws IOException, RewriteException {
        String text = Files.readString(Path.of("units/" + coach + "/unit.yaml"));
        int things = 0;
        for (Found found : all(READER.readTree(text))) {
            if (found.parent instanceof ArrayNode && found.node.isObject() && found.parent.size() > 1 && things < 60) {
                JsonNode wanted = READER.readTree(text);
                Found same = all(wanted).stream()
                        .filter(it -> it.at.equals(found.at))
                        .findFirst()
                        .orElseThrow();
                ArrayNode list = (ArrayNode) same.parent;
                for (int i = list.size() - 1; i >= 0; i--) {
                    if (list.get(i) == same.node) {
                        list.remove(i);
                    }
                }
                String after = edited(text, remove(found.at));
                assertThat(READER.readTree(after)).isEqualTo(wanted);
                assertThat(text.lines().toList())
                        .containsSubsequence(after.lines().toList());
                things++;
            }
        }
        assertThat(things).isEqualTo(60);
    }
}
