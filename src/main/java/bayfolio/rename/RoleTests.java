package bayfolio.rename;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a file of equipment asks of roles: {@code switch[role = gas-alarm|co-alarm, count > 1]}. */
final class RoleTests {
    private static final Pattern TEST =
            Pattern.compile("(?<=[\\[,])(\\s*(?:role|roles|not-on-this-coach)\\s*!?=\\s*)([a-z0-9|\\- ]+)(?=[,\\]])");

    private RoleTests() {}

    static String renamed(String condition, String before, String after) {
        Matcher test = TEST.matcher(condition);
        StringBuilder renamed = new StringBuilder();
        while (test.find()) {
            String words = NewId.alone(before).matcher(test.group(2)).replaceAll(after);
            test.appendReplacement(renamed, Matcher.quoteReplacement(test.group(1) + words));
        }
        return test.appendTail(renamed).toString();
    }
}
