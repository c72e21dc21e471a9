package bayfolio.read;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Several files with other texts in their places: all of them or none. */
public record Swaps(List<Swap> all) {
    public Swaps {
        all = List.copyOf(all);
    }

    /**
     * @throws IOException where one of them says something else by now, or cannot be written; those that were written are put
     *     back then
     */
    public void make() throws IOException {
        List<Swap> made = new ArrayList<>();
        try {
            for (Swap swap : all) {
                swap.make();
                made.add(swap);
            }
        } catch (IOException failed) {
            putBack(made, failed);
            throw failed;
        }
    }

    private static void putBack(List<Swap> made, IOException failed) throws IOException {
        Collections.reverse(made);
        List<String> left = new ArrayList<>();
        for (Swap swap : made) {
            try {
                new Swap(swap.file(), swap.after(), swap.before()).make();
            } catch (IOException e) {
                failed.addSuppressed(e);
                left.add(swap.file().toString());
            }
        }
        if (!left.isEmpty()) {
            FileSystemException torn = new FileSystemException(
                    String.join("`, `", left),
                    null,
                    "this is written already, while another file could not be, and cannot be put back; look at it by hand");
            torn.initCause(failed);
            throw torn;
        }
    }
}
