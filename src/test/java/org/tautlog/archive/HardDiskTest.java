package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Disks that are full or may not be written, made of a mount that only the child process sees. Where the system grants no
 * such mounts these tests are skipped and say so.
 */
class HardDiskTest {
    @TempDir
    Path folder;

    @Test
    void a_full_disk_refuses_an_import_and_keeps_all_that_was_there() throws Exception {
        var said = run("mount -t tmpfs -o size=700k tmpfs \"$1\"", "fill");
        assertEquals(3, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("refused ") && said.get(0).contains("No space left"), said.get(0));
        assertEquals("problems []", said.get(1));
        assertTrue(said.get(2).matches("imported ([1-9]\\d*) there \\1"), said.get(2));
    }

    @Test
    void a_folder_that_may_not_be_written_is_read_and_checked_all_the_same() throws Exception {
        take(Archive.create(folder), "monday.csv", 1, 1);
        var said = run("mount --bind \"$1\" \"$1\" && mount -o remount,bind,ro \"$1\"", "read");
        assertEquals(List.of("traces 8", "problems []", "same true"), said.subList(0, 3));
        assertTrue(said.get(3).startsWith("refused ") && said.get(3).contains("Read-only"), said.get(3));
    }

    private List<String> run(String mount, String word) throws IOException, InterruptedException {
        assumeTrue(says("true").isEmpty(), "skipped: this system grants no private mounts (unshare)");
        var java = ArchiveChild.command(word, folder.toString()).stream()
                .map(part -> "'" + part + "'")
                .collect(Collectors.joining(" "));
        return says(mount + " && exec " + java);
    }

    private List<String> says(String script) throws IOException, InterruptedException {
        try {
            var process = new ProcessBuilder(
                            "unshare",
                            "--user",
                            "--map-root-user",
                            "--mount",
                            "sh",
                            "-c",
                            script,
                            "sh",
                            folder.toString())
                    .redirectErrorStream(true)
                    .start();
            try (var reader = process.inputReader(StandardCharsets.UTF_8)) {
                var lines = reader.lines().filter(HardDiskTest::isTheChilds).toList();
                process.waitFor();
                return lines;
            }
        } catch (IOException noSuchProgram) {
            return List.of(noSuchProgram.getMessage());
        }
    }

    /** Newer Java versions warn of native libraries on the same stream. */
    private static boolean isTheChilds(String line) {
        return !line.isBlank() && !line.startsWith("SLF4J") && !line.startsWith("WARNING:");
    }
}
