package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;

/** A table by time and stream, NaN where a stream was not seen, and what its rows and columns are called. */
record StreamLayout(List<double[]> cells, List<String> times, List<String> streams) {
    static StreamLayout of(List<StudyRow> rows, List<String> streams) {
        var seen = new HashMap<String, Integer>();
        var times = new LinkedHashMap<String, double[]>();
        for (var row : rows) {
            int turn = seen.merge(row.stream() + '\n' + row.subgroup(), 1, Integer::sum);
            var time = row.subgroup().isEmpty()
                    ? "turn " + turn
                    : "time " + row.subgroup() + (turn == 1 ? "" : ", turn " + turn);
            var cells = times.computeIfAbsent(time, name -> {
                var empty = new double[streams.size()];
                Arrays.fill(empty, Double.NaN);
                return empty;
            });
            cells[streams.indexOf(row.stream())] = row.values().get(0);
        }
        return new StreamLayout(new ArrayList<>(times.values()), List.copyOf(times.keySet()), streams);
    }

    double cell(int time, int stream) {
        return cells.get(time)[stream];
    }
}
