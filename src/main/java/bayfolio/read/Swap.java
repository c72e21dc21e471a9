package bayfolio.read;

import bayfolio.source.Digest;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.Set;

/**
 * A file with another text in its place, whole or not at all.
 *
 * @param before what it held when the other text was made of it
 */
public record Swap(Path file, byte[] before, byte[] after) {
    /**
     * @throws IOException where the file says something else by now, or cannot be written; it stays as it is then
     */
    public void make() throws IOException {
        // Beside the fleet and not in it: nobody wants to keep it under version control.
        Path lock = Path.of(
                System.getProperty("java.io.tmpdir", "."),
                "bayfolio-" + Digest.of(file.toRealPath().toString()) + ".lock");
        try (FileChannel channel = FileChannel.open(
                        lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock held = channel.tryLock()) {
            if (held == null) {
                throw busy();
            }
            swapped(file.toRealPath());
        } catch (OverlappingFileLockException e) {
            throw busy();
        }
    }

    private void swapped(Path real) throws IOException {
        Path beside = Files.createTempFile(real.toAbsolutePath().getParent(), ".writing-", ".yaml");
        try {
            Files.write(beside, after);
            if (Files.getFileStore(real).supportsFileAttributeView("posix")) {
                Set<PosixFilePermission> allowed = Files.getPosixFilePermissions(real);
                Files.setPosixFilePermissions(beside, allowed);
            }
            try (FileChannel written = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            if (!Arrays.equals(Files.readAllBytes(real), before)) {
                throw new FileSystemException(
                        file.toString(), null, "somebody has changed it meanwhile; nothing was written, try again");
            }
            Files.move(beside, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private IOException busy() {
        return new FileSystemException(file.toString(), null, "another `bayfolio` is writing it; try again");
    }
}
