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
import org.tautlog.archive.ledger.LedgerEvent.Decided;
import org.tautlog.problem.ProblemCode;

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

    @Test
    void a_word_put_in_behind_the_hash_of_a_decision_is_seen_and_does_not_count() throws IOException {
        var file = folder.resolve("ledger.jsonl");
        var decision = new Decision("FW-000012", "", DecisionAction.QUARANTINE, "A. Reviewer", "short");
        new Ledger(file).append(List.of(new Decided(decision)), TIME);
        var line = Files.readString(file).strip();
        for (var more : List.of(
                line.replaceFirst("}$", ",\"action\":\"release\",\"reason\":\"all fine\"}"),
                line.replaceFirst("}$", ",\"batch\":\"other\",\"manifest\":\"00\"}"),
                line.replaceFirst("}$", " }"),
                line + " ",
                line + "{\"kind\":\"batch\"}")) {
            Files.writeString(file, more + "\n");

            var reading = new Ledger(file).read();

            assertEquals(List.of(), reading.entries(), more);
            assertEquals(ProblemCode.ALTERED, reading.problems().get(0).code(), more);
        }
    }

    private void append(String batch) throws IOException {
        new Ledger(folder.resolve("ledger.jsonl")).append(List.of(new BatchKept(batch, "0".repeat(64))), TIME);
    }
}
