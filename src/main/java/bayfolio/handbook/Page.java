package bayfolio.handbook;

import bayfolio.prose.Target;
import java.util.List;

/**
 * A page of a handbook.
 *
 * @param home what links to it are addressed to
 * @param path within the folder of the coach, made of ids and never of titles
 * @param opening what stands before the first section
 * @param urgent whether it is read in danger: one screen, with nothing on it but what is to be done
 */
public record Page(
        Target home, String path, String title, List<Content> opening, List<Section> sections, boolean urgent) {
    public Page {
        opening = List.copyOf(opening);
        sections = List.copyOf(sections);
    }

    /** One that there is time to read. */
    public Page(Target home, String path, String title, List<Content> opening, List<Section> sections) {
        this(home, path, title, opening, sections, false);
    }
}
