package bayfolio.render.web;

import bayfolio.reckon.Calculator;
import com.google.gson.Gson;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A calculator as its script reads it. */
final class CalculatorJson {
    private static final Gson GSON = new Gson();

    private CalculatorJson() {}

    static String of(Calculator calculator) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "fields",
                calculator.fields().stream().map(CalculatorJson::field).toList());
        json.put("figures", calculator.figures());
        return GSON.toJson(json);
    }

    private static Map<String, Object> field(Calculator.Field field) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", field.name());
        json.put("label", field.label());
        if (field.kind() instanceof Calculator.Kind.Tick tick) {
            json.put("ticked", tick.ticked());
        } else if (field.kind() instanceof Calculator.Kind.Number number) {
            json.put("value", number.value());
            json.put("least", number.least());
            json.put("most", number.most());
            json.put("step", number.step());
        } else if (field.kind() instanceof Calculator.Kind.Choice choice) {
            json.put("choices", List.copyOf(choice.choices()));
            json.put("chosen", choice.chosen());
        }
        return json;
    }
}
