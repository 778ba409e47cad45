package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tautlog.intake.file.Packing;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

class LogWriterTest {
    private static final OffsetDateTime TIME = OffsetDateTime.parse("2026-03-02T06:12:05+01:00");

    @TempDir
    private Path folder;

    @Test
    void a_file_per_trace_names_the_tightening_above_the_table() throws IOException {
        write(folder.resolve("logs"), LogShape.FILE_PER_TRACE, Packing.PLAIN, trace("FW-000017"));
        assertEquals("""
                Serial: FW-000017
                Station: S40
                Spindle: 2
                Bolt: 3
                Attempt: 1
                Recorded: 2026-03-02T06:12:05+01:00
                Bolt lot: A17
                Samples: 2

                Time (s),Angle (deg),Torque (N·m),Stage
                0,0,0.5,1
                0.0012,-0.25,20.75,2
                """, Files.readString(folder.resolve("logs/000001_FW-000017_b3_a1.csv")));
    }

    @Test
    void a_long_table_repeats_the_identity_in_each_row() throws IOException {
        write(folder.resolve("shift.csv"), LogShape.LONG_TABLE, Packing.PLAIN, trace("FW-000017"));
        assertEquals("""
                Trace,Serial,Station,Spindle,Bolt,Attempt,Recorded,Bolt lot,Time (s),Angle (deg),Torque (N·m),Stage
                1,FW-000017,S40,2,3,1,2026-03-02T06:12:05+01:00,A17,0,0,0.5,1
                1,FW-000017,S40,2,3,1,2026-03-02T06:12:05+01:00,A17,0.0012,-0.25,20.75,2
                """, Files.readString(folder.resolve("shift.csv")));
    }

    @Test
    void a_row_per_trace_holds_its_samples_in_list_cells() throws IOException {
        write(folder.resolve("shift.csv"), LogShape.ROW_PER_TRACE, Packing.PLAIN, trace("FW-000017"));
        assertEquals("""
                Trace,Serial,Station,Spindle,Bolt,Attempt,Recorded,Bolt lot,Time (s),Angle (deg),Torque (N·m),Stage
                1,FW-000017,S40,2,3,1,2026-03-02T06:12:05+01:00,A17,0 0.0012,0 -0.25,0.5 20.75,1 2
                """, Files.readString(folder.resolve("shift.csv")));
    }

    @Test
    void a_serial_that_a_spreadsheet_would_evaluate_is_guarded_and_one_that_it_would_split_is_quoted()
            throws IOException {
        write(folder.resolve("a.csv"), LogShape.ROW_PER_TRACE, Packing.PLAIN, trace("=1+1"));
        write(folder.resolve("b.csv"), LogShape.ROW_PER_TRACE, Packing.PLAIN, trace("FW;=1+1"));
        assertEquals("1,'=1+1,S40", secondLine("a.csv").substring(0, 11));
        assertEquals("1,\"FW;=1+1\",\"S40\"", secondLine("b.csv").substring(0, 17));
    }

    @Test
    void a_serial_that_no_table_gives_back_is_refused() throws IOException {
        try (var writer = LogWriter.open(folder.resolve("a.csv"), LogShape.ROW_PER_TRACE, Packing.PLAIN)) {
            assertThrows(IllegalArgumentException.class, () -> writer.write(trace("FW\n1")));
            assertThrows(IllegalArgumentException.class, () -> writer.write(trace(" FW")));
        }
    }

    @Test
    void an_existing_file_is_not_overwritten() throws IOException {
        var file = Files.createFile(folder.resolve("a.csv"));
        assertThrows(
                FileAlreadyExistsException.class,
                () -> LogWriter.open(file, LogShape.LONG_TABLE, Packing.PLAIN).close());
    }

    @ParameterizedTest
    @EnumSource(Packing.class)
    void equal_traces_give_equal_bytes(Packing packing) throws IOException {
        var first = folder.resolve("a/shift.log");
        var second = folder.resolve("b/shift.log");
        write(first, LogShape.LONG_TABLE, packing, trace("FW-1"), trace("FW-2"));
        write(second, LogShape.LONG_TABLE, packing, trace("FW-1"), trace("FW-2"));
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
    }

    private String secondLine(String file) throws IOException {
        return Files.readAllLines(folder.resolve(file)).get(1);
    }

    private static void write(Path target, LogShape shape, Packing packing, Trace... traces) throws IOException {
        try (var writer = LogWriter.open(target, shape, packing)) {
            for (var trace : traces) {
                writer.write(trace);
            }
        }
    }

    private static Trace trace(String serial) {
        var curve = Curve.of(new double[] {0.0, -0.25}, new double[] {0.5, 20.75})
                .withTimeS(new double[] {0.0, 0.0012})
                .withStages(new int[] {1, 2});
        return new Trace(new TraceIdentity(serial, "S40", "2", "3", 1, TIME, "A17"), new Source("test", 1, ""), curve);
    }
}
