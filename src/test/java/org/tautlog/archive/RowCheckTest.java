package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.take;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RowCheckTest {
    @TempDir
    Path folder;

    @Test
    void want_of_memory_is_never_called_an_alteration() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 3);
        var batch = Snapshot.of(ArchiveFolder.open(folder)).batches().get(0);
        try (var check = new RowCheck(Engine.ofChecker("1MB"))) {
            var full = assertThrows(IOException.class, () -> check.check(batch.folder(), batch.manifest()));
            assertTrue(full.getMessage().contains("memory"), full.getMessage());
        }
    }

    @Test
    void each_batch_is_told_once() throws IOException {
        var archive = Archive.create(folder);
        take(archive, "monday.csv", 1, 1);
        take(archive, "tuesday.csv", 4, 1);
        var told = new ArrayList<String>();
        assertEquals(List.of(), archive.verify(() -> told.add("one more")).problems());
        assertEquals(2, told.size());
    }
}
