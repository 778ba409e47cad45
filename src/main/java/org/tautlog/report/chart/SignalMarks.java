package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyPanel;
import org.tautlog.spc.study.StudySignal;

/** Squares around the points that signal, and what the first of each run of them says, where there is room to say it. */
final class SignalMarks {
    private static final int MOST_LABELS = 8;
    private static final int MOST_STEPS = 3;
    /** Width of a character and height of a line, as shares of the scales. */
    private static final double CHARACTER = 0.0085;

    private static final double LINE = 0.075;

    private final XYPlot plot;
    private final double n;
    private final Range across;
    private final Range up;
    private final List<Box> taken = new ArrayList<>();
    /** The points of all lines: words keep off them where there is another place. */
    private final List<Box> points = new ArrayList<>();

    private SignalMarks(XYPlot plot, double n) {
        this.plot = plot;
        this.n = n;
        across = plot.getDomainAxis().getRange();
        up = plot.getRangeAxis().getRange();
    }

    static void add(XYPlot plot, StudyPanel panel, SeriesStudy study, double n) {
        var here = study.signals().stream()
                .filter(signal -> signal.panel().equals(panel.title()))
                .toList();
        double centre = panel.lines().get(0).chart().points().get(0).centre();
        var marks = new SignalMarks(plot, n);
        panel.lines().stream()
                .flatMap(line -> line.chart().points().stream())
                .limit(SeriesChart.MOST_POINTS)
                .forEach(point -> marks.points.add(marks.around(point.index() + 1, marks.up.constrain(point.value()))));
        marks.add(here, centre);
    }

    private Box around(int point, double y) {
        double wide = CHARACTER * across.getLength() / 2;
        double high = LINE * up.getLength() / 3;
        return new Box(point - wide, point + wide, y - high, y + high);
    }

    private void add(List<StudySignal> signals, double centre) {
        var marks = Plots.series(0);
        signals.stream().limit(SeriesChart.MOST_POINTS).forEach(signal -> {
            double y = up.constrain(signal.value());
            marks.add(signal.point(), y);
            taken.add(around(signal.point(), y));
        });
        int labels = 0;
        StudySignal before = null;
        for (var signal : signals) {
            double y = up.constrain(signal.value());
            if (!goesOn(before, signal) && labels++ < MOST_LABELS) {
                if (!label(signal, y, y < centre, points)) {
                    label(signal, y, y < centre, List.of());
                }
            }
            before = signal;
        }
        Plots.points(plot, marks, PointsRenderer.square());
    }

    /** On the point's own side of the centre, a line farther out where something stands, else on the other; or nowhere. */
    private boolean label(StudySignal signal, double y, boolean below, List<Box> keepOff) {
        var words = signal.point() + ": "
                + signal.said().replace("above the upper limit", "above").replace("below the lower limit", "below");
        double wide = words.length() * CHARACTER * across.getLength();
        boolean rightward = signal.point() < n * 0.6;
        double left = rightward ? signal.point() : signal.point() - wide;
        double line = LINE * up.getLength();
        for (int i = 0; i < 2 * MOST_STEPS; i++) {
            int step = i % MOST_STEPS + 1;
            double middle = y + (below == i < MOST_STEPS ? -step : step) * line;
            var box = new Box(left, left + wide, middle - line / 2, middle + line / 2);
            if (!up.contains(middle)
                    || taken.stream().anyMatch(box::meets)
                    || keepOff.stream().anyMatch(box::meets)) {
                continue;
            }
            taken.add(box);
            plot.addAnnotation(Plots.text(
                    words,
                    signal.point(),
                    middle,
                    rightward ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT,
                    Ink.SIGNAL));
            return true;
        }
        return false;
    }

    private static boolean goesOn(@Nullable StudySignal before, StudySignal signal) {
        if (before == null || !kind(before).equals(kind(signal))) {
            return false;
        }
        return before.point() + 1 == signal.point()
                || (!since(signal).isEmpty() && since(signal).equals(since(before)));
    }

    /** Where a sum began: one that dips below its limit and comes back is still the same. */
    private static String since(StudySignal signal) {
        int comma = signal.said().indexOf(',');
        return signal.said().contains(" since point ") && comma > 0
                ? signal.said().substring(0, comma)
                : "";
    }

    /** What a signal says but for its numbers: of a run of the same only the first is put into words. */
    private static String kind(StudySignal signal) {
        return signal.said().replaceAll("[0-9.]+", "");
    }

    private record Box(double left, double right, double bottom, double top) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
        }
    }
}
