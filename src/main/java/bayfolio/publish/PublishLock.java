package bayfolio.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * That nobody else publishes into a folder, in this program or another one. The system ends it with the process that
 * holds it, however that ends: a file that is left behind locks nothing.
 */
final class PublishLock implements AutoCloseable {
    /**
     * The files locked by this program. A second channel of one program must not even be opened: closing it would end
     * the lock of the first, as POSIX has it.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    /** Behind what the file says, so that others can read who holds it where a lock keeps them from reading. */
    private static final long LOCKED = 1L << 40;

    private static final Duration PAUSE = Duration.ofMillis(50);

    private final Path file;
    private final FileChannel channel;

    private PublishLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * @param folder what it is the lock of, for the sentence
     * @param within the folder of its file, which is there
     * @throws PublishException when somebody else still holds it after that time
     */
    static PublishLock take(Path folder, Path within, Duration patience) throws IOException, PublishException {
        Path real = within.toRealPath().resolve("lock");
        long begun = System.nanoTime();
        for (Optional<PublishLock> lock = attempt(real); ; lock = attempt(real)) {
            if (lock.isPresent()) {
                return lock.get();
            }
            if (System.nanoTime() - begun >= patience.toNanos()) {
                throw new PublishException("`" + folder + "` is being published into by " + holder(real)
                        + "; wait until that has ended, or choose another folder with --out.");
            }
            pause();
        }
    }

    private static Optional<PublishLock> attempt(Path file) throws IOException {
        if (!HELD.add(file)) {
            return Optional.empty();
        }
        Optional<PublishLock> lock = Optional.empty();
        try {
            lock = locked(file);
        } finally {
            if (lock.isEmpty()) {
                HELD.remove(file);
            }
        }
        return lock;
    }

    @SuppressWarnings("MustBeClosedChecker") // the lock closes it
    private static Optional<PublishLock> locked(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        boolean taken = false;
        try {
            FileLock lock = channel.tryLock(LOCKED, 1, false);
            if (lock == null) {
                return Optional.empty();
            }
            String holder = "process " + ProcessHandle.current().pid() + " since "
                    + Instant.now().truncatedTo(ChronoUnit.SECONDS) + "\n";
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(holder.getBytes(StandardCharsets.UTF_8)));
            taken = true;
            return Optional.of(new PublishLock(file, channel));
        } catch (OverlappingFileLockException e) {
            // Held in this program by another loading of this class.
            return Optional.empty();
        } finally {
            if (!taken) {
                channel.close();
            }
        }
    }

    private static String holder(Path file) throws IOException {
        if (HELD.contains(file)) {
            return "this program already";
        }
        String holder = Files.readString(file).strip();
        return holder.isEmpty() ? "another process" : holder;
    }

    private static void pause() throws PublishException {
        try {
            Thread.sleep(PAUSE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new PublishException("Publishing was stopped; nothing was changed.");
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            HELD.remove(file);
        }
    }
}
