package org.tautlog.report.study;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
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
        return JsonFields.line(json -> {
            json.text("kind", kind.word());
            json.text("value", value);
            json.count("rejectedRows", rejectedRows);
            json.count("exitCode", exitCode);
            json.list("unwatched", unwatched, one -> {
                json.text("name", one.name());
                json.text("reason", one.reason());
            });
            json.list("groups", List.copyOf(groups.entrySet()), group -> {
                json.text("group", group.getKey());
                Answers.fields(json, group.getValue(), study -> fields(json, study));
            });
        });
    }

    private static void fields(JsonFields json, SeriesStudy study) throws IOException {
        json.count("values", study.values());
        json.count("points", study.points());
        json.text("basis", study.basis());
        json.object("figures", () -> {
            for (var figure : study.figures()) {
                json.exact(figure.name(), figure.value());
            }
        });
        json.count("signalCount", study.signalCount());
        json.list("signals", study.signals(), signal -> {
            json.count("point", signal.point());
            json.text("place", signal.place());
            json.text("panel", signal.panel());
            json.exact("value", signal.value());
            json.text("broken", signal.said());
        });
        json.list("leftOut", study.removed(), point -> {
            json.count("point", point.point());
            json.text("place", point.place());
            json.exact("value", point.value());
            json.text("reason", point.said());
        });
        json.texts("notes", study.notes().stream());
        json.list("panels", study.panels(), panel -> {
            json.text("title", panel.title());
            json.list("lines", panel.lines(), line -> {
                json.text("name", line.name());
                json.list("points", line.chart().points(), point -> point(json, point));
            });
        });
    }

    private static void point(JsonFields json, ChartPoint point) throws IOException {
        json.count("point", point.index() + 1);
        json.exact("value", point.value());
        json.exact("lower", point.lower());
        json.exact("centre", point.centre());
        json.exact("upper", point.upper());
        json.texts("broken", point.broken().stream().map(Word::of));
    }
}
