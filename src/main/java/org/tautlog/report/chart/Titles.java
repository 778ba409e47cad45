package org.tautlog.report.chart;

import java.awt.Font;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;

/** Lines of words above and below a chart, flush left, wrapped where they are too long. */
final class Titles {
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 13);
    private static final Font LINE = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    /** What a character and a line of them take, for the height that wrapped words need. */
    private static final double CHARACTER = 6.4;

    private static final int LINE_HIGH = 17;
    private static final int PADDING = 22;

    private Titles() {}

    static void title(JFreeChart chart, String words) {
        chart.setTitle(text(words, TITLE, Ink.TEXT));
    }

    static void subtitle(JFreeChart chart, String words) {
        chart.addSubtitle(text(words, LINE, Ink.TEXT));
    }

    static void legend(JFreeChart chart, String words) {
        var line = text(words, LINE, Ink.SIGNAL);
        line.setPosition(RectangleEdge.BOTTOM);
        chart.addSubtitle(line);
    }

    /** Height of words on a drawing of some width. */
    static int high(String words, int width) {
        return words.isEmpty() ? 0 : LINE_HIGH * (int) Math.ceil(words.length() * CHARACTER / width);
    }

    /** A title with lines below it, across all of a drawing. */
    static Sheet above(Sheet sheet, String title, List<String> lines) {
        var plot = Plots.empty(Plots.axis("", 0, 1), Plots.axis("", 0, 1));
        plot.getDomainAxis().setVisible(false);
        plot.getRangeAxis().setVisible(false);
        plot.setRangeGridlinesVisible(false);
        var chart = Plots.chart(plot);
        title(chart, title);
        lines.forEach(line -> subtitle(chart, line));
        int high = PADDING + high(title, sheet.width());
        for (var line : lines) {
            high += high(line, sheet.width());
        }
        return sheet.below(high, chart);
    }

    private static TextTitle text(String words, Font font, Ink ink) {
        var title = new TextTitle(Plain.of(words), font);
        title.setPaint(ink.colour());
        title.setHorizontalAlignment(HorizontalAlignment.LEFT);
        title.setTextAlignment(HorizontalAlignment.LEFT);
        return title;
    }
}
