package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.chart.ChartPoint;

/**
 * A line of any number of points in bounded memory: the points themselves while they are few, then the least and greatest of
 * stretches that grow, so that what stands out stays. Signals are counted, the first kept.
 */
final class LongLine {
    static final int MOST_SIGNALS = 200;
    static final int MOST_STRETCHES = 1000;

    private final List<ChartPoint> least = new ArrayList<>();
    private final List<ChartPoint> greatest = new ArrayList<>();
    private final List<StudySignal> signals = new ArrayList<>();
    private int length = 1;
    private int inLast = 1;
    private int signalCount;
    private @Nullable ChartPoint last;

    void add(ChartPoint point) {
        last = point;
        if (least.isEmpty() || inLast == length) {
            if (least.size() == MOST_STRETCHES) joinPairs();
            least.add(point);
            greatest.add(point);
            inLast = 1;
            return;
        }
        int end = least.size() - 1;
        if (point.value() < least.get(end).value()) least.set(end, point);
        if (point.value() > greatest.get(end).value()) greatest.set(end, point);
        inLast++;
    }

    private void joinPairs() {
        for (int i = 0; i < MOST_STRETCHES / 2; i++) {
            var low = least.get(2 * i);
            var high = greatest.get(2 * i);
            var nextLow = least.get(2 * i + 1);
            var nextHigh = greatest.get(2 * i + 1);
            least.set(i, nextLow.value() < low.value() ? nextLow : low);
            greatest.set(i, nextHigh.value() > high.value() ? nextHigh : high);
        }
        least.subList(MOST_STRETCHES / 2, MOST_STRETCHES).clear();
        greatest.subList(MOST_STRETCHES / 2, MOST_STRETCHES).clear();
        length *= 2;
    }

    void signal(StudySignal signal) {
        if (signalCount++ < MOST_SIGNALS) signals.add(signal);
    }

    List<ChartPoint> points() {
        var points = new ArrayList<ChartPoint>();
        for (int i = 0; i < least.size(); i++) {
            var low = least.get(i);
            var high = greatest.get(i);
            points.add(low.index() <= high.index() ? low : high);
            if (low.index() != high.index()) points.add(low.index() < high.index() ? high : low);
        }
        return points;
    }

    /** The newest point; its limits are those that hold now. */
    ChartPoint last() {
        return Objects.requireNonNull(last, "no point yet");
    }

    List<StudySignal> signals() {
        return signals;
    }

    int signalCount() {
        return signalCount;
    }
}
