package org.tautlog.review;

import java.util.stream.Collectors;
import org.tautlog.joint.window.WindowStudy;
import org.tautlog.judge.Judge;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;

/** The invented engine's window, studied with few draws, and some tightenings of the simulated line. */
public final class MadeWindow {
    private static final WindowReview REVIEW = WindowReview.of(
            FenwaterEngine.specification(), WindowStudy.of(FenwaterEngine.specification(), 2_000, 4, 0.99));

    private MadeWindow() {}

    public static WindowReview review() {
        return REVIEW;
    }

    public static WindowSpread spread() {
        var spread = new WindowSpread();
        SimulatedLine.of(8, 4)
                .tightenings()
                .map(done -> Judge.judge(done.trace(), FenwaterEngine.specification()))
                .collect(Collectors.toList())
                .forEach(spread::accept);
        return spread;
    }
}
