package org.tautlog.spc.stream;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;

/**
 * Values by time and stream, some cells empty, and the additive fit of a centre for each stream and a movement for each time.
 *
 * <pre> x[t][j] = centre[j] + movement[t] + own[t][j],  movements about 0 </pre>
 *
 * Fitted by alternating means, which for a full table is exact after one turn.
 */
final class StreamTable {
    private static final int MOST_TURNS = 200;

    private final double[][] x;
    private final int streams;

    private StreamTable(double[][] x, int streams) {
        this.x = x;
        this.streams = streams;
    }

    static Answer<StreamTable> of(double[][] byTime) {
        if (byTime.length == 0 || byTime[0].length == 0)
            return Answer.missing(Reason.EMPTY, "no times or no streams to chart");
        int streams = byTime[0].length;
        for (int t = 0; t < byTime.length; t++) {
            if (byTime[t].length != streams)
                return Answer.missing(
                        Reason.UNEQUAL,
                        "time " + (t + 1) + " holds " + byTime[t].length + " streams, time 1 holds " + streams);
            for (double value : byTime[t])
                if (Math.abs(value) > 1e60)
                    return Answer.missing(
                            Reason.NOT_FINITE,
                            "time " + (t + 1) + " holds " + value
                                    + ", which is no measured value; the cell of a stream that was not seen stays empty");
        }
        return Answer.of(
                new StreamTable(Arrays.stream(byTime).map(double[]::clone).toArray(double[][]::new), streams));
    }

    int times() {
        return x.length;
    }

    int streams() {
        return streams;
    }

    double at(int time, int stream) {
        return x[time][stream];
    }

    boolean seen(int time, int stream) {
        return !Double.isNaN(x[time][stream]);
    }

    int cell(int time, int stream) {
        return time * streams + stream;
    }

    int seenOf(int stream) {
        return (int) IntStream.range(0, x.length).filter(t -> seen(t, stream)).count();
    }

    /** Centres by stream and movements by time over the cells to use; NaN where there is nothing to fit. */
    record Fit(Vector centres, Vector movements, int parameters) {}

    /** Doubles by place, as records hold no arrays. */
    interface Vector {
        double at(int i);
    }

    Fit fit(BitSet use) {
        var centres = new double[streams];
        var movements = new double[x.length];
        double moved = Double.POSITIVE_INFINITY;
        double scale = 0;
        for (int turn = 0; turn < MOST_TURNS && moved > 1e-13 * scale; turn++) {
            moved = 0;
            scale = 0;
            for (int j = 0; j < streams; j++) {
                double sum = 0;
                int n = 0;
                for (int t = 0; t < x.length; t++) {
                    if (!use.get(cell(t, j)) || Double.isNaN(movements[t])) continue;
                    sum += x[t][j] - movements[t];
                    n++;
                }
                double next = n == 0 ? Double.NaN : sum / n;
                if (n > 0) moved = Math.max(moved, Math.abs(next - centres[j]));
                if (n > 0) scale = Math.max(scale, Math.abs(next));
                centres[j] = next;
            }
            double level = 0;
            int fitted = 0;
            for (int t = 0; t < x.length; t++) {
                movements[t] = movement(t, j -> centres[j], use);
                if (Double.isNaN(movements[t])) continue;
                level += movements[t];
                fitted++;
            }
            for (int t = 0; t < x.length; t++) movements[t] -= level / Math.max(1, fitted);
        }
        int parameters = (int)
                        Arrays.stream(centres).filter(c -> !Double.isNaN(c)).count()
                + (int) Arrays.stream(movements).filter(m -> !Double.isNaN(m)).count()
                - 1;
        return new Fit(i -> centres[i], i -> movements[i], parameters);
    }

    /** Mean deviation of the streams used at a time from their centres, NaN where fewer than two are used. */
    double movement(int time, Vector centres, BitSet use) {
        double sum = 0;
        int n = 0;
        for (int j = 0; j < streams; j++) {
            if (!use.get(cell(time, j))) continue;
            sum += x[time][j] - centres.at(j);
            n++;
        }
        return n < 2 ? Double.NaN : sum / n;
    }
}
