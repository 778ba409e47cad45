package org.tautlog.cli.logs;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.intake.ReadOptions;
import org.tautlog.joint.study.ToleranceStudy;
import org.tautlog.joint.window.WindowStudy;
import org.tautlog.review.WindowReview;
import org.tautlog.review.WindowSpread;

/**
 * A window to study.
 *
 * @param specificationFile the joint specification
 * @param draws how many tightenings to draw
 * @param seed the seed to draw with
 * @param coverage the share that each pair of proposed limits lets through
 * @param logs logs to hold the window against; may be empty
 * @param options how to read them
 */
record WindowStudying(
        Path specificationFile, int draws, long seed, double coverage, List<Path> logs, ReadOptions options) {
    /** What the file calls the one number that the study alone can refuse. */
    private static final String SNUG_TORQUE_KEY = "[method] snug-torque";

    WindowStudying {
        logs = List.copyOf(logs);
    }

    /** What the command line says wrong must not read as a fault of the specification. */
    private void checkOptions() {
        if (draws < ToleranceStudy.LEAST_DRAWS || draws > ToleranceStudy.MOST_DRAWS) {
            throw Refusal.wrongUse("--draws is " + draws + "; it must lie from " + ToleranceStudy.LEAST_DRAWS + " to "
                    + ToleranceStudy.MOST_DRAWS);
        }
        if (!(coverage > ToleranceStudy.LEAST_COVERAGE && coverage < 1)) {
            throw Refusal.wrongUse("--coverage is " + coverage + "; it is a share and must lie above "
                    + ToleranceStudy.LEAST_COVERAGE + " and below 1");
        }
    }

    WindowReview run(PrintWriter err) {
        checkOptions();
        var specification = SpecificationSearch.read(specificationFile);
        WindowReview review;
        try {
            review = WindowReview.of(specification, WindowStudy.of(specification, draws, seed, coverage));
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(
                    specificationFile + ": " + String.valueOf(e.getMessage()).replace("snugTorqueNm", SNUG_TORQUE_KEY));
        }
        if (logs.isEmpty()) {
            return review;
        }
        var spread = new WindowSpread();
        var request = new JudgingRequest(logs, specificationFile, specification, options);
        Judging.run(request, err, (judgement, curve) -> spread.accept(judgement));
        return review.with(spread);
    }
}
