package org.tautlog.archive.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;

class LedgerTest {
    private static final OffsetDateTime TIME = OffsetDateTime.parse("2026-03-02T14:10:00+01:00");

    @TempDir
    private Path folder;

    @Test
    void an_entry_of_another_writer_is_seen_by_one_who_has_read_before() throws IOException {
        var reader = new Ledger(folder.resolve("ledger.jsonl"));
        append("first");
        assertEquals(1, reader.read().entries().size());

        append("second");

        assertEquals(2, reader.read().entries().size());
        assertEquals(List.of(), reader.read().problems());
    }

    @Test
    void an_altered_character_is_seen_by_one_who_has_read_before() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        var reader = new Ledger(file);
        append("first");
        assertEquals(List.of(), reader.read().problems());

        Files.writeString(file, Files.readString(file).replace("first", "firsT"));

        assertEquals(1, reader.read().problems().size());
    }

    private void append(String batch) throws IOException {
        new Ledger(folder.resolve("ledger.jsonl")).append(List.of(new BatchKept(batch, "0".repeat(64))), TIME);
    }
}
