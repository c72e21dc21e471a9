package bayfolio.publish;

import bayfolio.document.Handbook;
import java.util.List;

/**
 * Holds the marks of a handbook against what its parts came from: what came of something for staff must be marked as
 * theirs, or renters would read it.
 */
final class Marks {
    private Marks() {}

    /**
     * @param handbook as renters see it
     * @return one sentence for each part that tells something, its name first
     */
    static List<String> of(Handbook handbook) {
        return handbook.walk()
                .flatMap(node -> node.stamp().from().secret().stream()
                        .map(source -> handbook.unit() + "/" + node.id() + ": comes of `" + source.name() + "` ("
                                + source.at() + "), which is for staff"))
                .toList();
    }
}
