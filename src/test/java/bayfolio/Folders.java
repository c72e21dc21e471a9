package bayfolio;

import bayfolio.cli.Bayfolio;
import bayfolio.read.Folder;
import java.io.PrintWriter;
import java.nio.file.Path;

/** Fleet folders of tests: nearly all share one library, which is read once. */
public final class Folders {
    private static final Folder FIRST = new Folder(Path.of(""));

    private Folders() {}

    public static Folder at(Path root) {
        return FIRST.at(root);
    }

    /** Runs a command as somebody would who types it. */
    public static int run(PrintWriter out, PrintWriter err, String... words) {
        return Bayfolio.run(FIRST, out, err, words);
    }
}
