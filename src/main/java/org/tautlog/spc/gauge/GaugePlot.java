package org.tautlog.spc.gauge;

import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.ChartConstants;

/**
 * Means and ranges of a crossed gauge study, cell by cell, with the limit that ranges of one gauge keep.
 *
 * <pre> upper limit of ranges = mean range (1 + 3 d3 / d2),  d2 and d3 for the number of trials </pre>
 *
 * Source: AIAG, Measurement Systems Analysis, 4th edition, range chart; constants: {@link ChartConstants}.
 *
 * @param cells the cells by part, and within each by appraiser
 * @param meanRange mean of the ranges of all cells
 * @param upperRange upper limit of a range
 */
public record GaugePlot(List<List<Cell>> cells, double meanRange, double upperRange) {
    /**
     * The trials of one part by one appraiser.
     *
     * @param trials the measurements, at least 2
     * @param mean their mean
     * @param range the largest less the smallest
     */
    public record Cell(List<Double> trials, double mean, double range) {
        /** Copies the list. */
        public Cell {
            trials = List.copyOf(trials);
        }

        private static Cell of(List<Double> trials) {
            var sample = Sample.derived(trials.stream().mapToDouble(v -> v).toArray());
            return new Cell(trials, sample.mean(), sample.max() - sample.min());
        }
    }

    /** Copies the lists. */
    public GaugePlot {
        cells = cells.stream().map(List::copyOf).toList();
    }

    /**
     * Lays a study out.
     *
     * @param measured by part, appraiser and trial; at least 2 trials each, all equally many
     * @return the plot, or why there is none
     */
    public static Answer<GaugePlot> of(List<List<List<Double>>> measured) {
        var sizes = measured.stream()
                .flatMap(List::stream)
                .mapToInt(List::size)
                .distinct()
                .toArray();
        if (sizes.length != 1 || sizes[0] < 2)
            return Answer.missing(Reason.UNEQUAL, "the cells do not hold equally many trials, at least 2");
        var cells = measured.stream()
                .map(part -> part.stream().map(Cell::of).toList())
                .toList();
        double mean = cells.stream()
                .flatMap(List::stream)
                .mapToDouble(Cell::range)
                .average()
                .orElse(0);
        var constants = ChartConstants.of(sizes[0]);
        return Answer.of(new GaugePlot(cells, mean, mean * (1 + 3 * constants.d3() / constants.d2())));
    }
}
