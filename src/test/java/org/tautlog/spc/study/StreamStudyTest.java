package org.tautlog.spc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Simulated;

/** What a chart of parallel streams says of its streams. */
class StreamStudyTest {
    private static final int STREAMS = 5;

    @Test
    void together_is_said_only_where_no_stream_is_apart_from_the_others() {
        var limits = phaseOne(1, (t, j) -> 0).limits();
        var all = phaseTwo(limits, (t, j) -> t == 20 ? 6 : 0);
        assertTrue(ofMean(all).get(0).endsWith("above its upper limit; all moved together"), all.signals() + "");
        var one = phaseTwo(limits, (t, j) -> t == 20 && j == 3 ? 12 : 0);
        assertEquals(List.of("mean above its upper limit"), ofMean(one));
    }

    @Test
    void a_centre_that_rests_on_a_stream_that_signals_is_named() {
        var moved = phaseOne(2, (t, j) -> j == 3 && t >= 30 ? 3 : 0);
        assertTrue(
                moved.notes().stream()
                        .anyMatch(note -> note.startsWith("the centre of S3 rests on values that signal")),
                moved.notes().toString());
        assertFalse(phaseOne(1, (t, j) -> 0).notes().toString().contains("rests on"));
    }

    @Test
    void a_stream_that_falls_silent_is_named() {
        var limits = phaseOne(1, (t, j) -> 0).limits();
        var silent = phaseTwo(limits, (t, j) -> (j == 2 && t >= 10) || (j == 4 && t % 3 > 0) ? Double.NaN : 0);
        assertEquals(
                Map.of("S2", "no value after point 10 of 60", "S4", "a value at only 20 of 60 points"),
                SilentStreams.of(silent));
        assertEquals(Map.of(), SilentStreams.of(phaseTwo(limits, (t, j) -> 0)));
    }

    @Test
    void squares_of_sums_lie_on_the_line_of_their_stream() {
        var limits = phaseOne(1, (t, j) -> 0).limits();
        var study = phaseTwo(limits, (t, j) -> t < 20 ? 0 : j == 1 ? 3 : j == 3 ? 1.5 : 0);
        var sums = study.panels().get(study.panels().size() - 1);
        var signals = study.signals().stream()
                .filter(signal -> signal.panel().equals(sums.title()))
                .toList();
        assertTrue(signals.size() >= 2, study.signals().toString());
        for (var signal : signals)
            assertTrue(
                    sums.lines().stream()
                            .filter(line -> signal.said().startsWith(line.name() + ' '))
                            .anyMatch(line -> line.chart()
                                            .points()
                                            .get(signal.point() - 1)
                                            .value()
                                    == signal.value()),
                    signal.toString());
    }

    private static List<String> ofMean(SeriesStudy study) {
        return study.signals().stream()
                .filter(signal -> signal.panel().equals(StreamSaid.MEAN) && signal.point() == 21)
                .map(StudySignal::said)
                .toList();
    }

    private interface Moved {
        double at(int time, int stream);
    }

    private static SeriesStudy phaseOne(long seed, Moved moved) {
        return SeriesStudies.phaseOne(StudyKind.STREAMS, List.of("x"), rows(seed, moved), StudyOptions.withDefaults())
                .orThrow();
    }

    private static SeriesStudy phaseTwo(FrozenLimits limits, Moved moved) {
        return SeriesStudies.phaseTwo(limits, List.of("x"), rows(7, moved), StudyOptions.withDefaults())
                .orThrow();
    }

    private static List<StudyRow> rows(long seed, Moved moved) {
        var sampler = Simulated.normal(seed);
        var rows = new ArrayList<StudyRow>();
        for (int t = 0; t < 60; t++)
            for (int j = 0; j < STREAMS; j++) {
                double value = 100 + sampler.sample() + moved.at(t, j);
                if (!Double.isNaN(value)) rows.add(new StudyRow("", List.of(value), "" + t, "S" + j));
            }
        return rows;
    }
}
