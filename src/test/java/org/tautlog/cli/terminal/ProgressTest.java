package org.tautlog.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import me.tongfei.progressbar.ProgressBarStyle;
import org.junit.jupiter.api.Test;

final class ProgressTest {
    @Test
    void progress_is_silent_where_nobody_sits_at_a_terminal() {
        var err = new StringWriter();
        try (var progress = Progress.on("reading", new PrintWriter(err), false, ProgressBarStyle.UNICODE_BLOCK)) {
            progress.step();
        }
        assertEquals("", err.toString());
    }

    @Test
    void progress_says_how_fast_and_how_far_it_is() {
        var err = new StringWriter();
        try (var progress = Progress.on("reading", new PrintWriter(err), true, ProgressBarStyle.UNICODE_BLOCK)) {
            progress.at("file 3 of 10");
            for (int i = 0; i < 1200; i++) {
                progress.step();
            }
        }
        assertTrue(err.toString().contains("/s, file 3 of 10"), err.toString());
    }

    @Test
    void progress_leaves_a_clean_line_behind() {
        var err = new StringWriter();
        try (var progress = Progress.on("reading", new PrintWriter(err), true, ProgressBarStyle.UNICODE_BLOCK)) {
            progress.step();
        }
        assertTrue(err.toString().contains("reading"), err.toString());
        assertTrue(err.toString().endsWith("\r"), err.toString());
        assertFalse(err.toString().contains("\n"), err.toString());
        assertFalse(err.toString().contains("\u001b"), err.toString());
    }
}
