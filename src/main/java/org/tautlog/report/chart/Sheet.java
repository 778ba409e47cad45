package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;

/**
 * Charts with their places on one drawing.
 *
 * @param width width of the drawing
 * @param height its height
 * @param charts the charts with their places
 */
record Sheet(int width, int height, List<Placed> charts) {
    /** A chart and the box it is drawn in. */
    record Placed(JFreeChart chart, int x, int y, int width, int height) {}

    Sheet {
        charts = List.copyOf(charts);
    }

    static Sheet empty(int width) {
        return new Sheet(width, 0, List.of());
    }

    /** With charts of equal width side by side below all others. */
    Sheet below(int high, JFreeChart... row) {
        var all = new ArrayList<>(charts);
        for (int i = 0; i < row.length; i++) {
            all.add(new Placed(row[i], i * width / row.length, height, width / row.length, high));
        }
        return new Sheet(width, height + high, all);
    }
}
