package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyPanel;
import org.tautlog.spc.study.StudySignal;

/** Squares around the points that signal, and what the first of each run of them says, where there is room to say it. */
final class SignalMarks {
    private static final int MOST_LABELS = 8;
    private static final int MOST_STEPS = 3;
    private static final int MOST_WORDS = 2;
    private static final int MOST_CHARACTERS = 44;
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
        labels(signals).stream().limit(MOST_LABELS).forEach(label -> {
            double y = up.constrain(label.signal.value());
            if (!label(label, y, y < centre, points)) {
                label(label, y, y < centre, List.of());
            }
        });
        Plots.points(plot, marks, PointsRenderer.square());
    }

    /** What there is to say, points beyond their limits first: of a pattern that goes on from point to point only its start. */
    private static List<Label> labels(List<StudySignal> signals) {
        var labels = new ArrayList<Label>();
        StudySignal before = null;
        for (var signal : signals) {
            var news = new ArrayList<>(parts(signal));
            if (before != null && goesOn(before, signal)) {
                var said = parts(before).stream().map(SignalMarks::kind).toList();
                news.removeIf(part -> said.contains(kind(part)));
            }
            if (!news.isEmpty()) {
                labels.add(new Label(signal, signal.point() + ": " + shortened(news)));
            }
            before = signal;
        }
        labels.sort(
                Comparator.comparing(label -> rule(parts(label.signal).get(0)).isPresent()));
        return labels;
    }

    private record Label(StudySignal signal, String words) {}

    /** The run rules that points of a panel break, in full, for a line below it; empty where there is none. */
    static String rules(StudyPanel panel, SeriesStudy study) {
        return study.signals().stream()
                .filter(signal -> signal.panel().equals(panel.title()))
                .flatMap(signal -> parts(signal).stream())
                .flatMap(part -> rule(part).stream())
                .distinct()
                .sorted()
                .map(rule -> rule.word() + ": " + rule.words())
                .collect(Collectors.joining("; "));
    }

    private static List<String> parts(StudySignal signal) {
        return List.of(signal.said().split("; ", -1));
    }

    private static Optional<RunRule> rule(String part) {
        return Arrays.stream(RunRule.values())
                .filter(rule -> rule.words().equals(part))
                .findFirst();
    }

    private static String shortened(List<String> parts) {
        var words = parts.stream()
                .limit(MOST_WORDS)
                .map(part -> rule(part)
                        .map(RunRule::word)
                        .orElse(part.replace(" the upper limit", "").replace(" the lower limit", "")))
                .collect(Collectors.joining(", "));
        boolean cut = words.length() > MOST_CHARACTERS;
        return (cut ? words.substring(0, MOST_CHARACTERS) : words) + (cut || parts.size() > MOST_WORDS ? "…" : "");
    }

    /** Beside the point where there is more room, else on its other side; or nowhere. */
    private boolean label(Label label, double y, boolean below, List<Box> keepOff) {
        boolean rightward = label.signal.point() < n * 0.6;
        return label(label, y, below, rightward, keepOff) || label(label, y, below, !rightward, keepOff);
    }

    /** On the point's own side of the centre, a line farther out where something stands, else on the other; or nowhere. */
    private boolean label(Label label, double y, boolean below, boolean rightward, List<Box> keepOff) {
        var signal = label.signal;
        var words = label.words;
        double wide = words.length() * CHARACTER * across.getLength();
        double left = rightward ? signal.point() : signal.point() - wide;
        double line = LINE * up.getLength();
        if (left < across.getLowerBound() || left + wide > across.getUpperBound()) {
            return false;
        }
        for (int i = 0; i < 2 * MOST_STEPS; i++) {
            int step = i % MOST_STEPS + 1;
            double middle = y + (below == i < MOST_STEPS ? -step : step) * line;
            var box = new Box(left, left + wide, middle - line / 2, middle + line / 2);
            if (!up.contains(box.bottom)
                    || !up.contains(box.top)
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

    private static boolean goesOn(StudySignal before, StudySignal signal) {
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
    private static String kind(String part) {
        return rule(part).isPresent() ? part : part.replaceAll("[0-9.]+", "");
    }

    private record Box(double left, double right, double bottom, double top) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
        }
    }
}
