package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tautlog.cli.terminal.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {
    @Test
    void the_version_is_the_builds() {
        var run = CommandLineRun.of("--version");
        assertEquals(0, run.exitCode());
        assertTrue(run.out().matches("tautlog \\d+\\.\\d+\\.\\d+\\R"), run.out());
    }

    @Test
    void help_goes_to_the_output_and_names_the_way_on() {
        var run = CommandLineRun.of("--help");
        assertEquals(0, run.exitCode());
        assertTrue(run.out().contains("tautlog COMMAND --help"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void an_unknown_word_is_wrong_use_told_in_two_lines() {
        var run = CommandLineRun.of("--colour");
        assertEquals(2, run.exitCode());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("tautlog: Unknown option: '--colour'"), run.err());
        assertTrue(run.err().contains("See: tautlog --help"), run.err());
    }

    @Test
    void a_time_without_its_offset_is_told_what_to_add() {
        var shift = List.of("shift", "--archive", "evidence", "--from");
        for (var wrong : List.of("2026-03-17T09:10", "2026-03-17", "17.3.2026")) {
            var run = CommandLineRun.of(
                    Stream.concat(shift.stream(), Stream.of(wrong)).toArray(String[]::new));
            assertEquals(2, run.exitCode(), run.toString());
            assertTrue(run.err().contains("'" + wrong + "' "), run.err());
            assertTrue(run.err().contains("as in 2026-03-17T09:10+01:00"), run.err());
            assertFalse(run.err().contains("Exception"), run.err());
        }
        var local = CommandLineRun.of("contain", "--archive", "evidence", "--around", "2026-03-17T09:10");
        assertTrue(local.err().contains("'2026-03-17T09:10' has no offset from UTC; add that of the"), local.err());
    }

    @Test
    void a_span_that_ends_before_it_begins_is_wrong_use() {
        var run = CommandLineRun.of(
                "shift", "--archive", "evidence", "--from", "2026-03-17T14:00+01:00", "--to", "2026-03-17T06:00+01:00");
        assertEquals(2, run.exitCode(), run.toString());
        assertTrue(run.err().contains("is not before --to 2026-03-17T06:00+01:00"), run.err());
    }

    @Test
    void a_failure_is_one_sentence_and_with_debug_a_stack_trace() {
        var failure = new UncheckedIOException(new NoSuchFileException("shift.csv"));
        assertEquals(
                "tautlog: there is no file shift.csv; run with --debug to see where",
                told(failure, false).strip());
        assertTrue(told(failure, true).contains("at " + MainTest.class.getName()), told(failure, true));
    }

    @Test
    void a_refusal_says_its_sentence_and_nothing_of_debugging() {
        var text = told(Refusal.wrongUse("no joint specification"), false);
        assertEquals("tautlog: no joint specification", text.strip());
    }

    @Test
    void a_program_failure_is_told_apart_from_tightenings_that_do_not_conform() {
        var line = new CommandLine(new Empty()).setErr(new PrintWriter(new StringWriter()));
        assertEquals(4, Trouble.report(new IllegalStateException("x"), line, false));
        assertEquals(2, Trouble.report(Refusal.wrongUse("x"), line, false));
        assertEquals(2, Trouble.report(new AccessDeniedException("evidence/lock"), line, false));
        assertEquals(2, Trouble.report(new UncheckedIOException(new IOException("No space left")), line, false));
        assertEquals(3, Trouble.report(Refusal.nothingRead("x"), line, false));
    }

    @Test
    void memory_that_is_full_is_one_sentence_that_says_what_helps() {
        var err = new StringWriter();
        assertEquals(4, Trouble.outOfMemory(new OutOfMemoryError("heap"), new PrintWriter(err), false));
        assertEquals(1, err.toString().lines().count());
        assertTrue(err.toString().contains("java -Xmx"), err.toString());
    }

    private static String told(Exception failure, boolean debug) {
        var err = new StringWriter();
        var writer = new PrintWriter(err);
        Trouble.report(failure, new CommandLine(new Empty()).setErr(writer), debug);
        writer.flush();
        return err.toString();
    }

    @Command(name = "empty")
    private static final class Empty {}
}
