package org.tautlog.spc.chart;

import java.util.BitSet;
import java.util.List;

/**
 * Limits from data, with what was left out on the way.
 *
 * @param <L> the frozen limits, ready for phase 2
 * @param limits limits from the points that were kept
 * @param removed the points left out, round by round
 * @param total how many points the data hold
 * @param settled whether no kept point lies beyond the final limits
 * @param options how points were left out
 */
public record PhaseOne<L>(L limits, List<Removed> removed, int total, boolean settled, PhaseOneOptions options) {
    /** Copies the list. */
    public PhaseOne {
        removed = List.copyOf(removed);
    }

    /** {@return the places of the points that the limits rest on, as a new set of bits} */
    public BitSet kept() {
        var kept = new BitSet(total);
        kept.set(0, total);
        removed.forEach(point -> kept.clear(point.index()));
        return kept;
    }

    /** {@return one sentence on how the limits came about} */
    public String said() {
        String left = removed.isEmpty()
                ? "limits from all " + total + " points"
                : "limits from " + (total - removed.size()) + " of " + total + " points, " + removed.size()
                        + " left out as beyond the limits";
        return settled ? left : left + "; points beyond the limits remain";
    }

    /**
     * {@return the same history with other limits made from these}
     *
     * @param <M> the other limits
     * @param other the other limits
     */
    public <M> PhaseOne<M> with(M other) {
        return new PhaseOne<>(other, removed, total, settled, options);
    }
}
