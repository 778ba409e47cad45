package org.tautlog.cli.logs;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadSummary;
import org.tautlog.intake.table.OutcomeFile;
import org.tautlog.review.tuning.LoadOnset;
import org.tautlog.review.tuning.OnsetTuning;
import org.tautlog.review.tuning.TuningReview;

/**
 * Thresholds to tune.
 *
 * @param inputs logs, specification and layout
 * @param outcomes the clamp loads measured
 * @param offsetDeg how far behind its line the load of a true onset falls, deg; null for the usual one
 * @param seed the seed of the bootstrap
 */
record TuningRequest(
        LogInputs inputs, Path outcomes, @Nullable Double offsetDeg, long seed) {
    private static final double MOST_OFFSET_DEG = 360;

    /**
     * What came of it.
     *
     * @param review what the traces say
     * @param exitCode what the process returns
     */
    record Tuning(TuningReview review, ExitCode exitCode) {}

    Tuning run(PrintWriter err) throws IOException {
        if (offsetDeg != null && !(offsetDeg > 0 && offsetDeg <= MOST_OFFSET_DEG)) {
            throw Refusal.wrongUse("--offset is " + offsetDeg + "; it is a turn in deg, above 0 and at most 360");
        }
        var request = inputs.request();
        var specification = request.specification();
        var file = Refusal.orRefuse(OutcomeFile.read(outcomes));
        var tuning = new OnsetTuning(
                specification,
                file.measured(),
                offsetDeg == null ? LoadOnset.usualOffsetDeg(specification) : offsetDeg,
                seed);
        ReadSummary summary;
        try (var progress = Progress.onTerminal("tuning", err)) {
            summary = LogReader.read(request.logs(), request.options(), trace -> {
                tuning.accept(trace);
                progress.step();
            });
        }
        ReadingAccount.print(summary, err);
        print(file, err);
        if (summary.traces().kept() == 0) {
            throw Refusal.nothingRead("no trace could be read from the logs given");
        }
        var review = tuning.review();
        return new Tuning(review, exitCode(review, file, summary));
    }

    private static ExitCode exitCode(TuningReview review, OutcomeFile file, ReadSummary summary) {
        if (review.used() == 0) {
            return ExitCode.NOTHING_READ;
        }
        return file.rejected() > 0 ? ExitCode.NOT_ALL_CONFORMING : ExitCode.ofReading(summary);
    }

    private void print(OutcomeFile file, PrintWriter err) {
        if (file.rejected() > 0) {
            err.println("rejected of " + Terminal.harmless(outcomes.toString()) + ": "
                    + Counted.of(file.rejected(), "row") + " of " + file.rows());
            file.problems().forEach(problem -> err.println("  " + Terminal.harmless(problem.sentence())));
            int left = file.rejected() - file.problems().size();
            if (left > 0) {
                err.println("  and " + left + " more");
            }
            err.flush();
        }
    }
}
