package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.cli.CommandLineRun;

/** What a study could not use is told by name, and asks for a person. */
class NotAllUsedTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"changes", "outliers"})
    void a_group_that_could_not_be_tested_is_named_and_asks_for_a_person(String command) throws IOException {
        var text = new StringBuilder("g,x\n");
        for (int i = 0; i < 40; i++)
            text.append("A,").append(10 + (i * 7 % 11) / 10.0).append('\n');
        var calm = CommandLineRun.of(command, write(text.toString()), "--value", "x", "--by", "g");
        assertEquals(0, calm.exitCode(), calm.out());
        text.append("B,10\n");
        var run = CommandLineRun.of(command, write(text.toString()), "--value", "x", "--by", "g");
        assertTrue(run.out().contains("NOT ALL TESTED: g B; exit code 1"), run.out());
        assertEquals(1, run.exitCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"p", "u", "p-laney"})
    void counts_that_are_not_whole_are_rejected_by_line(String kind) throws IOException {
        var text = "d,n\n2.5,10\n1,10\n3,10\n2,10\n0,10\n4,10\n";
        var run = CommandLineRun.of("chart", write(text), "--value", "d", "--amount", "n", "--kind", kind);
        assertTrue(run.err().contains("counts 2.5 in 10; a count is a whole number"), run.err());
        assertTrue(run.out().contains("n = 5, 5 points"), run.out());
        assertEquals(1, run.exitCode());
    }

    @Test
    void more_faulty_items_than_items_are_told_in_whole_numbers() throws IOException {
        var text = "d,n\n5,3\n1,10\n3,10\n2,10\n0,10\n4,10\n";
        var run = CommandLineRun.of("chart", write(text), "--value", "d", "--amount", "n", "--kind", "p");
        assertTrue(run.err().contains("counts 5 in 3 items"), run.err());
    }

    @ParameterizedTest
    @CsvSource({
        "--kind ewma --weight 1.5, --weight is 1.5; it must lie above 0 and up to 1",
        "--kind cusum --slack -1, --slack is -1.0 and --decision",
        "--width 0, --width is 0.0; it must lie between 0 and 100 sigma"
    })
    void a_value_out_of_range_is_refused_by_the_name_of_its_option(String asked, String told) throws IOException {
        var words = ("chart " + write("x\n1\n2\n1\n") + " --value x " + asked).split(" ", -1);
        var run = CommandLineRun.of(words);
        assertTrue(run.err().contains(told), run.err());
        assertEquals(2, run.exitCode());
    }

    @Test
    void a_damaged_file_of_limits_is_refused_by_place_and_not_by_the_readers_own_words() throws IOException {
        var table = write("x\n1\n2\n1\n3\n2\n1\n2\n3\n1\n2\n");
        var limits = folder.resolve("limits.json");
        CommandLineRun.of("chart", table, "--value", "x", "--freeze", limits.toString());
        var kept = Files.readString(limits);
        Files.writeString(limits, kept.replace("\"groups\" : [", "\"groups\" : [ {\"group\" : 1, \"none\" : [] },"));
        var run = CommandLineRun.of("chart", table, "--value", "x", "--limits", limits.toString());
        assertEquals(2, run.exitCode(), run.out());
        assertFalse(run.err().contains("jackson") || run.err().contains("tautlog.spc"), run.err());
    }

    @Test
    void a_gauge_study_names_ranges_above_their_limit_and_who_measured_too_seldom() throws IOException {
        var text = new StringBuilder("part,who,x\n");
        for (int p = 0; p < 10; p++)
            for (int a = 0; a < 2; a++)
                for (int t = 0; t < 3; t++)
                    text.append(String.format(Locale.ROOT, "P%d,A%d,%d\n", p, a, 10 * p + (p * 7 + a * 3 + t * 5) % 4));
        var wide = text.toString().replaceFirst("P4,A1,\\d+", "P4,A1,90");
        var run = CommandLineRun.of(gauge(write(wide)));
        assertTrue(run.out().contains("1 range of trials above the upper limit"), run.out());
        assertTrue(run.out().contains("look for a wrong trial: part P4 by A1"), run.out());
        var seldom = CommandLineRun.of(gauge(write(text.toString().replaceFirst("P4,A1,\\d+\n", ""))));
        assertTrue(seldom.out().contains("part P4 was measured 2 times by appraiser A1, not 3 times"), seldom.out());
    }

    private static String[] gauge(String file) {
        return ("gauge " + file + " --value x --part part --appraiser who").split(" ", -1);
    }

    private String write(String text) throws IOException {
        return Files.writeString(folder.resolve("t.csv"), text).toString();
    }
}
