package org.tautlog.review;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tautlog.joint.window.Window;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;

/**
 * Gathers the features that a window limits, tightening by tightening: a few numbers each, so that months of logs fit.
 * Recordings too poor to judge are counted and left out.
 */
public final class WindowSpread {
    /** One row a tightening; a feature that is missing has no entry. */
    private final List<Map<WindowFeature, Double>> rows = new ArrayList<>();

    private long unjudged;

    /** Starts empty. */
    public WindowSpread() {}

    /**
     * Takes the next tightening.
     *
     * @param judgement what was judged of it
     */
    public void accept(Judgement judgement) {
        if (judgement.verdict() == Verdict.UNJUDGED) {
            unjudged++;
            return;
        }
        var row = new EnumMap<WindowFeature, Double>(WindowFeature.class);
        for (var feature : WindowFeature.values()) {
            feature.of(judgement.signature()).value().ifPresent(value -> row.put(feature, value));
        }
        rows.add(row);
    }

    /** {@return how many tightenings were taken, those too poor to judge left out} */
    public int tightenings() {
        return rows.size();
    }

    /** {@return how many were left out because their data is too poor to judge} */
    public long unjudged() {
        return unjudged;
    }

    /**
     * How many of the tightenings fail a window by their numbers alone; a missing feature fails nothing here.
     *
     * @param window the limits
     * @return the count, whatever the consequence of each limit
     */
    public int outside(Window window) {
        return (int) rows.stream()
                .filter(row -> row.entrySet().stream()
                        .anyMatch(entry -> !entry.getKey().limits(window).contains(entry.getValue())))
                .count();
    }

    double[] values(WindowFeature feature) {
        return rows.stream()
                .map(row -> row.get(feature))
                .filter(Objects::nonNull)
                .mapToDouble(value -> value)
                .toArray();
    }
}
