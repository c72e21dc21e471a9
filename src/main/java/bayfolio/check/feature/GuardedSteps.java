package bayfolio.check.feature;

import bayfolio.model.Coach;
import bayfolio.model.Kinds;
import bayfolio.procedure.Script;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Steps of a script that stand in a section by themselves, so that they fall away where nothing has its role.
 *
 * @param guard the innermost section around them
 * @param around the sections around that, from the outside
 */
record GuardedSteps(Section guard, List<Section> around) {
    private static final Pattern TAG = Pattern.compile("\\{\\{([#^/])([a-z.-]+)}}");
    private static final Pattern STEP = Pattern.compile("^1\\. ");

    /**
     * A section of a script.
     *
     * @param name {@code switch.water-pump-switch}, {@code any.item.wheel-chock}, {@code has.generator}
     * @param inverted whether it stands where that is not so
     */
    record Section(String name, boolean inverted) {
        /** The role of a thing, if it asks for one and nothing else. */
        Optional<String> role() {
            String[] words = name.split("\\.", -1);
            int kind = words[0].equals("any") ? 1 : 0;
            return !inverted
                            && words.length == kind + 2
                            && Kinds.named(words[kind]).isPresent()
                    ? Optional.of(words[kind + 1])
                    : Optional.empty();
        }

        /** Whether its text is taken on a coach; of what is neither a role nor a feature it is thought so. */
        boolean takenOn(Coach coach) {
            String[] words = name.split("\\.", -1);
            int kind = words[0].equals("any") ? 1 : 0;
            if (words[0].equals("has") && words.length == 2) {
                return !coach.unit().equipment().words().known().contains(words[1])
                        || coach.features().contains(words[1]) != inverted;
            }
            return words.length != kind + 2
                    || Kinds.named(words[kind]).isEmpty()
                    || coach.inRole(words[kind], words[kind + 1]).isEmpty() == inverted;
        }
    }

    /** All of a script, leaving out those that a text stands for where the role is lacking. */
    static List<GuardedSteps> in(Script script) {
        String body = script.body();
        List<GuardedSteps> all = new ArrayList<>();
        Deque<Section> open = new ArrayDeque<>();
        for (String line : body.split("\n", -1)) {
            if (STEP.matcher(line).find() && !open.isEmpty()) {
                Section guard = open.getLast();
                if (guard.role().isPresent() && !body.contains("{{^" + guard.name() + "}}")) {
                    List<Section> around = new ArrayList<>(open);
                    around.remove(around.size() - 1);
                    all.add(new GuardedSteps(guard, List.copyOf(around)));
                }
            }
            Matcher tag = TAG.matcher(line);
            while (tag.find()) {
                if (tag.group(1).equals("/")) {
                    open.pollLast();
                } else {
                    open.addLast(new Section(tag.group(2), tag.group(1).equals("^")));
                }
            }
        }
        return all;
    }
}
