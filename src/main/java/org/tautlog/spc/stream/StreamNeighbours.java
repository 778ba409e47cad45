package org.tautlog.spc.stream;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.tautlog.spc.Autocorrelation;

/** How much a stream resembles itself from time to time, all streams of a table taken together. */
final class StreamNeighbours {
    private StreamNeighbours() {}

    /** Of the differences from the common movement. They add up to 0, so one stream fewer varies on its own. */
    static Autocorrelation ofDifferences(StreamTable table, StreamTable.Fit fit, BitSet use) {
        return measured(
                series(
                        table,
                        use,
                        (t, j) -> table.at(t, j)
                                - fit.centres().at(j)
                                - fit.movements().at(t)),
                table.streams() - 1);
    }

    /** Of the values as they are. They share the common movement, so they count as one series only. */
    static Autocorrelation ofValues(StreamTable table, BitSet use) {
        return measured(series(table, use, table::at), 1);
    }

    private static Autocorrelation measured(List<double[]> series, int independent) {
        return Autocorrelation.pooled(series, independent).found().orElse(Autocorrelation.none());
    }

    interface Cell {
        double at(int time, int stream);
    }

    private static List<double[]> series(StreamTable table, BitSet use, Cell cell) {
        var series = new ArrayList<double[]>();
        for (int j = 0; j < table.streams(); j++) {
            int stream = j;
            series.add(IntStream.range(0, table.times())
                    .filter(t -> use.get(table.cell(t, stream)))
                    .mapToDouble(t -> cell.at(t, stream))
                    .filter(x -> !Double.isNaN(x))
                    .toArray());
        }
        return series;
    }
}
