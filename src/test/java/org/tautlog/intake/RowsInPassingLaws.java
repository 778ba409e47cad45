package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tautlog.trace.Curve;
import org.tautlog.trace.TraceIdentity;

/**
 * Rows that are read where they stand, far enough down in a file, say what they say as lines of their own: each log is read
 * as it is and once more with a cell of every row in quotes, which no row that is read in passing has.
 */
class RowsInPassingLaws {
    /** More lines than are looked at for the layout. */
    private static final int ROWS_BEFORE = 230;

    private static final int LONGEST = 60;

    private record Read(List<TraceIdentity> identities, List<Curve> curves, List<String> account) {}

    @Property(tries = 300)
    void a_long_table_reads_the_same_in_passing(@ForAll("longRows") List<String> rows) throws IOException {
        var before = IntStream.range(0, ROWS_BEFORE)
                .mapToObj(i -> String.format(Locale.ROOT, "FW-1,%.1f,%.1f,1", i / 2.0, i / 3.0));
        assertSame("Serial,Angle (deg),Torque (Nm),Stage\n", before.toList(), rows);
    }

    @Property(tries = 300)
    void a_file_for_a_trace_reads_the_same_in_passing(@ForAll("ownRows") List<String> rows) throws IOException {
        var before = IntStream.range(0, ROWS_BEFORE)
                .mapToObj(i -> String.format(Locale.ROOT, "%.1f,%.1f,%.3f", i / 2.0, i / 3.0, i / 900.0));
        assertSame("Serial: FW-1\nAngle (deg),Torque (Nm),Time (s)\n", before.toList(), rows);
    }

    private static void assertSame(String head, List<String> before, List<String> rows) throws IOException {
        var all = new ArrayList<>(before);
        all.addAll(rows);
        var plain = read(head + String.join("\n", all) + "\n");
        var quoted = read(head + all.stream().map(RowsInPassingLaws::quoted).collect(Collectors.joining("\n")) + "\n");
        assertEquals(quoted, plain);
        assertTrue(plain.account().size() > 0);
    }

    /** The last cell in quotes where the line is a row that bears them. */
    private static String quoted(String row) {
        int cell = row.lastIndexOf(',') + 1;
        boolean noRow = row.startsWith("#") || row.startsWith("Stage") || row.contains(":") || row.contains("(");
        return cell == 0 || noRow || row.length() > LONGEST
                ? row
                : row.substring(0, cell) + '"' + row.substring(cell) + '"';
    }

    private static Read read(String text) throws IOException {
        var file = Files.createTempFile("tautlog", ".csv");
        try {
            Files.writeString(file, text);
            var read = new Read(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            var summary = LogReader.read(
                    List.of(file),
                    ReadOptions.withDefaults().withBounds(new ReadBounds(236, LONGEST, 1 << 20, 200, 10, 50, 10)),
                    trace -> {
                        read.identities().add(trace.identity());
                        read.curves().add(trace.curve());
                        read.account().add("trace at line " + trace.source().line());
                    });
            read.account().add(summary.lines() + " " + summary.traces());
            summary.problems()
                    .forEach(problem -> read.account()
                            .add(problem.code() + " at line "
                                    + problem.where().line() + " "
                                    + problem.where().key()));
            return read;
        } finally {
            Files.delete(file);
        }
    }

    @Provide
    Arbitrary<List<String>> longRows() {
        return Arbitraries.of(
                        "FW-1,200,90,1",
                        "FW-1,201,91,2",
                        "FW-1,1e2,92,2",
                        "FW-2,0,1,1",
                        "FW-2,0.5,2,1",
                        "FW-2,-0.5,2,",
                        " FW-2 ,1, 3 ,1",
                        "FW-2,1,3",
                        "FW-2,1,3,1,1",
                        "FW-2,x,3,1",
                        "FW-2,1,,1",
                        "FW-2,1,3,1.5",
                        "FW-3,0,1,1",
                        "Serial,Angle (deg),Torque (Nm),Stage",
                        "Serial,Angle (deg),Torque (lbf ft),Stage",
                        ",(deg),(Nm),",
                        "#FW-2,1,3,1",
                        "# note",
                        "",
                        ",,,",
                        "FW-2,1,3,1                                                                       ")
                .list()
                .ofMaxSize(12);
    }

    @Provide
    Arbitrary<List<String>> ownRows() {
        return Arbitraries.of(
                        "120,90,1.2",
                        "121,91,1.3",
                        "-0.5,0,0",
                        ".5,1,1",
                        "0,1,",
                        "0,1,x",
                        "0,1",
                        "0,1,2,3",
                        "step,1,2",
                        "Stage: 2",
                        "Stage,2",
                        "Serial: FW-2",
                        "Samples: 3",
                        "Angle (deg),Torque (Nm),Time (s)",
                        "Angle (deg),Torque (lbf ft),Time (s)",
                        "(deg),(Nm),(s)",
                        "#1,2,3",
                        "")
                .list()
                .ofMaxSize(12);
    }
}
