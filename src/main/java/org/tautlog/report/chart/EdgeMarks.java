package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;

/** What lies beyond the scale of a chart: triangles at its edge, with the values beside them where there is room. */
final class EdgeMarks {
    /** Width of a character, as a share of the values' stretch of the scale. */
    private static final double CHARACTER = 0.027;

    private static final double GAP = 0.02;
    private static final double RIM = 0.05;
    /** Labels end here, as a share of the values' stretch: beyond it stand the limits' names. */
    private static final double LAST = 1;

    private final Range scale;
    private final int decimals;
    private final double n;
    private final List<Mark> marks = new ArrayList<>();

    EdgeMarks(Range scale, int decimals, double n) {
        this.scale = scale;
        this.decimals = decimals;
        this.n = n;
    }

    /** Takes a value where it lies beyond the scale; one with a mark of its own gets no triangle. */
    void add(double place, double value, boolean marked) {
        if (marked ? inside(scale, value) != value : !scale.contains(value)) {
            marks.add(new Mark(place, value, value > scale.getCentralValue(), marked));
        }
    }

    /** Within the scale by so much that a mark is not cut. */
    static double inside(Range scale, double value) {
        double rim = RIM * scale.getLength();
        return Math.max(scale.getLowerBound() + rim, Math.min(scale.getUpperBound() - rim, value));
    }

    void draw(XYPlot plot) {
        draw(plot, marks.stream().filter(Mark::above).toList(), scale.getUpperBound(), PointsRenderer.aboveScale());
        draw(
                plot,
                marks.stream().filter(mark -> !mark.above()).toList(),
                scale.getLowerBound(),
                PointsRenderer.belowScale());
    }

    private void draw(XYPlot plot, List<Mark> unsorted, double edge, PointsRenderer triangle) {
        var row = unsorted.stream()
                .sorted(Comparator.comparingDouble(Mark::place))
                .toList();
        var triangles = Plots.series(0);
        double free = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < row.size(); i++) {
            var mark = row.get(i);
            if (!mark.marked()) {
                triangles.add(mark.place(), edge);
            }
            double next = i + 1 < row.size() ? row.get(i + 1).place() - GAP * n : LAST * n;
            free = Math.max(mark.place() + GAP * n, label(plot, mark, free, Math.min(next, LAST * n)));
        }
        Plots.points(plot, triangles, triangle);
    }

    /** Writes the value right of the mark, else left of it, else not; gives how far the row is taken by it. */
    private double label(XYPlot plot, Mark mark, double free, double next) {
        var words = String.format(Locale.ROOT, "%." + decimals + "f", mark.value());
        double wide = words.length() * CHARACTER * n;
        double right = mark.place() + GAP * n + wide;
        boolean rightward = right <= next;
        if (!rightward && mark.place() - GAP * n - wide < free) {
            return free;
        }
        double rim = RIM * scale.getLength();
        plot.addAnnotation(Plots.text(
                words,
                mark.place() + (rightward ? GAP : -GAP) * n,
                mark.above() ? scale.getUpperBound() - rim : scale.getLowerBound() + rim,
                rightward ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                mark.marked() ? Ink.FAINT : Ink.SIGNAL));
        return rightward ? right : free;
    }

    private record Mark(double place, double value, boolean above, boolean marked) {}
}
