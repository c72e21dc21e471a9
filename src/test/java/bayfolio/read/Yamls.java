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
