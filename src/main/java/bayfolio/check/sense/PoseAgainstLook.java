package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Gauge;
import bayfolio.model.Pose;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a pose that is drawn and that the words for the same state contradict. */
public final class PoseAgainstLook implements Rule {
    /** By which words a look tells each. */
    private static final Map<Pose, Pattern> WORDS = new EnumMap<>(Map.ofEntries(
            Map.entry(Pose.UP, words("up|upper|top|upright")),
            Map.entry(Pose.DOWN, words("down|lower|bottom")),
            Map.entry(Pose.LEFT, words("left")),
            Map.entry(Pose.RIGHT, words("right")),
            Map.entry(Pose.LEVEL, words("level")),
            Map.entry(Pose.ALONG, words("along|in line")),
            Map.entry(Pose.ACROSS, words("across")),
            Map.entry(Pose.IN, words("in|inside|flush|level|touches|against|no rod|deeper")),
            Map.entry(Pose.OUT, words("out|rod|hangs|level with its neighbor")),
            Map.entry(Pose.MIDDLE, words("middle|level")),
            Map.entry(Pose.LIT, words("lit|burns|glows|steady|on")),
            Map.entry(Pose.DARK, words("dark|out|off|blank")),
            Map.entry(Pose.BLINKING, words("blinks?|blinking|flash|flashes|pulses?"))));

    private static Pattern words(String some) {
        return Pattern.compile("\\b(" + some + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Stream.concat(
                coach.unit().switches().stream()
                        .flatMap(it -> Stream.of(
                                        contradicted(it, Switch.ON_POSE, Switch.ON_LOOK),
                                        contradicted(it, Switch.OFF_POSE, Switch.OFF_LOOK),
                                        alike(it))
                                .flatMap(found -> found)),
                coach.unit().gauges().stream().flatMap(it -> contradicted(it, Gauge.NORMAL_POSE, Gauge.NORMAL)));
    }

    /** Where the words have another pose, and not this one. */
    private static Stream<Finding> contradicted(Thing it, Key<List<Located<Pose>>> poses, Key<String> look) {
        return it.facts().find(look).stream()
                .flatMap(words -> it.facts().find(poses).stream()
                        .flatMap(List::stream)
                        .filter(pose -> !says(pose.value(), words)
                                && Stream.of(Pose.values()).anyMatch(other -> says(other, words)))
                        .map(pose -> Finding.warning(
                                        "pose-against-look",
                                        pose.at(),
                                        it.kind() + " `" + it.id() + "` is drawn `" + Type.word(pose.value())
                                                + "`, and `" + look.name() + "` says otherwise: " + words)
                                .mend("Look at the coach, and correct the one or the other.")));
    }

    /** Drawn alike in both states, it would teach nobody which is which. */
    private static Stream<Finding> alike(Switch it) {
        Set<Pose> on = Set.copyOf(it.facts().all(Switch.ON_POSE));
        return !on.isEmpty() && on.equals(Set.copyOf(it.facts().all(Switch.OFF_POSE)))
                ? Stream.of(Finding.warning(
                                "pose-against-look",
                                it.facts().at(Switch.OFF_POSE),
                                "switch `" + it.id() + "` is drawn alike ON and OFF")
                        .mend("Say how the two differ, or take both out."))
                : Stream.of();
    }

    private static boolean says(Pose pose, String words) {
        return Objects.requireNonNull(WORDS.get(pose)).matcher(words).find();
    }
}
