package org.tautlog.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.tautlog.spc.Digits;
import org.tautlog.spc.gauge.GaugePlot;
import org.tautlog.spc.gauge.GaugeResult;

/** A crossed gauge study in a drawing that stands alone: what varies, how well repeats agree, and what was measured. */
public final class GaugeChart {
    /** Most parts that are drawn. */
    public static final int MOST_PARTS = 60;

    /** Most appraisers that are drawn. */
    public static final int MOST_APPRAISERS = 6;

    private static final int WIDTH = 900;
    private static final int HALF_HIGH = 240;
    private static final int FULL_HIGH = 290;
    private static final int LONGEST_NAME = 12;
    private static final int MOST_CHARACTERS = 90;
    private static final int FEW_APPRAISERS = 3;
    private static final double ROOM = 0.16;
    private static final double NAMES = 0.04;
    private static final double GAP = 1;
    private static final double SAMPLE = 0.035;
    private static final float[][] DASHES = {{}, {7f, 3f}, {2f, 3f}, {9f, 3f, 2f, 3f}, {4f, 2f}, {1f, 2f}};

    private GaugeChart() {}

    /**
     * A study as it is drawn.
     *
     * @param said the study in words, a line each
     * @param parts names of the parts, in the plot's order
     * @param appraisers names of the appraisers, in the plot's order
     * @param result the components
     * @param plot means and ranges
     */
    public record Drawn(
            List<String> said, List<String> parts, List<String> appraisers, GaugeResult result, GaugePlot plot) {
        public Drawn {
            said = List.copyOf(said);
            parts = List.copyOf(parts);
            appraisers = List.copyOf(appraisers);
        }
    }

    /**
     * Draws a study as SVG.
     *
     * @param value what was measured, for the titles
     * @param unit its unit; empty for none
     * @param drawn the study
     * @return an SVG document
     */
    public static String svg(String value, String unit, Drawn drawn) {
        return Svg.standing(sheet(value, unit, drawn), "Gauge study of " + value);
    }

    /**
     * Draws a study as PNG, twice as fine as the SVG's own size.
     *
     * @param value what was measured, for the titles
     * @param unit its unit; empty for none
     * @param drawn the study
     * @return the bytes of the picture
     */
    public static byte[] png(String value, String unit, Drawn drawn) {
        return Png.of(sheet(value, unit, drawn));
    }

    private static Sheet sheet(String value, String unit, Drawn drawn) {
        var axis = unit.isEmpty() ? value : value + ", " + unit;
        var said = new ArrayList<>(drawn.said());
        first(said, MOST_PARTS, drawn.parts().size(), "parts");
        first(said, MOST_APPRAISERS, drawn.appraisers().size(), "appraisers");
        return Titles.above(Sheet.empty(WIDTH), value + ": gauge study", said)
                .below(HALF_HIGH, components(drawn.result(), unit), ranges(drawn, unit))
                .below(FULL_HIGH, measured(drawn, axis));
    }

    private static void first(List<String> said, int most, int there, String what) {
        if (there > most) {
            said.add("drawn are the first " + most + " of " + there + ' ' + what);
        }
    }

    private static JFreeChart components(GaugeResult result, String unit) {
        var names = List.of("repeatability", "reproducibility", "gauge, both", "parts", "total");
        var sizes = List.of(
                result.repeatability(), result.reproducibility(), result.gauge(), result.part(), result.total());
        var ticks = new TreeMap<Double, String>();
        IntStream.range(0, names.size()).forEach(i -> ticks.put(-1.0 * i, names.get(i)));
        var plot = Plots.empty(
                Plots.fineAxis("standard deviation" + (unit.isEmpty() ? "" : ", " + unit), 0, result.total() * 1.7),
                Plots.axisAt("", ticks, 0.6 - names.size(), 0.6));
        plot.setRangeGridlinesVisible(false);
        for (int i = 0; i < names.size(); i++) {
            double size = sizes.get(i);
            if (size > 0) {
                plot.addAnnotation(Plots.line(0, -i, size, -i, Ink.WINDOW, 7f));
            }
            var words = "  " + Digits.of(size, result.total()) + "  "
                    + String.format(Locale.ROOT, "%.1f %%", 100 * size / result.total());
            plot.addAnnotation(Plots.text(words, size, -i, TextAnchor.CENTER_LEFT, Ink.TEXT));
        }
        return Plots.chart(plot);
    }

    /** One appraiser after another, the parts of each in their order. */
    private static JFreeChart ranges(Drawn drawn, String unit) {
        var cells = drawn.plot().cells();
        int parts = Math.min(MOST_PARTS, cells.size());
        int appraisers = appraisers(drawn);
        double wide = parts + GAP;
        double most = cells.stream()
                .flatMap(List::stream)
                .mapToDouble(GaugePlot.Cell::range)
                .max()
                .orElse(1);
        double high = 1.35 * Math.max(most, drawn.plot().upperRange());
        double last = appraisers * wide;
        var plot = Plots.empty(
                Plots.axisAt("each appraiser's parts, in their order", new TreeMap<>(), 0, last * (1 + 3 * ROOM)),
                Plots.fineAxis("range of the trials" + (unit.isEmpty() ? "" : ", " + unit), 0, high));
        plot.setRangeGridlinesVisible(false);
        for (int a = 0; a < appraisers; a++) {
            var line = Plots.series(0);
            var marks = Plots.series(0);
            for (int p = 0; p < parts; p++) {
                double range = cells.get(p).get(a).range();
                line.add(a * wide + p + 1, range);
                if (range > drawn.plot().upperRange()) {
                    marks.add(a * wide + p + 1, range);
                }
            }
            Plots.lines(plot, Plots.only(line), Ink.PEER, 0.9f);
            Plots.points(plot, line, PointsRenderer.dots(parts > 30 ? 2.4f : 3.4f, Ink.TRACE));
            Plots.points(plot, marks, PointsRenderer.square());
            plot.addAnnotation(Plots.text(
                    shortened(drawn.appraisers().get(a), drawn.appraisers()),
                    a * wide + 0.5,
                    (appraisers > FEW_APPRAISERS && a % 2 == 1 ? 0.86 : 0.95) * high,
                    TextAnchor.CENTER_LEFT,
                    Ink.TEXT));
        }
        level(plot, "upper", drawn.plot().upperRange(), last, 4f, 3f);
        level(plot, "mean", drawn.plot().meanRange(), last);
        return Plots.chart(plot);
    }

    private static void level(XYPlot plot, String name, double at, double last, float... dash) {
        plot.addAnnotation(Plots.line(0, at, last, at, Ink.WINDOW, 1.1f, dash));
        plot.addAnnotation(Plots.text(" " + name + " " + Digits.of(at), last, at, TextAnchor.CENTER_LEFT, Ink.WINDOW));
    }

    /** Every trial by part; the means of each appraiser joined by a line with its own dashes and its name at the end. */
    private static JFreeChart measured(Drawn drawn, String axis) {
        var cells = drawn.plot().cells();
        int parts = Math.min(MOST_PARTS, cells.size());
        int appraisers = appraisers(drawn);
        var trials = cells.stream()
                .limit(parts)
                .flatMap(List::stream)
                .flatMap(cell -> cell.trials().stream())
                .sorted()
                .toList();
        double low = trials.get(0);
        double high = trials.get(trials.size() - 1);
        double margin = Math.max(1e-12, 0.08 * (high - low));
        var ticks = new TreeMap<Double, String>();
        int longest = drawn.parts().stream()
                .limit(parts)
                .mapToInt(name -> shortened(name, drawn.parts()).length())
                .max()
                .orElse(1);
        int every = (int) Math.ceil(parts * (longest + 2.0) / MOST_CHARACTERS);
        for (int p = 0; p < parts; p += every) {
            ticks.put(p + 1.0, shortened(drawn.parts().get(p), drawn.parts()));
        }
        var plot = Plots.empty(
                Plots.axisAt("part", ticks, 0.4, 0.4 + parts * (1 + ROOM + NAMES) + ROOM),
                Plots.fineAxis(axis, low - margin, high + margin));
        for (int a = 0; a < appraisers; a++) {
            double aside = (a - (appraisers - 1) / 2.0) * 0.6 / appraisers;
            var means = Plots.series(0);
            var dots = Plots.series(0);
            for (int p = 0; p < parts; p++) {
                var cell = cells.get(p).get(a);
                means.add(p + 1 + aside, cell.mean());
                for (double trial : cell.trials()) {
                    dots.add(p + 1 + aside, trial);
                }
            }
            Plots.lines(plot, Plots.only(means), Ink.WINDOW, 1.2f, DASHES[a]);
            Plots.points(plot, dots, PointsRenderer.dots(parts > 30 ? 2.4f : 3.4f, Ink.TRACE));
        }
        names(plot, drawn.appraisers().subList(0, appraisers), parts);
        return Plots.chart(plot);
    }

    /** The appraisers in their order, each with the dashes of its line. */
    private static void names(XYPlot plot, List<String> names, int parts) {
        double apart = 0.075 * plot.getRangeAxis().getRange().getLength();
        double from = parts + 0.45 + 0.01 * parts;
        double to = from + SAMPLE * parts;
        for (int a = 0; a < names.size(); a++) {
            double height = plot.getRangeAxis().getUpperBound() - (a + 0.5) * apart;
            plot.addAnnotation(Plots.line(from, height, to, height, Ink.WINDOW, 1.2f, DASHES[a]));
            plot.addAnnotation(
                    Plots.text("  " + shortened(names.get(a), names), to, height, TextAnchor.CENTER_LEFT, Ink.WINDOW));
        }
    }

    private static int appraisers(Drawn drawn) {
        return Math.min(MOST_APPRAISERS, drawn.appraisers().size());
    }

    /** Names that are too long begin where they differ from each other. */
    private static String shortened(String name, List<String> names) {
        if (name.length() <= LONGEST_NAME) {
            return name;
        }
        var first = names.get(0);
        int alike = (int) IntStream.range(0, first.length())
                .takeWhile(i -> names.stream().allMatch(other -> other.startsWith(first.substring(0, i + 1))))
                .count();
        int from = Math.max(0, Math.min(alike, name.length() - 1));
        var rest = (from > 0 ? "…" : "") + name.substring(from);
        return rest.length() <= LONGEST_NAME ? rest : rest.substring(0, LONGEST_NAME - 1) + "…";
    }
}
