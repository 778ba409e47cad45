package org.tautlog.cli;

import java.io.PrintWriter;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadSummary;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.Curve;

/** Reads logs and judges every trace as it comes; holds one trace at a time. */
final class Judging {
    /** Takes each judgement with the curve it was made from. */
    interface Sink {
        void accept(Judgement judgement, Curve curve);
    }

    private Judging() {}

    static ReadSummary run(JudgingRequest request, PrintWriter err, Sink sink) {
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
