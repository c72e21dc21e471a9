package bayfolio.read;

import java.util.stream.Collectors;

/** A value as YAML in brackets, which every reader takes. */
final class Yamls {
    private Yamls() {}

    static String of(Value value) {
        return value instanceof Value.Entries record
                ? record.values().entrySet().stream()
                        .map(entry -> entry.getKey() + ": " + inBrackets(entry.getValue()) + "\n")
                        .collect(Collectors.joining())
                : inBrackets(value) + "\n";
    }

    /** A line a fact, as people write. */
    static String block(Value.Entries value) {
        StringBuilder text = new StringBuilder();
        block(value, "", text);
        return text.toString();
    }

    private static void block(Value.Entries record, String indent, StringBuilder text) {
        record.values().forEach((key, value) -> {
            text.append(indent).append(key).append(':');
            if (value instanceof Value.Entries inner && !inner.values().isEmpty()) {
                text.append('\n');
                block(inner, indent + "  ", text);
            } else if (value instanceof Value.Elements list && !list.plain()) {
                text.append('\n');
                list.values().forEach(each -> element(each, indent + "  ", text));
            } else {
                text.append(' ')
                        .append(value instanceof Value.Scalar scalar ? Spelling.of(scalar, false) : inBrackets(value))
                        .append('\n');
            }
        });
    }

    private static void element(Value element, String indent, StringBuilder text) {
        if (element instanceof Value.Entries record) {
            int begin = text.length();
            block(record, indent + "  ", text);
            text.replace(begin, begin + indent.length() + 2, indent + "- ");
        } else {
            text.append(indent).append("- ").append(inBrackets(element)).append('\n');
        }
    }

    private static String inBrackets(Value value) {
        if (value instanceof Value.Entries record) {
            return record.values().entrySet().stream()
                    .map(entry -> entry.getKey() + ": " + inBrackets(entry.getValue()))
                    .collect(Collectors.joining(",\n  ", "{", "}"));
        }
        if (value instanceof Value.Elements list) {
            return list.values().stream().map(Yamls::inBrackets).collect(Collectors.joining(",\n  ", "[", "]"));
        }
        return Spelling.of((Value.Scalar) value, true);
    }
}
