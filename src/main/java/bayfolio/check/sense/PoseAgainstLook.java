package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Pose;
import bayfolio.model.Switch;
import bayfolio.source.Located;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Flags a pose that is drawn and that the words for the same state contradict. */
public final class PoseAgainstLook implements Rule {
    private static final Map<Pose, Pose> OPPOSITES = new EnumMap<>(Map.of(
            Pose.UP, Pose.DOWN,
            Pose.DOWN, Pose.UP,
            Pose.LEFT, Pose.RIGHT,
            Pose.RIGHT, Pose.LEFT,
            Pose.ALONG, Pose.ACROSS,
            Pose.ACROSS, Pose.ALONG,
            Pose.IN, Pose.OUT,
            Pose.OUT, Pose.IN,
            Pose.LIT, Pose.DARK,
            Pose.DARK, Pose.LIT));

    private static final Map<Pose, Pattern> WORDS = new EnumMap<>(Map.of(
            Pose.UP, words("up|upper|top|upright"),
            Pose.DOWN, words("down|lower|bottom"),
            Pose.LEFT, words("left"),
            Pose.RIGHT, words("right"),
            Pose.ALONG, words("along|in line"),
            Pose.ACROSS, words("across"),
            Pose.IN, words("in|flush|touches|against|no rod"),
            Pose.OUT, words("out|rod shows|rod show"),
            Pose.LIT, words("lit|burns|glows|steady|on"),
            Pose.DARK, words("dark|out|off|blank|no")));

    private static Pattern words(String some) {
        return Pattern.compile("\\b(" + some + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().switches().stream()
                .flatMap(it -> Stream.concat(
                        contradicted(it, Switch.ON_POSE, Switch.ON_LOOK),
                        contradicted(it, Switch.OFF_POSE, Switch.OFF_LOOK)));
    }

    /** Where the words have that of the other pose, and none of this one. */
    private static Stream<Finding> contradicted(Switch it, Key<List<Located<Pose>>> poses, Key<String> look) {
        return it.facts().find(look).stream()
                .flatMap(words -> it.facts().find(poses).stream()
                        .flatMap(List::stream)
                        .filter(pose -> says(OPPOSITES.get(pose.value()), words) && !says(pose.value(), words))
                        .map(pose -> Finding.warning(
                                        "pose-against-look",
                                        pose.at(),
                                        "switch `" + it.id() + "` is drawn `" + Type.word(pose.value()) + "`, and `"
                                                + look.name() + "` says otherwise: " + words)
                                .mend("Look at the coach, and correct the one or the other.")));
    }

    private static boolean says(@Nullable Pose pose, String words) {
        Pattern pattern = pose == null ? null : WORDS.get(pose);
        return pattern != null && pattern.matcher(words).find();
    }
}
