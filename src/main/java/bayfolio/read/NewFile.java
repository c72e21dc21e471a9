package bayfolio.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** A file that is not there yet, whole or not at all: of two who write it at once, one is refused. */
public record NewFile(Path file, byte[] bytes) {
    /** @throws java.nio.file.FileAlreadyExistsException where it is there by now; that one stays as it is */
    public void make() throws IOException {
        Path beside = file.resolveSibling("." + file.getFileName() + "-" + UUID.randomUUID());
        try {
            Files.write(beside, bytes, StandardOpenOption.CREATE_NEW);
            try {
                Files.createLink(file, beside);
            } catch (UnsupportedOperationException noLinks) {
                Files.move(beside, file);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
