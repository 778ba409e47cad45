package org.tautlog.spc.stream;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.tautlog.spc.timeweighted.CusumLimits;
import org.tautlog.spc.timeweighted.CusumWatch;

/** Follows the streams time by time: extremes, own limits, runs and sums. */
final class StreamsWatch {
    private final StreamsLimits limits;
    private final StreamTable.Vector centres;
    private final CusumWatch[] sums;
    private final boolean[] rising;
    private final boolean[] falling;
    private final double[] upper;
    private final double[] lower;
    private final List<StreamPoint> points = new ArrayList<>();
    private int largestBefore = -1;
    private int smallestBefore = -1;
    private int largestRun;
    private int smallestRun;

    StreamsWatch(StreamsLimits limits) {
        this.limits = limits;
        this.centres = StreamsChart.centres(limits);
        int streams = limits.centres().size();
        sums = new CusumWatch[streams];
        rising = new boolean[streams];
        falling = new boolean[streams];
        upper = new double[streams];
        lower = new double[streams];
        for (int j = 0; j < streams; j++)
            sums[j] = new CusumWatch(new CusumLimits(0, StreamsLimits.SLACK, limits.cusumDecision(), 0));
    }

    List<StreamPoint> points() {
        return points;
    }

    List<StreamSignal> next(int time, StreamTable table, BitSet use) {
        int present = StreamsChart.present(table, time, use);
        double movement = table.movement(time, centres, use);
        int largest = -1;
        int smallest = -1;
        boolean tiedHigh = false;
        boolean tiedLow = false;
        for (int j = 0; j < table.streams(); j++) {
            if (!use.get(table.cell(time, j))) continue;
            double x = deviation(table, time, j);
            if (largest < 0 || x >= deviation(table, time, largest)) {
                tiedHigh = largest >= 0 && x == deviation(table, time, largest);
                largest = j;
            }
            if (smallest < 0 || x <= deviation(table, time, smallest)) {
                tiedLow = smallest >= 0 && x == deviation(table, time, smallest);
                smallest = j;
            }
        }
        double high = deviation(table, time, largest);
        double low = deviation(table, time, smallest);
        var signals = new ArrayList<StreamSignal>();
        double group = limits.groupReach();
        if (high > group) signals.add(new StreamSignal(StreamSignal.Kind.GROUP_HIGH, time, largest, high, group));
        if (low < -group) signals.add(new StreamSignal(StreamSignal.Kind.GROUP_LOW, time, smallest, low, -group));
        own(time, largest, high - movement, smallest, low - movement, limits.ownReach(present), signals);
        runs(time, tiedHigh ? -1 : largest, tiedLow ? -1 : smallest, signals);
        sums(time, table, use, signals);
        points.add(
                new StreamPoint(time, present, movement, largest, high, smallest, low, listed(upper), listed(lower)));
        return signals;
    }

    private double deviation(StreamTable table, int time, int stream) {
        return table.at(time, stream) - centres.at(stream);
    }

    private static void own(
            int time, int largest, double up, int smallest, double down, double reach, List<StreamSignal> signals) {
        if (up >= -down && up > reach)
            signals.add(new StreamSignal(StreamSignal.Kind.OWN_HIGH, time, largest, up, reach));
        if (-down >= up && -down > reach)
            signals.add(new StreamSignal(StreamSignal.Kind.OWN_LOW, time, smallest, down, -reach));
    }

    private void runs(int time, int largest, int smallest, List<StreamSignal> signals) {
        largestRun = largest < 0 ? 0 : largest == largestBefore ? largestRun + 1 : 1;
        smallestRun = smallest < 0 ? 0 : smallest == smallestBefore ? smallestRun + 1 : 1;
        largestBefore = largest;
        smallestBefore = smallest;
        int longest = limits.longestRun();
        if (largestRun == longest)
            signals.add(new StreamSignal(StreamSignal.Kind.RUN_LARGEST, time, largest, largestRun, longest));
        if (smallestRun == longest)
            signals.add(new StreamSignal(StreamSignal.Kind.RUN_SMALLEST, time, smallest, smallestRun, longest));
    }

    /**
     * Each stream by sums of its own. A stream whose sum is past h is left out of what it and the others are held against, so
     * that it neither hides another nor pushes the others the other way.
     */
    private void sums(int time, StreamTable table, BitSet use, List<StreamSignal> signals) {
        var still = (BitSet) use.clone();
        for (int j = 0; j < sums.length; j++) if (rising[j] || falling[j]) still.clear(table.cell(time, j));
        var held = StreamsChart.present(table, time, still) < 2 ? use : still;
        int present = StreamsChart.present(table, time, held);
        double movement = table.movement(time, centres, held);
        for (int j = 0; j < sums.length; j++) {
            if (!use.get(table.cell(time, j))) continue;
            double sigma = held.get(table.cell(time, j)) ? limits.sumSigma(present) : limits.sumSigmaBeside(present);
            var step = sums[j].next((deviation(table, time, j) - movement) / sigma);
            upper[j] = step.upperSum();
            lower[j] = step.lowerSum();
            boolean rise = step.signal().up();
            boolean fall = step.signal().down();
            if (rise && !rising[j])
                signals.add(
                        new StreamSignal(StreamSignal.Kind.OWN_RISE, time, j, step.upperSum(), limits.cusumDecision()));
            if (fall && !falling[j])
                signals.add(
                        new StreamSignal(StreamSignal.Kind.OWN_FALL, time, j, step.lowerSum(), limits.cusumDecision()));
            rising[j] = rise;
            falling[j] = fall;
        }
    }

    private static List<Double> listed(double[] sums) {
        return Arrays.stream(sums).boxed().toList();
    }
}
