package bayfolio;

import bayfolio.read.Folder;
import java.nio.file.Path;

/** Fleet folders of tests: nearly all share one library, which is read once. */
public final class Folders {
    private static final Folder FIRST = new Folder(Path.of(""));

    private Folders() {}

    public static Folder at(Path root) {
        return FIRST.at(root);
    }
}
