package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.text.Line;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** A fault of ours costs the file that brings it out, and no other. */
class ReadingFailedTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void a_file_on_which_the_reader_fails_is_rejected_by_name_and_the_others_are_read(int threads) throws Exception {
        var logs = List.of(log("a.csv", 1), log("b.csv", 2), log("c.csv", 3));
        var serials = new ArrayList<String>();

        var summary = LogReader.read(
                logs,
                ReadOptions.withDefaults().withThreads(threads),
                trace -> serials.add(trace.identity().serial()),
                failingOn("b.csv"));

        var problem = summary.problems().get(0);
        assertAll(
                () -> assertEquals(List.of("FW-1", "FW-3"), serials),
                () -> assertEquals(new Tally(3, 2, 1, 0), summary.files()),
                () -> assertEquals(1, summary.problemsMet()),
                () -> assertEquals(ProblemCode.READING_FAILED, problem.code()),
                () -> assertTrue(problem.where().file().endsWith("b.csv"), problem.where()::file),
                () -> assertTrue(problem.what().contains("a slip of ours"), problem::what));
    }

    @Test
    void what_a_broken_reading_left_unsettled_counts_as_rejected_of_its_file_alone() {
        var whole = new ReadLedger(10);
        var before = whole.ofFile((bytes, what) -> what.run());
        before.files.in(1);
        before.files.kept(1);
        before.lines.in(7);
        before.lines.kept(7);
        before.close();
        var broken = whole.ofFile((bytes, what) -> what.run());
        broken.files.in(1);
        broken.lines.in(9);
        broken.lines.kept(4);
        broken.breakOff(ReadingFailed.problem(Where.file("b.csv"), "file", new IllegalStateException("a slip")));
        broken.close();

        var summary = whole.summary();
        assertAll(
                () -> assertEquals(new Tally(2, 1, 1, 0), summary.files()),
                () -> assertEquals(new Tally(16, 11, 5, 0), summary.lines()));
    }

    private Path log(String name, int serial) throws Exception {
        return Files.writeString(
                folder.resolve(name),
                String.format(
                        Locale.ROOT, "Serial,Angle deg,Torque Nm\nFW-%1$d,1,%1$d\nFW-%1$d,2,3\nFW-%1$d,3,4\n", serial));
    }

    private static LayoutWatch failingOn(String name) {
        return (String file, Charset charset, Outcome<FileLayout> layout, List<Line> head) -> {
            if (file.endsWith(name)) {
                throw new IllegalStateException("a slip of ours");
            }
            return true;
        };
    }
}
