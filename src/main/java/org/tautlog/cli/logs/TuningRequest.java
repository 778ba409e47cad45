package org.tautlog.cli.logs;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadSummary;
import org.tautlog.intake.table.OutcomeFile;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.review.tuning.ElongationLoad;
import org.tautlog.review.tuning.LoadOnset;
import org.tautlog.review.tuning.OnsetTuning;
import org.tautlog.review.tuning.TuningReview;
import org.tautlog.trace.MeasuredClampLoad;

/**
 * Thresholds to tune.
 *
 * @param inputs logs, specification and layout
 * @param outcomes the clamp loads or elongations measured
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
                loads(file, specification, err),
                offsetDeg == null ? LoadOnset.usualOffsetDeg(specification) : offsetDeg,
                seed);
        ReadSummary summary;
        try (var progress = Progress.onTerminal("tuning", err)) {
            summary = LogReader.read(request.logs(), request.options().without(outcomes), trace -> {
                tuning.accept(trace);
                progress.step();
            });
        }
        ReadingAccount.print(summary, err);
        sayLeftOut(request.logs(), err);
        print(file, err);
        if (summary.traces().kept() == 0) {
            throw Refusal.nothingRead("no trace could be read from the logs given");
        }
        var review = tuning.review();
        return new Tuning(review, exitCode(review, file, summary));
    }

    private static List<MeasuredClampLoad> loads(OutcomeFile file, JointSpecification specification, PrintWriter err) {
        if (file.elongations().isEmpty()) {
            return file.measured();
        }
        var stated = specification
                .statedJoint()
                .orElseThrow(() -> Refusal.wrongUse("clamp load from " + OutcomeFile.ELONGATION
                        + " needs the bolt's resilience; the specification states no bolt and layers"));
        var loads = file.elongations().stream()
                .map(measured -> ElongationLoad.of(measured, stated)
                        .orElseGet(() -> new MeasuredClampLoad(
                                measured.serial(), measured.bolt(), measured.attempt(), List.of())))
                .toList();
        err.println("clamp load from elongation by the bolt's resilience, "
                + ElongationLoad.uncertainty(stated).stream()
                        .mapToObj(share -> String.format(
                                Locale.ROOT, "as a whole uncertain by %.1f %% (one standard deviation)", 100 * share))
                        .findFirst()
                        .orElse("whose uncertainty the specification does not state")
                + "; the onset does not depend on it");
        err.flush();
        return loads;
    }

    private void sayLeftOut(List<Path> logs, PrintWriter err) {
        var own = outcomes.toAbsolutePath().normalize();
        if (logs.stream().anyMatch(log -> own.startsWith(log.toAbsolutePath().normalize()))) {
            err.println("not read as a log: " + Terminal.harmless(outcomes.toString()) + ", as it holds the outcomes");
            err.flush();
        }
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
