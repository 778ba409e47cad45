package org.tautlog.judge;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.signature.Scratch;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Trace;

/**
 * Judges traces on several threads and hands the judgements over in the order in which the traces came, all on the thread
 * that brings the traces: what comes out is the same on any number of threads, and its taker needs no lock.
 *
 * <p>So many traces and samples may be under way; then the thread that brings the next one judges too. A trace whose
 * judging fails throws where its judgement would have been handed over.
 */
public final class JudgesInOrder implements AutoCloseable {
    /** Traces under way for each thread. */
    static final int TRACES_A_THREAD = 16;

    /** Samples under way, however few the traces: about 24 MB with times and stages. */
    private static final long MOST_SAMPLES = 1 << 20;

    /** Takes each judgement with the curve it was made from. */
    public interface Sink {
        /**
         * Takes one.
         *
         * @param judgement the judgement
         * @param curve the curve it was made from
         */
        void accept(Judgement judgement, Curve curve);
    }

    private final Function<Trace, Judgement> judge;
    private final Sink sink;
    private final int mostTraces;
    private final ExecutorService others;
    private final Deque<Task> underWay = new ArrayDeque<>();
    private long samples;

    /**
     * Judges by one specification.
     *
     * @param specification what the plant released for this joint
     * @param threads how many threads judge, the one that brings the traces among them; at least 1
     * @param sink takes each judgement
     */
    public JudgesInOrder(JointSpecification specification, int threads, Sink sink) {
        this(keepingScratch(specification), threads, sink);
    }

    /** No more scratch is made than threads judge at once. */
    private static Function<Trace, Judgement> keepingScratch(JointSpecification specification) {
        var free = new ConcurrentLinkedDeque<Scratch>();
        return trace -> {
            var scratch = Objects.requireNonNullElseGet(free.poll(), Scratch::new);
            try {
                return Judge.judge(trace, specification, scratch);
            } finally {
                free.push(scratch);
            }
        };
    }

    JudgesInOrder(Function<Trace, Judgement> judge, int threads, Sink sink) {
        if (threads < 1) {
            throw new IllegalArgumentException("threads is " + threads + "; it must be at least 1");
        }
        this.judge = judge;
        this.sink = sink;
        this.mostTraces = threads == 1 ? 0 : TRACES_A_THREAD * threads;
        this.others = Executors.newFixedThreadPool(Math.max(1, threads - 1), JudgesInOrder::daemon);
    }

    private static Thread daemon(Runnable work) {
        var thread = new Thread(work, "judge");
        thread.setDaemon(true);
        return thread;
    }

    /** A trace that somebody judges, whoever comes first. */
    private static final class Task extends FutureTask<Judgement> {
        private final Curve curve;
        private final AtomicBoolean begun = new AtomicBoolean();

        Task(Trace trace, Function<Trace, Judgement> judge) {
            super(() -> judge.apply(trace));
            this.curve = trace.curve();
        }

        @Override
        public void run() {
            if (begun.compareAndSet(false, true)) {
                super.run();
            }
        }

        boolean hasBegun() {
            return begun.get();
        }
    }

    /**
     * Takes the next trace, and hands over what is judged.
     *
     * @param trace the trace
     */
    public void judge(Trace trace) {
        var task = new Task(trace, judge);
        underWay.add(task);
        samples += task.curve.size();
        if (mostTraces > 0) {
            others.execute(task);
        }
        while (!underWay.isEmpty() && (underWay.element().isDone() || isFull())) {
            handOver();
        }
    }

    /** While another thread still judges the oldest, this one takes the next that nobody has begun, and does not wait. */
    private void judgeAhead() {
        for (var task : underWay) {
            if (underWay.element().isDone()) {
                return;
            }
            if (!task.hasBegun()) {
                task.run();
            }
        }
    }

    /** Hands over all that is still under way. */
    public void finish() {
        while (!underWay.isEmpty()) {
            handOver();
        }
    }

    private boolean isFull() {
        return underWay.size() > mostTraces || samples > MOST_SAMPLES;
    }

    private void handOver() {
        judgeAhead();
        var task = underWay.remove();
        samples -= task.curve.size();
        sink.accept(judged(task), task.curve);
    }

    private static Judgement judged(Task task) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return task.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException failed ? failed : new IllegalStateException(e.getCause());
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Ends the threads; what was not handed over is given up. */
    @Override
    public void close() {
        others.shutdownNow();
    }
}
