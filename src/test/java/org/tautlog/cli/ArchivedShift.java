package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tautlog.review.MadeShift;
import org.tautlog.review.MadeShift.Made;

/** Small archives for the commands that ask them. */
public final class ArchivedShift {
    /** Serials that a file name, a page, a query or a spreadsheet could take for something else. */
    public static final List<String> HOSTILE = List.of(
            "../../etc/passwd",
            "..",
            "'; DROP TABLE traces; --",
            "<script>alert(1)</script>",
            "=HYPERLINK(\"x\")",
            "a\"b'c\\d",
            "A/B",
            "A_B");

    private ArchivedShift() {}

    /** Six engines of the simulated line, eight bolts each. */
    public static String simulated(Path folder) {
        var logs = folder.resolve("line");
        assertEquals(
                0,
                CommandLineRun.of("simulate", "--engines", "6", "--out", logs.toString())
                        .exitCode());
        return of(folder, logs);
    }

    public static String of(Path folder, Path logs) {
        var archive = folder.resolve("evidence").toString();
        var run = CommandLineRun.of("import", logs.toString(), "--archive", archive);
        assertEquals(0, run.exitCode(), run.toString());
        return archive;
    }

    public static List<Made> hostile() {
        var made = new ArrayList<Made>();
        HOSTILE.forEach(serial -> made.add(MadeShift.named(serial, 300 + made.size())));
        return made;
    }
}
