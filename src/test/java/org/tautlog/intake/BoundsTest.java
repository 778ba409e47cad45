package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.intake.file.Sha256;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

class BoundsTest {
    private static final String HEADER = "Trace,Serial,Angle (deg),Torque (Nm)\n";

    @TempDir
    private Path folder;

    @Test
    void a_packed_file_that_swells_beyond_all_measure_is_refused() throws IOException {
        var gzip = folder.resolve("a.csv.gz");
        try (var stream = new GZIPOutputStream(Files.newOutputStream(gzip))) {
            fill(stream);
        }
        var zip = folder.resolve("b.zip");
        try (var stream = new ZipOutputStream(Files.newOutputStream(zip))) {
            stream.putNextEntry(new ZipEntry("a.csv"));
            fill(stream);
        }
        var summary = LogReader.read(List.of(folder), ReadOptions.withDefaults(), trace -> {});
        assertEquals(List.of(ProblemCode.TOO_LARGE, ProblemCode.TOO_LARGE), codes(summary));
        assertEquals(new Tally(2, 0, 2, 0), summary.files());
    }

    @Test
    void problems_beyond_the_bound_are_counted_and_not_kept() throws IOException {
        var rows = new StringBuilder(HEADER);
        for (int i = 0; i < 50; i++) {
            rows.append(i).append(",FW-").append(i).append(",0,none\n");
        }
        var bounds = new ReadBounds(100, 1000, 1000, 100, 10, 7, 10);
        var summary = LogReader.read(
                List.of(write("a.csv", rows.toString())),
                ReadOptions.withDefaults().withBounds(bounds),
                trace -> {});
        assertEquals(7, summary.problems().size());
        assertEquals(50, summary.problemsMet());
        assertEquals(new Tally(50, 0, 50, 0), summary.traces());
        assertEquals(new Tally(51, 1, 50, 0), summary.lines());
    }

    @Test
    void a_line_that_is_too_long_rejects_its_trace_alone() throws IOException {
        var rows = HEADER + "1,FW-1,0,1\n2,FW-2,0," + "9".repeat(2000) + "\n3,FW-3,0,3\n";
        var bounds = new ReadBounds(100, 1000, 1000, 100, 10, 7, 10);
        var traces = new ArrayList<Trace>();
        var summary = LogReader.read(
                List.of(write("a.csv", rows)), ReadOptions.withDefaults().withBounds(bounds), traces::add);
        assertEquals(
                List.of("FW-1", "FW-3"),
                traces.stream().map(trace -> trace.identity().serial()).toList());
        assertEquals(List.of(ProblemCode.TOO_LARGE), codes(summary));
        assertEquals(3, summary.problems().get(0).where().line());
    }

    @Test
    void a_long_table_longer_than_memory_is_read_a_trace_at_a_time() throws IOException {
        var file = folder.resolve("long.csv.gz");
        int traces = 3000;
        try (var stream = new GZIPOutputStream(Files.newOutputStream(file))) {
            stream.write(HEADER.getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < traces; i++) {
                stream.write(rows(i).getBytes(StandardCharsets.UTF_8));
            }
        }
        var most = new long[1];
        var summary = LogReader.read(List.of(file), ReadOptions.withDefaults(), trace -> {
            most[0] = Math.max(most[0], trace.curve().size());
        });
        assertEquals(traces, summary.traces().kept(), () -> summary.problems().toString());
        assertEquals(100, most[0]);
    }

    @Test
    void a_packed_file_cut_short_is_told_even_where_it_cuts_a_trace_that_was_lost_before() throws IOException {
        var whole = new ByteArrayOutputStream();
        try (var stream = new GZIPOutputStream(whole)) {
            stream.write((HEADER + "1,FW-1,0,1\n2,FW-2,0,none\n").getBytes(StandardCharsets.UTF_8));
            for (int i = 1; i < 5000; i++) {
                stream.write(("2,FW-2," + i + "," + Math.sqrt(i) + "\n").getBytes(StandardCharsets.UTF_8));
            }
        }
        var file = folder.resolve("cut.csv.gz");
        Files.write(file, Arrays.copyOf(whole.toByteArray(), whole.size() / 2));
        var summary = LogReader.read(List.of(file), ReadOptions.withDefaults(), trace -> {});
        assertEquals(Set.of(ProblemCode.NOT_A_NUMBER, ProblemCode.TRUNCATED), Set.copyOf(codes(summary)));
        assertEquals(new Tally(2, 1, 1, 0), summary.traces());
    }

    @Test
    void each_trace_carries_the_hash_of_its_file_and_the_line_of_its_first_row() throws IOException {
        var file = write("a.csv", HEADER + "1,FW-1,0,1\n2,FW-2,0,2\n");
        var traces = new ArrayList<Trace>();
        LogReader.read(List.of(file), ReadOptions.withDefaults(), traces::add);
        var hash = Sha256.hex(Sha256.digest().digest(Files.readAllBytes(file)));
        assertEquals(
                List.of(2, 3),
                traces.stream().map(trace -> trace.source().line()).toList());
        assertTrue(traces.stream().allMatch(trace -> trace.source().sha256().equals(hash)));
        assertTrue(traces.stream().allMatch(trace -> trace.source().file().equals(file.toString())));
    }

    @Test
    void what_is_not_there_is_a_problem_and_the_rest_is_read() throws IOException {
        var file = write("a.csv", HEADER + "1,FW-1,0,1\n");
        var summary =
                LogReader.read(List.of(folder.resolve("none.csv"), file), ReadOptions.withDefaults(), trace -> {});
        assertEquals(List.of(ProblemCode.NOT_READABLE), codes(summary));
        assertEquals(new Tally(2, 1, 1, 0), summary.files());
    }

    private static String rows(int trace) {
        var rows = new StringBuilder();
        for (int i = 0; i < 100; i++) {
            rows.append(trace)
                    .append(",FW-")
                    .append(trace)
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(i + trace)
                    .append('\n');
        }
        return rows.toString();
    }

    private static void fill(OutputStream stream) throws IOException {
        stream.write(HEADER.getBytes(StandardCharsets.UTF_8));
        var block = "1,FW-1,0,0\n".repeat(100_000).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 40; i++) {
            stream.write(block);
        }
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static List<ProblemCode> codes(ReadSummary summary) {
        return summary.problems().stream().map(problem -> problem.code()).toList();
    }
}
