package org.tautlog.cli.logs;

import java.io.PrintWriter;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadSummary;
import org.tautlog.judge.JudgesInOrder;

/** Reads logs and judges every trace as it comes, on all processors; holds a bounded number of traces. */
public final class Judging {
    private Judging() {}

    /**
     * Judges all traces of some logs, and tells on the error output what was rejected or taken for granted.
     *
     * @param request the logs and the specification
     * @param err the error output
     * @param sink takes each judgement, in reading order and on this thread
     * @return what was read and rejected; a {@link Refusal} is thrown where no trace could be read
     */
    public static ReadSummary run(JudgingRequest request, PrintWriter err, JudgesInOrder.Sink sink) {
        return orRefuse(look(request, err, sink));
    }

    /**
     * A summary that holds a trace.
     *
     * @param summary what was read and rejected
     * @return the same; a {@link Refusal} is thrown where no trace could be read
     */
    public static ReadSummary orRefuse(ReadSummary summary) {
        if (summary.traces().kept() == 0) {
            throw Refusal.nothingRead("no trace could be read from the logs given");
        }
        return summary;
    }

    /**
     * The same where logs without any trace are an answer too.
     *
     * @param request the logs and the specification
     * @param err the error output
     * @param sink takes each judgement, in reading order and on this thread
     * @return what was read and rejected
     */
    public static ReadSummary look(JudgingRequest request, PrintWriter err, JudgesInOrder.Sink sink) {
        ReadSummary summary;
        try (var progress = Progress.onTerminal("judging", err)) {
            summary = look(request, FilesAtHand.of(request, progress), sink);
        }
        ReadingAccount.print(summary, err);
        return summary;
    }

    private static ReadSummary look(JudgingRequest request, FilesAtHand files, JudgesInOrder.Sink sink) {
        int processors = Runtime.getRuntime().availableProcessors();
        // A plain trace takes as long to read as to judge; more threads than processors would take turns with cold
        // caches.
        int readers = Math.max(1, processors / 2);
        try (var judges = new JudgesInOrder(request.specification(), 1 + processors - readers, (judgement, curve) -> {
            sink.accept(judgement, curve);
            files.next(judgement);
        })) {
            var summary = LogReader.read(request.logs(), request.options().withThreads(readers), judges::judge);
            judges.finish();
            return summary;
        }
    }
}
