package org.tautlog.spc.study;

import java.util.List;

/**
 * A finished study of one group of rows.
 *
 * @param kind what was charted
 * @param values how many values it rests on
 * @param points how many points there are; of a long series fewer are drawn
 * @param basis where the limits come from, one sentence part
 * @param figures centre, limits and sigmas by name, in reading order; limits that differ from point to point are the last's
 * @param panels its drawings, at least 1
 * @param signals the points that gave a signal, in order within each panel; of a long series the first ones
 * @param signalCount how many signals there were, at least as many as are told
 * @param removed every point left out of the limits, with its reason; none in phase 2
 * @param notes what a reader must know beside the figures
 * @param limits the limits, to be frozen
 */
public record SeriesStudy(
        StudyKind kind,
        int values,
        int points,
        String basis,
        List<Figure> figures,
        List<StudyPanel> panels,
        List<StudySignal> signals,
        int signalCount,
        List<LeftOut> removed,
        List<String> notes,
        FrozenLimits limits) {
    /** Copies the lists. */
    public SeriesStudy {
        figures = List.copyOf(figures);
        panels = List.copyOf(panels);
        signals = List.copyOf(signals);
        removed = List.copyOf(removed);
        notes = List.copyOf(notes);
        if (signalCount < signals.size())
            throw new IllegalArgumentException(
                    "signalCount is " + signalCount + "; " + signals.size() + " signals are told");
    }

    /** {@return how far apart the first panel's limits lie at its last point; digits of values follow it} */
    public double spread() {
        var points = panels.get(0).lines().get(0).chart().points();
        var last = points.get(points.size() - 1);
        return last.upper() - last.lower();
    }

    /**
     * One figure.
     *
     * @param name its name, for readers
     * @param value its value
     * @param inUnit whether it has the unit of the values, whose digits follow their spread
     */
    public record Figure(String name, double value, boolean inUnit) {
        /**
         * A figure without a unit, such as a p value.
         *
         * @param name what it is
         * @param value the figure
         */
        public Figure(String name, double value) {
            this(name, value, false);
        }
    }

    /**
     * A point that the limits do not rest on.
     *
     * @param point which point, from 1
     * @param place where it comes from
     * @param value what was plotted
     * @param said why it was left out
     */
    public record LeftOut(int point, String place, double value, String said) {}
}
