package org.tautlog.cli.logs;

import java.io.PrintWriter;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadSummary;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.Curve;

/** Reads logs and judges every trace as it comes; holds one trace at a time. */
public final class Judging {
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

    private Judging() {}

    /**
     * Judges all traces of some logs, and tells on the error output what was rejected or taken for granted.
     *
     * @param request the logs and the specification
     * @param err the error output
     * @param sink takes each judgement, in reading order
     * @return what was read and rejected; a {@link Refusal} is thrown where no trace could be read
     */
    public static ReadSummary run(JudgingRequest request, PrintWriter err, Sink sink) {
        ReadSummary summary;
        try (var progress = Progress.onTerminal("judging", err)) {
            summary = LogReader.read(request.logs(), request.options(), trace -> {
                sink.accept(Judge.judge(trace, request.specification()), trace.curve());
                progress.step();
            });
        }
        ReadingAccount.print(summary, err);
        if (summary.traces().kept() == 0) {
            throw Refusal.nothingRead("no trace could be read from the logs given");
        }
        return summary;
    }
}
