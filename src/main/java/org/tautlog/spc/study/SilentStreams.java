package org.tautlog.spc.study;

import java.util.LinkedHashMap;
import java.util.Map;

/** Streams of a study that were seen too seldom to be called watched. */
public final class SilentStreams {
    private static final int FEWEST_TIMES = 4;

    private SilentStreams() {}

    /**
     * Finds the streams that fell silent.
     *
     * @param study a finished study of any kind
     * @return why, by the name of each stream that has a centre, and no value in the second half of the times or one at under
     *     half of them; empty below 4 times or where no streams were charted
     */
    public static Map<String, String> of(SeriesStudy study) {
        var silent = new LinkedHashMap<String, String>();
        int times = study.points();
        if (study.kind() != StudyKind.STREAMS || times < FEWEST_TIMES) return silent;
        for (var panel : study.panels()) {
            if (!panel.title().equals(StreamSaid.DIFFERENCES)) continue;
            for (var line : panel.lines()) {
                var points = line.chart().points();
                int last = points.get(points.size() - 1).index() + 1;
                if (2 * last <= times) silent.put(line.name(), "no value after point " + last + " of " + times);
                else if (2 * points.size() < times)
                    silent.put(line.name(), "a value at only " + points.size() + " of " + times + " points");
            }
        }
        return silent;
    }
}
