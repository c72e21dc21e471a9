package bayfolio.render.data;

import bayfolio.document.Content;
import bayfolio.document.Content.FactTable;
import bayfolio.document.From;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.measure.Quantity;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.source.Digest;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What tables of facts say, and what was worked out of facts, as readers see it. */
final class Figures {
    /** Far finer than anything that is measured on a coach; the last binary digits are dropped. */
    private static final MathContext DIGITS = new MathContext(9);

    private Figures() {}

    /** Each row that says what is stated. */
    static JsonArray facts(Handbook handbook) {
        JsonArray all = new JsonArray();
        tables(handbook)
                .forEach(table -> table.rows()
                        .forEach(row ->
                                source(row).filter(way -> states(row, way)).ifPresent(way -> all.add(fact(row, way)))));
        return all;
    }

    private static JsonObject fact(FactTable.Row row, String way) {
        JsonObject json = new JsonObject();
        json.addProperty("id", row.id().toString());
        json.addProperty("way", way);
        json.addProperty("label", row.label());
        List<String> lines =
                row.lines().stream().map(line -> Inline.plain(line.words())).toList();
        JsonArray value = new JsonArray();
        lines.forEach(value::add);
        json.add("value", value);
        List<Quantity> measured =
                row.lines().stream().flatMap(line -> line.measured().stream()).toList();
        if (!measured.isEmpty()) {
            JsonArray figures = new JsonArray();
            measured.forEach(each -> figures.add(figure(each)));
            json.add("figures", figures);
            json.addProperty("unit", unit(measured.get(0)));
        }
        if (MachineCopy.forStaff(row.stamp())) {
            json.addProperty("staff", true);
        }
        json.addProperty("digest", Digest.of(way + "\n" + String.join("\n", lines)));
        return json;
    }

    private static BigDecimal figure(Quantity quantity) {
        // Never 1E+2: not every reader of figures knows it.
        return new BigDecimal(
                new BigDecimal(quantity.value(), DIGITS).stripTrailingZeros().toPlainString());
    }

    /** A share of a whole has the unit one. */
    private static String unit(Quantity quantity) {
        String kept = quantity.scale().kept();
        return kept.isEmpty() ? "1" : kept;
    }

    /** Answers to questions, and rows that say what follows from a fact. */
    static JsonArray workedOut(Handbook handbook) {
        JsonArray all = new JsonArray();
        tables(handbook)
                .forEach(table -> table.rows()
                        .forEach(row -> source(row)
                                .filter(way -> !states(row, way)
                                        && !row.stamp()
                                                .from()
                                                .equals(table.stamp().from()))
                                .ifPresent(way -> all.add(followed(row, way)))));
        handbook.pages().stream()
                .filter(page -> page.kind() == PageKind.QUESTION)
                .forEach(page -> text(handbook, page.id().child("answer"))
                        .ifPresent(answer -> all.add(answered(handbook, page, answer))));
        return all;
    }

    private static JsonObject followed(FactTable.Row row, String way) {
        JsonObject json = new JsonObject();
        json.addProperty("id", row.id().toString());
        json.addProperty("asked", row.label());
        json.addProperty(
                "answer",
                row.lines().stream().map(line -> Inline.plain(line.words())).collect(Collectors.joining("\n")));
        JsonArray ways = new JsonArray();
        ways.add(way);
        json.add("hangs-on", ways);
        return json;
    }

    private static JsonObject answered(Handbook handbook, Page page, Content.Text answer) {
        JsonObject json = new JsonObject();
        json.addProperty("id", page.id().toString());
        json.addProperty("asked", page.title());
        json.addProperty("answer", PlainText.of(answer).collect(Collectors.joining("\n")));
        NodeId working = page.id().child("working");
        JsonArray inputs = new JsonArray();
        Stream.of("figures", "figures-and-doubts")
                .flatMap(name -> text(handbook, working.child(name)).stream())
                .flatMap(table -> table.blocks().stream())
                .filter(Block.Table.class::isInstance)
                .flatMap(table -> ((Block.Table) table).rows().stream())
                .forEach(row -> inputs.add(input(row)));
        json.add("inputs", inputs);
        return json;
    }

    /** The three columns of the working. */
    private static JsonObject input(List<List<Inline>> row) {
        JsonObject json = new JsonObject();
        json.addProperty("name", Inline.plain(row.get(0)));
        json.addProperty("value", Inline.plain(row.get(1)));
        json.addProperty("origin", Inline.plain(row.get(2)));
        return json;
    }

    private static Optional<Content.Text> text(Handbook handbook, NodeId id) {
        return handbook.find(id).filter(Content.Text.class::isInstance).map(Content.Text.class::cast);
    }

    private static Stream<FactTable> tables(Handbook handbook) {
        return handbook.walk().filter(FactTable.class::isInstance).map(FactTable.class::cast);
    }

    /** The one fact that a part came from. */
    private static Optional<String> source(Node part) {
        List<From.Source> sources = part.stamp().from().sources();
        return sources.size() == 1 && sources.get(0).sort() == From.Sort.FACT
                ? Optional.of(sources.get(0).name())
                : Optional.empty();
    }

    /** Whether a row says the fact itself: it is named by the same key then. */
    private static boolean states(FactTable.Row row, String way) {
        return last(row.id().within(), '.').equals(last(way, '/'));
    }

    private static String last(String name, char between) {
        return name.substring(name.lastIndexOf(between) + 1);
    }
}
