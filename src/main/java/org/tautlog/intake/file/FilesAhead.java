package org.tautlog.intake.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Works on several files at once, and does what follows from each in the order of the files and on the caller's thread:
 * what comes of it is the same on any number of threads.
 *
 * <p>A file that others are before waits once so many bytes hang on what follows from it. Where the caller's thread fails or
 * is interrupted the others are interrupted, and what they had to say is lost.
 */
public final class FilesAhead {
    /** Bytes that may hang on what waits, in all lanes together. */
    private static final int MOST_WAITING = 1 << 23;

    private FilesAhead() {}

    /** Takes what follows from a piece of work. */
    public interface Turn {
        /**
         * Does something when it is this file's turn, behind all that was given before.
         *
         * @param bytes about how many bytes hang on it, at least 1
         * @param what what is to be done
         */
        void then(int bytes, Runnable what);
    }

    /** The work on one file. */
    public interface Work {
        /**
         * Does the work, on whatever thread.
         *
         * @param turn takes what follows from it
         */
        void run(Turn turn);
    }

    /**
     * Works.
     *
     * @param files the work on each file
     * @param threads on how many at once; with 1 on the caller's thread
     */
    public static void run(List<? extends Work> files, int threads) {
        int most = Math.min(threads, files.size());
        if (most < 2) {
            files.forEach(work -> work.run((bytes, what) -> what.run()));
            return;
        }
        var others = Executors.newFixedThreadPool(most, FilesAhead::daemon);
        try {
            var lanes = new ArrayList<@Nullable Lane>();
            for (int i = 0; i < files.size(); i++) {
                while (lanes.size() < Math.min(i + most, files.size())) {
                    var lane = new Lane(files.get(lanes.size()), MOST_WAITING / most);
                    lanes.add(lane);
                    others.execute(lane);
                }
                var lane = lanes.set(i, null);
                if (lane != null) {
                    lane.takeTurn();
                }
            }
        } finally {
            others.shutdownNow();
        }
    }

    private static Thread daemon(Runnable work) {
        var thread = new Thread(work, "reader");
        thread.setDaemon(true);
        return thread;
    }

    /** What follows from one file, waiting for its turn; nothing stands for its end. */
    private static final class Lane implements Runnable, Turn {
        private final Work work;
        private final int most;
        private final Semaphore room;
        private final BlockingQueue<Optional<Step>> waiting = new LinkedBlockingQueue<>();

        private record Step(int bytes, Runnable what) {}

        Lane(Work work, int most) {
            this.work = work;
            this.most = most;
            this.room = new Semaphore(most);
        }

        @Override
        public void run() {
            try {
                work.run(this);
            } catch (RuntimeException | Error failed) {
                waiting.add(Optional.of(new Step(0, () -> {
                    throw failed;
                })));
            }
            waiting.add(Optional.empty());
        }

        @Override
        public void then(int bytes, Runnable what) {
            // What is larger than all the room has it for itself.
            int taken = Math.min(bytes, most);
            try {
                room.acquire(taken);
            } catch (InterruptedException e) {
                throw given();
            }
            waiting.add(Optional.of(new Step(taken, what)));
        }

        void takeTurn() {
            try {
                for (var step = waiting.take(); step.isPresent(); step = waiting.take()) {
                    step.get().what().run();
                    room.release(step.get().bytes());
                }
            } catch (InterruptedException e) {
                throw given();
            }
        }

        private static CancellationException given() {
            Thread.currentThread().interrupt();
            return new CancellationException("the reading was interrupted");
        }
    }
}
