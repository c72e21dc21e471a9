package bayfolio.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * What the system says of a file, whatever links lead to it: while it is the same, so is what the file says.
 *
 * @param says by the names that Java gives it
 */
record FileStamp(Map<String, Object> says) {
    /** A file that is written twice within the grain of its system's clock shows nothing of it. */
    private static final Duration GRAIN = Duration.ofSeconds(3);

    /** Nothing where no file is, where it is so new that it may be written again at the same time, or where too little is told. */
    static Optional<FileStamp> of(Path file) {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return Optional.empty();
        }
        try {
            // The time of change cannot be set back as that of writing can.
            Map<String, Object> now =
                    Files.readAttributes(file, "unix:isRegularFile,size,lastModifiedTime,ctime,fileKey");
            boolean settled = now.get("ctime") instanceof FileTime changed
                    && changed.toInstant().plus(GRAIN).isBefore(Instant.now());
            return Optional.of(new FileStamp(now))
                    .filter(it -> settled && Boolean.TRUE.equals(now.get("isRegularFile")));
        } catch (IOException none) {
            return Optional.empty();
        }
    }
}
