package bayfolio.render;

import bayfolio.document.Handbook;
import bayfolio.template.TemplateProblem;
import java.util.List;
import java.util.Map;

/**
 * One way to give out handbooks: a document, with the words of a language and a theme, into files. Each is a package of
 * its own, and a line in the list of outputs.
 */
public interface Output {
    /** What is wrong with what it is made with; nothing is published then. */
    List<TemplateProblem> complaints();

    /**
     * The files of one coach.
     *
     * @param handbook as a reader sees it
     * @return by path below the root of the readers' files; each in the folder of the coach
     */
    Map<String, byte[]> files(Handbook handbook);

    /**
     * The files that all coaches share.
     *
     * @param languages of the fleet, the default first
     */
    Map<String, byte[]> shared(String fleet, List<String> languages, List<Entry> coaches);

    /** A coach in the list of the fleet. */
    record Entry(String unit, String name) {}
}
