package bayfolio.render.web;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.PageKind;
import bayfolio.explain.Calculator;
import bayfolio.reckon.Question;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** What forms reckon with: a file for each question of a coach, for all pages that show its form. */
final class FormFigures {
    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    private FormFigures() {}

    /** In the folder of the coach; beside the page of the question. */
    static String file(Question question) {
        return PageKind.QUESTION.node(question.id()) + ".figures.js";
    }

    /** By their paths in the folder of the coach. */
    static Map<String, byte[]> of(Handbook handbook) {
        Map<String, byte[]> files = new TreeMap<>();
        handbook.walk()
                .filter(Content.Form.class::isInstance)
                .map(form -> ((Content.Form) form).calculator())
                .forEach(calculator -> files.put(file(calculator.question()), script(calculator)));
        return files;
    }

    private static byte[] script(Calculator calculator) {
        String json = GSON.toJson(Map.of(calculator.question().id(), calculator.figures()));
        String script = "window.bayfolio=window.bayfolio||{};window.bayfolio.figures=Object.assign("
                + "window.bayfolio.figures||{}," + json + ");\n";
        return script.getBytes(StandardCharsets.UTF_8);
    }
}
