package bayfolio.render;

import bayfolio.document.Handbook;
import bayfolio.template.TemplateProblem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
     * @param media those that this reader gets
     * @return by path below the root of the readers' files; each in the folder of the coach
     */
    Map<String, byte[]> files(Handbook handbook, Media media);

    /** The files that all coaches share. */
    Map<String, byte[]> shared(List<Entry> coaches);

    /**
     * What stays of a coach that is not made anew, beside the files in its folder; nothing where it was not given out in
     * this way.
     *
     * @param own its files, by path below the root
     */
    Optional<Kept> kept(String unit, Map<String, byte[]> own);

    /** @param needed the folder of shared files that its own refer to, below the root */
    record Kept(Entry entry, String needed) {}

    /**
     * A coach in the list of the fleet.
     *
     * @param number painted on it; may be empty
     * @param kind how it is built, in the words of its readers; may be empty
     * @param picture path of one below the root; empty where there is none
     * @param shows what is seen on it
     */
    record Entry(String unit, String name, String number, String kind, String picture, String shows) {}
}
