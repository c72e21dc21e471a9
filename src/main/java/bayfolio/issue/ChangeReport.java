package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import java.util.List;
import java.util.stream.Collectors;

/** Changes for people who keep the fleet: a line each, what it was and what it is below, then what it touches. */
public final class ChangeReport {
    /** Longer texts are cut off; the pages have them whole. */
    private static final int LONGEST = 160;

    private ChangeReport() {}

    /** @param which states were compared, such as {@code edition 3 and now} */
    public static String of(String coach, String which, List<Consequences> changes) {
        if (changes.isEmpty()) {
            return coach + ": " + which + " say the same.\n";
        }
        StringBuilder report = new StringBuilder(coach + ": " + which + ", " + count(changes.size(), "change") + "\n");
        for (Consequences each : changes) {
            Changed changed = each.changed();
            report.append('\n').append(line(changed)).append('\n');
            report.append(ConsequenceLines.line("on", List.copyOf(changed.pages())));
            report.append(ConsequenceLines.of(each));
        }
        return report.toString();
    }

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static String line(Changed changed) {
        return changed.change().accept(new Lines()) + (changed.technical() ? "" : " (editorial)");
    }

    private static final class Lines implements Change.Visitor<String> {
        @Override
        public String added(Change.Added change) {
            return "added: " + change.thing() + ", " + count(change.values().size(), "fact");
        }

        @Override
        public String removed(Change.Removed change) {
            return "removed: " + change.thing() + ", " + count(change.values().size(), "fact");
        }

        @Override
        public String renamed(Change.Renamed change) {
            return "renamed: " + change.thing().kind() + " " + change.was() + " is "
                    + change.thing().id() + " now" + (change.by() == Change.By.ROLE ? ", by its roles" : "");
        }

        @Override
        public String moved(Change.Moved change) {
            return "moved: " + change.thing()
                    + change.values().stream().map(Lines::value).collect(Collectors.joining());
        }

        @Override
        public String relabelled(Change.Relabelled change) {
            return "relabelled: " + change.thing() + value(change.value());
        }

        @Override
        public String atPickup(Change.AtPickup change) {
            return "at pickup: " + change.thing() + value(change.value());
        }

        @Override
        public String fact(Change.ValueChanged change) {
            return "fact: " + change.of() + value(change.value());
        }

        private static String value(Change.Value value) {
            return "\n  " + value.way() + ": "
                    + (value.before().isEmpty() ? "not stated" : cut(value.before())) + " -> "
                    + (value.after().isEmpty() ? "not stated" : cut(value.after()));
        }

        @Override
        public String page(Change.PageAdded change) {
            return "page added: " + change.page() + ", " + change.title();
        }

        @Override
        public String page(Change.PageRemoved change) {
            return "page removed: " + change.page() + ", " + change.title();
        }

        @Override
        public String step(Change.StepAdded change) {
            return "step added: " + change.step() + "\n  " + cut(change.text());
        }

        @Override
        public String step(Change.StepRemoved change) {
            return "step removed: " + change.step() + "\n  " + cut(change.text());
        }

        @Override
        public String steps(Change.StepsReordered change) {
            return "steps in another order: " + change.list() + orders(change.before(), change.after());
        }

        @Override
        public String parts(Change.PartsReordered change) {
            return "in another order: " + change.list() + orders(change.before(), change.after());
        }

        /** Where both begin and end alike, that is left out. */
        private static String orders(List<String> before, List<String> after) {
            int from = 0;
            int to = before.size();
            while (from < to && before.get(from).equals(after.get(from))) {
                from++;
            }
            while (from < to && before.get(to - 1).equals(after.get(to - 1))) {
                to--;
            }
            return order(before.subList(from, to)) + order(after.subList(from, to));
        }

        private static String order(List<String> ids) {
            return "\n  " + ids.stream().map(Lines::within).collect(Collectors.joining(", "));
        }

        private static String within(String id) {
            return id.substring(id.indexOf('#') + 1);
        }

        @Override
        public String hazard(Change.HazardAdded change) {
            return "hazard added: " + change.hazard() + "\n  " + cut(change.text());
        }

        @Override
        public String hazard(Change.HazardRemoved change) {
            return "hazard removed: " + change.hazard() + "\n  " + cut(change.text());
        }

        @Override
        public String number(Change.NumberChanged change) {
            return "worked out otherwise: " + change.question() + texts(change.before(), change.after())
                    + (change.because().isEmpty()
                            ? "\n  no fact that it hangs on is otherwise"
                            : "\n  because of " + String.join(", ", change.because()));
        }

        @Override
        public String text(Change.TextChanged change) {
            return "text: " + change.part() + texts(change.before(), change.after());
        }

        /** Where both begin alike, that is left out but for some words. */
        private static String texts(String before, String after) {
            int alike = 0;
            while (alike < Math.min(before.length(), after.length()) && before.charAt(alike) == after.charAt(alike)) {
                alike++;
            }
            int from = alike <= LONGEST / 2 ? 0 : before.lastIndexOf(' ', alike - LONGEST / 4) + 1;
            return "\n  - " + excerpt(before, from) + "\n  + " + excerpt(after, from);
        }

        private static String excerpt(String text, int from) {
            return text.isEmpty()
                    ? "nothing"
                    : (from == 0 ? "" : "… ") + cut(text.substring(Math.min(from, text.length())));
        }

        private static String cut(String text) {
            return text.codePointCount(0, text.length()) <= LONGEST
                    ? text
                    : text.substring(0, text.offsetByCodePoints(0, LONGEST - 1)) + "…";
        }
    }
}
