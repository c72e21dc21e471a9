package bayfolio.publish;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Threads that take one thing of a list after the other, as many as there are processors. */
final class Workers {
    private Workers() {}

    /** What is done with each. */
    interface Work<T> {
        void of(T each) throws IOException;
    }

    /** Ends when all are done, or with the failure of the first in the order of the list that failed. */
    static <T> void each(List<T> all, Work<T> work) throws IOException {
        ExecutorService threads = Executors.newFixedThreadPool(
                Math.max(1, Math.min(all.size(), Runtime.getRuntime().availableProcessors())));
        try {
            List<Future<?>> done = new ArrayList<>();
            for (T each : all) {
                done.add(threads.submit(() -> {
                    work.of(each);
                    return null;
                }));
            }
            for (Future<?> each : done) {
                each.get();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("it was stopped", stopped);
        } catch (ExecutionException failed) {
            throw thrown(Objects.requireNonNull(failed.getCause()));
        } finally {
            end(threads);
        }
    }

    private static IOException thrown(Throwable cause) {
        if (cause instanceof IOException failed) {
            return failed;
        }
        if (cause instanceof RuntimeException failed) {
            throw failed;
        }
        if (cause instanceof Error failed) {
            throw failed;
        }
        return new IOException(cause);
    }

    /** Nothing writes any more when it returns. */
    private static void end(ExecutorService threads) {
        threads.shutdownNow();
        boolean interrupted = false;
        while (true) {
            try {
                if (threads.awaitTermination(1, TimeUnit.MINUTES)) {
                    break;
                }
            } catch (InterruptedException again) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
