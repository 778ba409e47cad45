package org.tautlog.spc.chart;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.tautlog.spc.Answer;

/** Leaves out points beyond the limits and computes the limits again until no kept point lies beyond them. */
final class PhaseOneLoop {
    /** Limits from the kept points. */
    interface Estimator<L> {
        Answer<L> from(BitSet kept);
    }

    /** The kept points beyond the limits. */
    interface Check<L> {
        List<Removed> beyond(L limits, BitSet kept, int round);
    }

    private PhaseOneLoop() {}

    static <L> Answer<PhaseOne<L>> settle(int total, PhaseOneOptions options, Estimator<L> estimator, Check<L> check) {
        var all = new BitSet(total);
        all.set(0, total);
        return estimator.from(all).map(first -> {
            var kept = all;
            var limits = first;
            var removed = new ArrayList<Removed>();
            var beyond = check.beyond(limits, kept, 1);
            for (int round = 1; round <= options.mostRounds() && !beyond.isEmpty(); round++) {
                if (removed.size() + beyond.size() > options.largestShare() * total) break;
                var fewer = (BitSet) kept.clone();
                beyond.forEach(point -> fewer.clear(point.index()));
                var next = estimator.from(fewer).found();
                if (next.isEmpty()) break;
                removed.addAll(beyond);
                kept = fewer;
                limits = next.get();
                beyond = check.beyond(limits, kept, round + 1);
            }
            return new PhaseOne<>(limits, removed, total, beyond.isEmpty(), options);
        });
    }
}
