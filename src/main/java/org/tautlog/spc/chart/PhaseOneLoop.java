package org.tautlog.spc.chart;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.tautlog.spc.Answer;

/** Leaves out points beyond the limits and computes the limits again until no kept point lies beyond them. */
public final class PhaseOneLoop {
    /**
     * Limits from the kept points.
     *
     * @param <L> the limits
     */
    public interface Estimator<L> {
        /**
         * {@return limits, or why there are none}
         *
         * @param kept the places of the points to use
         */
        Answer<L> from(BitSet kept);
    }

    /**
     * The kept points beyond the limits.
     *
     * @param <L> the limits
     */
    public interface Check<L> {
        /**
         * {@return the points to leave out}
         *
         * @param limits the limits so far
         * @param kept the places of the points they rest on
         * @param round the round, from 1
         */
        List<Removed> beyond(L limits, BitSet kept, int round);
    }

    private PhaseOneLoop() {}

    /**
     * Settles limits.
     *
     * @param <L> the limits
     * @param total how many points the data hold
     * @param options how points are left out
     * @param estimator limits from points
     * @param check points beyond limits
     * @return the settled limits with what was left out, or why there are none
     */
    public static <L> Answer<PhaseOne<L>> settle(
            int total, PhaseOneOptions options, Estimator<L> estimator, Check<L> check) {
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
