package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.tautlog.intake.layout.LayoutFile;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

/**
 * Real recordings under open licences, read by a layout file each and held against the figures that their authors
 * published beside them. They are not part of the project: where they are absent the tests are skipped.
 */
class RealLogsPublishedTest {
    /**
     * Source: West and Deuse, 5000 tightenings of an automatic station, MIT licence, labels at
     * doi:10.5281/zenodo.14729547; number of samples, peak torque and peak angle of each run as the authors list them.
     */
    @Test
    void a_station_of_5000_tightenings_reads_as_its_authors_list_it() throws IOException {
        var folder = dataFolder("industrial_tightening_5000");
        var listed = listed(folder, "run_id");
        var seen = new Seen();
        var summary = read(folder.resolve("traces.csv.gz"), "industrial_tightening_5000.toml", trace -> {
            seen.traces++;
            seen.samples += trace.curve().size();
            var run = listed.get(trace.identity().serial());
            assertEquals(run.get("n_points"), String.valueOf(trace.curve().size()));
            assertEquals(
                    Double.parseDouble(run.get("peak_torque_Nm")),
                    max(trace.curve().torquesNm()),
                    5e-4);
            assertEquals(
                    Double.parseDouble(run.get("peak_angle_deg")),
                    max(trace.curve().anglesDeg()),
                    5e-3);
        });
        assertEquals(5000, seen.traces);
        assertEquals(2_893_030, seen.samples);
        assertEquals(new Tally(5000, 5000, 0, 0), summary.traces());
        assertEquals(new Tally(2_893_031, 2_893_031, 0, 0), summary.lines());
        assertEquals(List.of(), summary.problems());
        assertEquals(List.of(), summary.assumptions());
    }

    /**
     * Source: Al Assadi et al., Journal of Manufacturing Systems 65 (2022) 19-32, data under CC BY 4.0: samples, least
     * and greatest torque of each run as the authors list them. One of the 1210 recordings is there twice,
     * under both labels. How many step back in angle was counted in the raw rows, apart from this reader.
     */
    @Test
    void bolts_turned_loose_read_with_both_signs_as_they_are() throws IOException {
        var folder = dataFolder("loosening_traces_1210");
        var listed = listed(folder, "run_id");
        var seen = new Seen();
        var summary = read(folder.resolve("traces.csv.gz"), "loosening_traces_1210.toml", trace -> {
            seen.traces++;
            seen.backSteps += stepsBackWhileLoosening(trace) ? 1 : 0;
            var run = listed.get(trace.identity().serial());
            assertEquals(run.get("n_points"), String.valueOf(trace.curve().size()));
            assertEquals(
                    Double.parseDouble(run.get("max_torque_Nm")),
                    max(trace.curve().torquesNm()),
                    5e-4);
            assertEquals(
                    Double.parseDouble(run.get("min_torque_Nm")),
                    -max(negated(trace.curve().torquesNm())),
                    5e-4);
        });
        assertEquals(1209, seen.traces);
        assertEquals(21, seen.backSteps);
        assertEquals(new Tally(1210, 1209, 1, 0), summary.traces());
        assertEquals(
                List.of(ProblemCode.DUPLICATE_TRACE),
                summary.problems().stream().map(Problem::code).collect(Collectors.toList()));
        assertEquals(331_797, summary.problems().get(0).where().line());
    }

    private static ReadSummary read(Path log, String layout, TraceSink sink) {
        var stated = LayoutFile.read(Path.of("src/test/resources/layouts", layout));
        assertEquals(List.of(), stated.problems());
        return LogReader.read(
                List.of(log),
                ReadOptions.withDefaults().withLayout(stated.value().orElseThrow()),
                sink);
    }

    private static Path dataFolder(String name) {
        var stated = System.getProperty("tautlog.data", System.getenv("TAUTLOG_DATA"));
        var folder = Path.of(stated == null ? "../shared/data" : stated, name);
        assumeTrue(
                Files.isDirectory(folder),
                () -> "no " + name + " at hand: name its parent folder in the system property tautlog.data");
        return folder;
    }

    private static Map<String, Map<String, String>> listed(Path folder, String key) throws IOException {
        var format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        var listed = new HashMap<String, Map<String, String>>();
        try (var parser = CSVParser.parse(Files.readString(folder.resolve("runs.csv")), format)) {
            parser.forEach(record -> listed.put(record.get(key), record.toMap()));
        }
        assertTrue(listed.size() > 1000, "the list of runs was read");
        return listed;
    }

    /** Tightening counts up in a curve, so loosening counts down; a step up is one back. */
    private static boolean stepsBackWhileLoosening(Trace trace) {
        for (int i = 1; i < trace.curve().size(); i++) {
            if (trace.curve().angleDeg(i) > trace.curve().angleDeg(i - 1)) {
                return true;
            }
        }
        return false;
    }

    private static double[] negated(double[] values) {
        return java.util.Arrays.stream(values).map(value -> -value).toArray();
    }

    private static double max(double[] values) {
        return java.util.Arrays.stream(values).max().orElseThrow();
    }

    /** What the sink counted. */
    private static final class Seen {
        private int traces;
        private long samples;
        private int backSteps;
    }
}
