package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * Whatever a file holds, the reader comes back with an account of it. {@link Tally} refuses an account in which in is
 * not kept + rejected + ignored, and in is counted apart, so that each reading here proves the law.
 */
class DamagedLogsLaws {
    private static final ReadBounds SMALL = new ReadBounds(50, 200, 1 << 20, 200, 10, 5, 10);

    @Property(tries = 150)
    void any_bytes_are_accounted_for(@ForAll @Size(max = 400) byte[] bytes) throws IOException {
        var summary = read(bytes, ".csv", ReadOptions.withDefaults(), new ArrayList<>());
        assertEquals(1, summary.files().in());
    }

    @Property(tries = 250)
    void any_rows_of_any_cells_are_accounted_for(@ForAll("logs") String text) throws IOException {
        var traces = new ArrayList<Trace>();
        var summary = read(
                text.getBytes(java.nio.charset.StandardCharsets.UTF_8), ".csv", ReadOptions.withDefaults(), traces);
        assertEquals(traces.size(), summary.traces().kept());
        assertTrue(
                summary.files().kept() == 1 || !summary.problems().isEmpty(), "a file that gives nothing is explained");
    }

    @Property(tries = 250)
    void a_log_with_one_byte_changed_is_accounted_for(
            @ForAll LogShape shape,
            @ForAll Packing packing,
            @ForAll @IntRange(max = 100_000) int place,
            @ForAll byte put)
            throws IOException {
        var bytes = log(shape, packing);
        bytes[place % bytes.length] = put;
        var summary = read(bytes, ending(packing), ReadOptions.withDefaults(), new ArrayList<>());
        assertTrue(summary.files().in() >= 1);
    }

    @Property(tries = 150)
    void a_log_cut_anywhere_gives_whole_traces_or_none(
            @ForAll LogShape shape, @ForAll Packing packing, @ForAll @IntRange(max = 100_000) int place)
            throws IOException {
        var bytes = log(shape, packing);
        var traces = new ArrayList<Trace>();
        read(java.util.Arrays.copyOf(bytes, place % bytes.length), ending(packing), ReadOptions.withDefaults(), traces);
        var whole = List.of(trace(1).curve(), trace(2).curve(), trace(3).curve());
        long foreign = traces.stream()
                .limit(Math.max(0, traces.size() - 1L))
                .filter(trace -> !whole.contains(trace.curve()))
                .count();
        assertEquals(0, foreign, "only the last trace can have lost what no reader can miss");
    }

    @Property(tries = 60)
    void small_bounds_are_kept(@ForAll LogShape shape, @ForAll @IntRange(min = 1, max = 60) int most)
            throws IOException {
        var traces = new ArrayList<Trace>();
        var bounds = new ReadBounds(most, 1 << 20, 1 << 20, 200, 10, 5, 10);
        var summary = read(
                log(shape, Packing.PLAIN), ".csv", ReadOptions.withDefaults().withBounds(bounds), traces);
        traces.forEach(trace -> assertTrue(trace.curve().size() <= most));
        assertEquals(expectedKept(shape, most), summary.traces().kept());
        assertFalse(summary.problems().size() > bounds.mostProblems());
        read(log(shape, Packing.PLAIN), ".csv", ReadOptions.withDefaults().withBounds(SMALL), traces);
    }

    private static int expectedKept(LogShape shape, int most) {
        int traces = shape == LogShape.FILE_PER_TRACE ? 1 : 3;
        int kept = 0;
        for (int i = 1; i <= traces; i++) {
            kept += trace(i).curve().size() <= most ? 1 : 0;
        }
        return kept;
    }

    private static ReadSummary read(byte[] bytes, String ending, ReadOptions options, List<Trace> traces)
            throws IOException {
        var file = Files.createTempFile("tautlog", ending);
        try {
            Files.write(file, bytes);
            return LogReader.read(List.of(file), options, traces::add);
        } finally {
            Files.delete(file);
        }
    }

    private static String ending(Packing packing) {
        return packing == Packing.ZIP ? ".zip" : ".csv";
    }

    /** Three traces of 11, 12 and 13 samples; of the shape with a file for each the first. */
    private static byte[] log(LogShape shape, Packing packing) throws IOException {
        var folder = Files.createTempDirectory("tautlog");
        var target = folder.resolve("shift.log");
        try (var writer = LogWriter.open(target, shape, packing)) {
            for (int i = 1; i <= 3; i++) {
                writer.write(trace(i));
            }
        }
        List<Path> files;
        try (var found = Files.walk(folder)) {
            files = found.filter(Files::isRegularFile).sorted().toList();
        }
        var bytes = Files.readAllBytes(files.get(0));
        for (var file : files) {
            Files.delete(file);
        }
        Files.deleteIfExists(target);
        Files.delete(folder);
        return bytes;
    }

    private static Trace trace(int number) {
        int size = 10 + number;
        var angle = new double[size];
        var torque = new double[size];
        for (int i = 0; i < size; i++) {
            angle[i] = 0.25 * i;
            torque[i] = 0.5 * i + number;
        }
        var identity = new TraceIdentity("FW-00000" + number, "S40", "2", String.valueOf(number), 1, null, "A17");
        return new Trace(identity, new Source("", 1, ""), Curve.of(angle, torque));
    }

    @Provide
    Arbitrary<String> logs() {
        var cell = Arbitraries.of(
                "0",
                "1.5",
                "-3",
                "1,5",
                "1.234,5",
                "NaN",
                "",
                "FW-1",
                "FW-2",
                "\"a;b\"",
                "\"",
                "---",
                "[1 2]",
                "1 2 3",
                "\0",
                "Serial",
                "Angle (deg)",
                "Torque (Nm)",
                "Time (s)",
                "Stage",
                "Trace",
                "Bolt",
                "Torque (kg)",
                "\ufffd",
                "#");
        var line = cell.list().ofMinSize(1).ofMaxSize(5).map(cells -> String.join(",", cells));
        var heading = Arbitraries.of(
                "Serial: FW-1",
                "Serial: FW-2",
                "Recorded: 2026-03-02",
                "Samples: 2",
                "",
                "# note",
                "Angle (deg),Torque (Nm)",
                "Trace,Serial,Angle (deg),Torque (Nm)",
                "Serial,Angle;Torque",
                "Angle (deg);Torque (Nm)",
                "[deg],[Nm]");
        return Arbitraries.oneOf(line, heading).list().ofMaxSize(12).map(lines -> String.join("\n", lines));
    }
}
