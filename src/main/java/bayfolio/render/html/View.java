package bayfolio.render.html;

import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names for a template, put together one by one. Of values that are one of several kinds, the kinds
 * that it is not are known too, and false, so that a template can choose.
 */
public final class View {
    private static final Value NO = new Value.Flag(false);
    private static final Value UNKNOWN = new Value.Unknown();

    private final Map<String, Value> values = new LinkedHashMap<>();
    private Set<String> others = Set.of();

    /**
     * @param kinds that the value may be of; each is a name, true for its own kind only
     */
    public static View oneOf(Set<String> kinds) {
        View view = new View();
        view.others = kinds;
        return view;
    }

    public View with(String name, String text) {
        values.put(name, new Value.Text(text));
        return this;
    }

    public View with(String name, boolean yes) {
        values.put(name, new Value.Flag(yes));
        return this;
    }

    public View with(String name, List<View> each) {
        values.put(
                name, new Value.Many(name, each.stream().<Value>map(View::value).toList()));
        return this;
    }

    public View with(String name, View inner) {
        values.put(name, inner.value());
        return this;
    }

    Value value() {
        return new Value.Inner(names());
    }

    public Names names() {
        Map<String, Value> own = new HashMap<>(values);
        Set<String> kinds = others;
        return new Names() {
            @Override
            public Value find(String name) {
                Value value = own.get(name);
                if (value != null) {
                    return value;
                }
                return kinds.contains(name) ? NO : UNKNOWN;
            }

            @Override
            public Collection<String> known() {
                List<String> known = new ArrayList<>(own.keySet());
                known.addAll(kinds);
                return known;
            }
        };
    }
}
