package bayfolio.rename;

import bayfolio.read.Edit;
import bayfolio.read.Folder;
import bayfolio.read.HeadedText;
import bayfolio.read.LineDifference;
import bayfolio.read.Replacement;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.read.Swap;
import bayfolio.read.Swaps;
import bayfolio.source.Hidden;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Files of a fleet as they are to be, before any of it is written. */
final class Drafts {
    private final Folder folder;
    private final Map<String, byte[]> before = new TreeMap<>();
    private final Map<String, String> after = new TreeMap<>();
    private final List<Against> refused = new ArrayList<>();

    Drafts(Folder folder) {
        this.folder = folder;
    }

    /** What cannot be edited, each where it stands. */
    List<Against> refused() {
        return List.copyOf(refused);
    }

    /** Edits of a YAML file, or of the head of a text, one after the other. */
    void edit(String path, boolean head, List<Edit> edits, Place at) throws IOException {
        Optional<String> text = text(path, at);
        if (text.isEmpty() || edits.isEmpty()) {
            return;
        }
        SourceFile file = new SourceFile(path, text.get());
        try {
            Optional<HeadedText> headed = head ? HeadedText.of(file) : Optional.empty();
            after.put(path, headed.isPresent() ? headed.get().with(edits) : Rewrite.of(file, edits));
        } catch (RewriteException e) {
            refuse(at, String.valueOf(e.getMessage()));
        }
    }

    /** Words in the place of others, at places of the text as it lies on disk; so before any edit of that file. */
    void replace(String path, List<Replacement> all) throws IOException {
        Place at = all.get(0).at();
        Optional<String> text = text(path, at);
        if (text.isPresent()) {
            try {
                after.put(path, Replacement.in(text.get(), all));
            } catch (RewriteException e) {
                refuse(at, String.valueOf(e.getMessage()));
            }
        }
    }

    /** Another text as a whole. */
    void put(SourceFile file) throws IOException {
        if (text(file.path(), Place.whole(file)).isPresent()) {
            after.put(file.path(), file.text());
        }
    }

    private void refuse(Place at, String sentence) {
        refused.add(new Against(at, sentence));
    }

    private Optional<String> text(String path, Place at) throws IOException {
        String known = after.get(path);
        if (known != null) {
            return Optional.of(known);
        }
        Path file = folder.root().resolve(path);
        if (!Files.isRegularFile(file)) {
            refuse(
                    at,
                    "this file is one that the program brings along, and cannot be changed; copy it into `units/shared`"
                            + " with all others that name it");
            return Optional.empty();
        }
        byte[] bytes = Files.readAllBytes(file);
        String text = decoded(path, bytes);
        if (!sameAs(folder.text(path, told -> {}), text)) {
            throw new FileSystemException(
                    path, null, "somebody has changed it meanwhile; nothing was written, try again");
        }
        before.put(path, bytes);
        after.put(path, text);
        return Optional.of(text);
    }

    private static String decoded(String path, byte[] bytes) throws IOException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new FileSystemException(path, null, "it is not UTF-8 text");
        }
    }

    /** Line ends, the mark of an encoding and what nobody sees are not as they were read. */
    private static boolean sameAs(Optional<SourceFile> read, String text) {
        return read.filter(file -> lines(file.text()).equals(lines(text))).isPresent();
    }

    private static List<String> lines(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints()
                .filter(point -> point != 0xFEFF)
                .forEach(point -> shown.appendCodePoint(Hidden.is(point) ? 0xFFFD : point));
        return shown.toString().lines().toList();
    }

    /** All texts that are otherwise than on disk, by their paths. */
    Map<String, String> changed() {
        Map<String, String> changed = new TreeMap<>(after);
        changed.keySet().removeIf(path -> written(path).equals(after.get(path)));
        return changed;
    }

    private String written(String path) {
        return new String(before.getOrDefault(path, new byte[0]), StandardCharsets.UTF_8);
    }

    String difference() {
        StringBuilder told = new StringBuilder();
        changed().forEach((path, text) -> told.append(LineDifference.of(path, written(path), text)));
        return told.toString();
    }

    /**
     * Writes all of it.
     *
     * @throws IOException where a file says something else by now, or cannot be written; all stay as they are then
     */
    void make() throws IOException {
        List<Swap> swaps = new ArrayList<>();
        changed()
                .forEach((path, text) -> swaps.add(new Swap(
                        folder.root().resolve(path),
                        before.getOrDefault(path, new byte[0]),
                        text.getBytes(StandardCharsets.UTF_8))));
        new Swaps(swaps).make();
    }
}
