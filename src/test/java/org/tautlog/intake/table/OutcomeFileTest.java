package org.tautlog.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.problem.Problem;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredClampLoad.Point;
import org.tautlog.trace.MeasuredElongation;

class OutcomeFileTest {
    @TempDir
    private Path folder;

    @Test
    void rows_in_any_order_are_gathered_by_serial_bolt_and_attempt() throws IOException {
        var read = read("""
                # measured in the laboratory
                serial;bolt;attempt;angle-deg;clamp-load-kN
                Q1;1;1;1200,5;12,25
                Q2;1;2;1190,0;11,00
                Q1;1;;1190,5;11,50
                """);
        assertEquals(
                List.of(
                        new MeasuredClampLoad("Q1", "1", 1, List.of(new Point(1190.5, 11.5), new Point(1200.5, 12.25))),
                        new MeasuredClampLoad("Q2", "1", 2, List.of(new Point(1190, 11)))),
                read.measured());
        assertEquals(3, read.rows());
        assertEquals(0, read.rejected());
    }

    @Test
    void without_a_column_of_attempts_each_is_the_first() throws IOException {
        var read = read("clamp-load-kN,angle-deg,bolt,serial\n12.5,1200,3,Q1\n");
        assertEquals(List.of(new MeasuredClampLoad("Q1", "3", 1, List.of(new Point(1200, 12.5)))), read.measured());
    }

    @Test
    void elongation_takes_the_place_of_a_clamp_load_that_is_not_there() throws IOException {
        var read = read("serial,bolt,angle-deg,elongation-um\nQ1,3,1200,85.5\n");
        assertEquals(
                List.of(new MeasuredElongation("Q1", "3", 1, List.of(new MeasuredElongation.Point(1200, 85.5)))),
                read.elongations());
        assertEquals(List.of(), read.measured());
        var both = read("serial,bolt,angle-deg,elongation-um,clamp-load-kN\nQ1,3,1200,85.5,12.5\n");
        assertEquals(List.of(), both.elongations());
        assertEquals(1, both.measured().size());
    }

    @Test
    void every_bad_row_is_named_with_its_line_and_counted() throws IOException {
        var read = read("""
                serial,bolt,attempt,angle-deg,clamp-load-kN
                Q1,1,1,1200,12.5
                Q1,1,1,1210,abc
                Q1,1,1,,13
                ,1,1,1220,13
                Q1,1,0,1220,13
                Q1,1,two,1220,13
                Q1,1,1,1200,99
                Q1,1,1,1e999,13
                Q1,1,1,NaN,13
                Q1,1
                "Q1,1,1,1230,14
                """);
        var file = folder.resolve("outcomes.csv");
        assertEquals(
                List.of(
                        file + ":3 (clamp-load-kN): 'abc' is no number",
                        file + ":4 (angle-deg): the cell is empty",
                        file + ":9 (angle-deg): '1e999' is no number",
                        file + ":10 (angle-deg): 'NaN' is no number",
                        file + ":11 (angle-deg): the cell is empty",
                        file + ":12: the line is too long or its quotes do not close",
                        file + ":5 (serial): the cell is empty",
                        file + ":6 (attempt): '0' is no attempt; attempts count from 1",
                        file + ":7 (attempt): 'two' is no attempt; attempts count from 1",
                        file + ":8 (angle-deg): the same angle was measured before on this bolt"),
                read.problems().stream().map(Problem::sentence).toList());
        assertEquals(11, read.rows());
        assertEquals(10, read.rejected());
        assertEquals(1, read.measured().get(0).points().size());
    }

    @Test
    void a_file_that_cannot_be_used_says_so_in_one_sentence() throws IOException {
        assertEquals(
                "no column 'clamp-load-kN'; the columns are: 'serial', 'bolt', 'angle-deg', 'load'",
                refusal("serial,bolt,angle-deg,load\nQ1,1,1200,12.5\n"));
        assertEquals("the file is empty", refusal(""));
        Files.write(folder.resolve("outcomes.csv"), new byte[] {0, 1, 2, 3, 0, 0, (byte) 0xFF, 0, 7, 0});
        assertTrue(sentence().contains("the file is no text"), sentence());
        Files.delete(folder.resolve("outcomes.csv"));
        assertTrue(sentence().contains("there is no such file"), sentence());
    }

    private String refusal(String text) throws IOException {
        Files.writeString(folder.resolve("outcomes.csv"), text);
        var problem =
                OutcomeFile.read(folder.resolve("outcomes.csv")).problems().get(0);
        return problem.what() + (problem.action().isEmpty() ? "" : "; " + problem.action());
    }

    private String sentence() throws IOException {
        return OutcomeFile.read(folder.resolve("outcomes.csv"))
                .problems()
                .get(0)
                .sentence();
    }

    private OutcomeFile read(String text) throws IOException {
        var file = folder.resolve("outcomes.csv");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        return OutcomeFile.read(file).value().orElseThrow();
    }
}
