package org.tautlog.report.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.tautlog.spc.Answer;
import org.tautlog.spc.chart.ChartPoint;
import org.tautlog.spc.study.SeriesStudy;
import org.tautlog.spc.study.StudyKind;

/** Control charts as one JSON object. Keys never change their meaning; points count from 1. */
public final class SeriesJson {
    private SeriesJson() {}

    /**
     * Writes charts.
     *
     * @param kind what was charted
     * @param value the columns charted
     * @param rejectedRows how many rows of the file could not be used
     * @param groups the study of each group by its name, empty name where there is one group
     * @param unwatched groups and streams that no limits watched
     * @param exitCode what the program returns
     * @return one JSON object without a line end
     */
    public static String of(
            StudyKind kind,
            String value,
            int rejectedRows,
            Map<String, Answer<SeriesStudy>> groups,
            List<Unwatched> unwatched,
            int exitCode) {
        var root = Nodes.object();
        root.put("kind", kind.word());
        root.put("value", value);
        root.put("rejectedRows", rejectedRows);
        root.put("exitCode", exitCode);
        var missed = root.putArray("unwatched");
        unwatched.forEach(one -> missed.addObject().put("name", one.name()).put("reason", one.reason()));
        var list = root.putArray("groups");
        groups.forEach((name, study) -> {
            var node = list.addObject();
            node.put("group", name);
            study.found()
                    .ifPresentOrElse(
                            found -> fill(node, found),
                            () -> node.put("whyMissing", study.whyMissing().orElse("")));
        });
        return Nodes.text(root);
    }

    private static void fill(ObjectNode node, SeriesStudy study) {
        node.put("values", study.values());
        node.put("points", study.points());
        node.put("basis", study.basis());
        var figures = node.putObject("figures");
        study.figures().forEach(figure -> figures.put(figure.name(), Nodes.number(figure.value())));
        node.put("signalCount", study.signalCount());
        var signals = node.putArray("signals");
        for (var signal : study.signals()) {
            signals.addObject()
                    .put("point", signal.point())
                    .put("place", signal.place())
                    .put("panel", signal.panel())
                    .put("value", Nodes.number(signal.value()))
                    .put("broken", signal.said());
        }
        var removed = node.putArray("leftOut");
        for (var point : study.removed()) {
            removed.addObject()
                    .put("point", point.point())
                    .put("place", point.place())
                    .put("value", Nodes.number(point.value()))
                    .put("reason", point.said());
        }
        var notes = node.putArray("notes");
        study.notes().forEach(notes::add);
        var panels = node.putArray("panels");
        for (var panel : study.panels()) {
            var lines = panels.addObject().put("title", panel.title()).putArray("lines");
            for (var line : panel.lines()) {
                var points = lines.addObject().put("name", line.name()).putArray("points");
                line.chart().points().forEach(point -> point(points.addObject(), point));
            }
        }
    }

    private static void point(ObjectNode node, ChartPoint point) {
        node.put("point", point.index() + 1);
        node.put("value", Nodes.number(point.value()));
        node.put("lower", Nodes.number(point.lower()));
        node.put("centre", Nodes.number(point.centre()));
        node.put("upper", Nodes.number(point.upper()));
        var broken = node.putArray("broken");
        point.broken().forEach(rule -> broken.add(Nodes.word(rule)));
    }
}
