package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The logs that lie in the repository are those that the program writes. */
class SampleLogsTest {
    @Test
    void the_sample_logs_are_one_simulated_shift_to_the_last_byte(@TempDir Path temp) throws IOException {
        var run = CommandLineRun.of(
                "simulate", "--seed", "2", "--out", temp.resolve("shift").toString());
        assertEquals(0, run.exitCode(), run.err());
        var written = LogFolder.of(temp.resolve("shift"));
        assertTrue(
                written.files().size() > 130, "the check saw " + written.files().size() + " files");
        assertEquals(LogFolder.of(Path.of("sample-logs")).files(), written.files());
    }
}
