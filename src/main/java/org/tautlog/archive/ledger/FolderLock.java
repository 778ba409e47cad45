package org.tautlog.archive.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The right to write, held by one writer at a time, in this process or any other. The operating system gives it back when
 * its holder dies, however it dies. Readers never ask for it.
 */
public final class FolderLock implements AutoCloseable {
    private static final long PATIENCE_MS = 5;

    /**
     * Static, as the thing it guards is: POSIX gives a lock up as soon as the process closes any channel on its file, so
     * that a second try from within this process must not even open it.
     */
    private static final Set<Path> HELD_BY_THIS_PROCESS = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Waits for the lock.
     *
     * @param file the file that stands for it, made where it is missing
     * @return the lock, to be closed
     * @throws IOException where the file cannot be written or the wait was interrupted
     */
    public static FolderLock take(Path file) throws IOException {
        while (true) {
            var lock = tryTake(file);
            if (lock.isPresent()) {
                return lock.get();
            }
            try {
                Thread.sleep(PATIENCE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted while waiting to write beside " + file, e);
            }
        }
    }

    /**
     * Takes the lock if nobody holds it.
     *
     * @param file the file that stands for it, made where it is missing
     * @return the lock, to be closed; empty where another holds it
     * @throws IOException where the file cannot be written
     */
    public static Optional<FolderLock> tryTake(Path file) throws IOException {
        var real = file.toAbsolutePath().resolveSibling("").toRealPath().resolve(file.getFileName());
        if (!HELD_BY_THIS_PROCESS.add(real)) {
            return Optional.empty();
        }
        boolean taken = false;
        try {
            var channel = FileChannel.open(real, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                taken = channel.tryLock() != null;
            } finally {
                if (!taken) {
                    channel.close();
                }
            }
            return taken ? Optional.of(new FolderLock(real, channel)) : Optional.empty();
        } finally {
            if (!taken) {
                HELD_BY_THIS_PROCESS.remove(real);
            }
        }
    }

    /**
     * What is done while the lock is held.
     *
     * @param <R> what comes of it
     */
    @FunctionalInterface
    public interface Work<R> {
        /**
         * Does it.
         *
         * @return what comes of it
         * @throws IOException where it fails
         */
        R run() throws IOException;
    }

    /**
     * Waits for the lock, works, and gives it back.
     *
     * @param <R> what comes of the work
     * @param file the file that stands for the lock, made where it is missing
     * @param work the work
     * @return what comes of it
     * @throws IOException where the lock cannot be had or the work fails
     */
    public static <R> R whileHeld(Path file, Work<R> work) throws IOException {
        var lock = take(file);
        try {
            return work.run();
        } finally {
            lock.close();
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            HELD_BY_THIS_PROCESS.remove(file);
        }
    }
}
