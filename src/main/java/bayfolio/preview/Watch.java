package bayfolio.preview;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Tells when something in a folder has changed, and all of it is written. */
final class Watch implements AutoCloseable {
    /** An editor writes a file in several steps. */
    private static final long QUIET = 15;

    /** What no page is made of. */
    private static final Set<String> OTHERS = Set.of("site-out", ".git", "target", "node_modules");

    private final Path root;
    private final WatchService service;

    Watch(Path root) throws IOException {
        this.root = root.toRealPath();
        this.service = this.root.getFileSystem().newWatchService();
        register(this.root);
    }

    private void register(Path from) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                if (!folder.equals(root) && OTHERS.contains(String.valueOf(folder.getFileName()))) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                folder.register(
                        service,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException gone) {
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /**
     * @param wait whether to wait for a change
     * @return the folders, below the root, in which something is another; nothing when it is closed
     */
    Optional<Set<Path>> change(boolean wait) throws IOException, InterruptedException {
        Set<Path> folders = new HashSet<>();
        try {
            @Nullable WatchKey key = wait ? service.take() : service.poll();
            while (key != null) {
                Path folder = (Path) key.watchable();
                for (WatchEvent<?> event : key.pollEvents()) {
                    // New folders are watched from now on.
                    if (event.context() instanceof Path made && Files.isDirectory(folder.resolve(made))) {
                        register(folder.resolve(made));
                    }
                }
                folders.add(root.relativize(folder));
                key.reset();
                key = service.poll(QUIET, TimeUnit.MILLISECONDS);
            }
            return Optional.of(folders);
        } catch (ClosedWatchServiceException closed) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
