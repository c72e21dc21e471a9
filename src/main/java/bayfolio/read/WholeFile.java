package bayfolio.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** A file that a program makes anew whenever it is asked for: it is what it was, or what it is now, and never half of it. */
public record WholeFile(Path file, byte[] bytes) {
    public void make() throws IOException {
        Path beside = file.resolveSibling("." + file.getFileName() + "-" + UUID.randomUUID());
        try {
            Files.write(beside, bytes);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
