package bayfolio.document;

import bayfolio.explain.Begin;
import bayfolio.explain.Calculator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A calculator as its script reads it: fields, and the figures of the coach. */
public final class CalculatorFields {
    private CalculatorFields() {}

    /** Text, numbers, yes or no, lists and maps of such, ready to be written as JSON. */
    public static Map<String, Object> of(Calculator calculator) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("fields", fields(calculator, Begin.USUAL));
        json.put("figures", calculator.figures());
        return json;
    }

    /** Those alone, as they are at first in a case. */
    public static List<Map<String, Object>> fields(Calculator calculator, Begin begin) {
        return calculator.fields(begin).stream().map(CalculatorFields::field).toList();
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
