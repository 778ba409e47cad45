package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;

/** Shifts of the simulated line, judged. */
final class SimulatedShifts {
    /** A judged shift and the spindle whose transducer left its scale. */
    record Shift(List<Judgement> judgements, Stream drifted, int firstDrifted) {
        StreamReview review() {
            return StreamReview.of(judgements, FenwaterEngine.specification().window());
        }
    }

    private SimulatedShifts() {}

    static Shift whole(long seed) {
        return judged(SimulatedLine.ENGINES_PER_SHIFT, seed, tightening -> true);
    }

    /** As many engines as end before any transducer drifts, without the faulty bolts. */
    static Shift faultless(long seed) {
        return judged(
                SimulatedLine.ENGINES_PER_SHIFT / 2 - 2,
                seed,
                tightening -> tightening.truth().fault() == Fault.NONE);
    }

    private static Shift judged(int engines, long seed, Predicate<SimulatedTightening> keep) {
        var specification = FenwaterEngine.specification();
        var judgements = new ArrayList<Judgement>();
        var drifted = new ArrayList<SimulatedTightening>();
        SimulatedLine.of(engines, seed).forEach(tightening -> {
            if (keep.test(tightening)) {
                judgements.add(Judge.judge(tightening.trace(), specification));
            }
            if (tightening.truth().fault() == Fault.TRANSDUCER_OUT_OF_SCALE) {
                drifted.add(tightening);
            }
        });
        if (drifted.isEmpty()) {
            return new Shift(judgements, new Stream("", ""), 0);
        }
        var first = drifted.get(0).trace().identity();
        return new Shift(judgements, Stream.of(first), FenwaterEngine.number(first.serial()));
    }
}
